package platekeep.model.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** Reads the rows of a text in the canonical form, each with its id: nine tenths of the text, hardly more than copied. */
final class RowScan {
    private static final byte[] NONE = Scan.ascii("[]");
    private static final byte[] BEGIN = Scan.ascii("[\n    \"");
    private static final byte[] BETWEEN = Scan.ascii("\",\n    \"");
    private static final byte[] END = Scan.ascii("\"\n  ]");

    /** The gap between the cells of a row and those of the next. */
    private static final int GAP = BETWEEN.length + RowId.LENGTH + 1;

    private static final boolean[] NOTHING_USED = new boolean[256];

    private final Scan scan;
    private final int cells;
    private final List<Row> rows = new ArrayList<>(64);
    private final boolean[] used = NOTHING_USED.clone();
    private int[] ids = new int[64];

    private RowScan(Scan scan, int cells) {
        this.scan = scan;
        this.cells = cells;
    }

    /**
     * The rows that come next; equal ones that follow each other share their cells.
     *
     * @param cells how many each has; 0 where there may be no rows
     */
    static List<Row> rows(Scan scan, int cells, Palette palette) throws Scan.Otherwise {
        if (scan.takes(NONE)) {
            return List.of();
        }
        Scan.demand(cells > 0);
        RowScan rows = new RowScan(scan, cells);
        rows.read();
        rows.refuseDoubles();
        rows.refuseOtherThan(palette);
        return rows.rows;
    }

    private void read() throws Scan.Otherwise {
        scan.must(BEGIN);
        row();
        while (scan.takes(BETWEEN)) {
            row();
        }
        scan.must(END);
        Scan.demand(rows.size() <= Plate.MOST_ROWS);
    }

    private void row() throws Scan.Otherwise {
        int id = scan.rowId();
        scan.must(' ');
        int start = scan.at;
        int end = start + cells;
        byte[] bytes = scan.bytes;
        Scan.demand(end < scan.end);
        int above = start - cells - GAP;
        boolean same = !rows.isEmpty() && Arrays.equals(bytes, start, end, bytes, above, above + cells);
        if (!same) {
            note(start, end);
        }
        String text =
                same ? rows.get(rows.size() - 1).cells() : new String(bytes, start, cells, StandardCharsets.ISO_8859_1);
        note(id);
        rows.add(new Row(Optional.of(RowId.of(id)), text));
        scan.at = end;
    }

    private void note(int start, int end) {
        for (int i = start; i < end; i++) {
            used[scan.bytes[i] & 0xFF] = true;
        }
    }

    private void note(int id) {
        if (rows.size() == ids.length) {
            ids = Arrays.copyOf(ids, 2 * ids.length);
        }
        ids[rows.size()] = id;
    }

    /** A cell is empty or has a key of the palette. */
    private void refuseOtherThan(Palette palette) throws Scan.Otherwise {
        used[Row.EMPTY] = false;
        for (char key : palette.entries().keySet()) {
            used[key] = false;
        }
        Scan.demand(Arrays.equals(used, NOTHING_USED));
    }

    /** Ids are looked up in a table at least four times as large as their number, each at the next free place. */
    private void refuseDoubles() throws Scan.Otherwise {
        int[] table = new int[Integer.highestOneBit(rows.size()) << 3];
        int mask = table.length - 1;
        for (int i = 0; i < rows.size(); i++) {
            int held = ids[i] + 1;
            int place = held * 0x9E3779B1 >>> 16 & mask;
            while (table[place] != 0) {
                Scan.demand(table[place] != held);
                place = place + 1 & mask;
            }
            table[place] = held;
        }
    }
}
