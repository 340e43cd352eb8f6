package platekeep.client.plate.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.stitch.RowIds;

/** Putting rows in, taking them out and moving them. Rows are counted from the top, from 0. */
public final class RowEdits {

    private RowEdits() {}

    /** Puts an empty row in so that it has this index. */
    public static Plate insert(Plate plate, int index, RandomGenerator random) {
        return put(plate, index, String.valueOf(Row.EMPTY).repeat(plate.positions()), random);
    }

    /** Puts a copy of a row right above it. */
    public static Plate duplicate(Plate plate, int index, RandomGenerator random) {
        return put(plate, index, plate.rows().get(index).cells(), random);
    }

    private static Plate put(Plate plate, int index, String cells, RandomGenerator random) {
        if (plate.rows().size() >= Plate.MOST_ROWS) {
            return plate;
        }
        Set<RowId> taken = new HashSet<>(RowIds.standing(plate));
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.add(index, new Row(Optional.of(RowIds.fresh(taken, random)), cells));
        return plate.edit().rows(rows).build();
    }

    /**
     * Takes a row out. Single stitches on it go with it; what was remarked on it is kept for the plate as a whole; a
     * start on it is left to the rule that keeps kinds. The last row stays.
     */
    public static Plate delete(Plate plate, int index) {
        if (plate.rows().size() < 2) {
            return plate;
        }
        Optional<RowId> id = plate.rows().get(index).id();
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.remove(index);
        return plate.edit()
                .rows(rows)
                .marks(plate.marks().stream()
                        .filter(mark -> !id.equals(Optional.of(mark.row())))
                        .toList())
                .remarks(plate.remarks().stream()
                        .map(remark -> id.isPresent() && remark.row().equals(id) ? forWhole(remark) : remark)
                        .toList())
                .build();
    }

    private static Remark forWhole(Remark remark) {
        return new Remark(
                remark.id(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                remark.by(),
                remark.on(),
                remark.text(),
                remark.done(),
                remark.unknown());
    }

    /** Moves a row up (by -1) or down (by 1); beyond the ends it stays. */
    public static Plate move(Plate plate, int index, int by) {
        int to = index + by;
        if (to < 0 || to >= plate.rows().size()) {
            return plate;
        }
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.add(to, rows.remove(index));
        return plate.edit().rows(rows).build();
    }

    /**
     * Moves the cables of one row so many pleats to the right (or left, where negative) with the single stitches and
     * remarks on it; the rows above and below stay.
     *
     * @return empty where cables would leave the chart
     */
    public static Optional<Plate> shift(Plate plate, int index, int by) {
        Row row = plate.rows().get(index);
        int width = plate.positions();
        char[] cells = new char[width];
        java.util.Arrays.fill(cells, Row.EMPTY);
        for (int i = 0; i < width; i++) {
            char cell = row.cells().charAt(i);
            if (cell != Row.EMPTY && (i + by < 0 || i + by >= width)) {
                return Optional.empty();
            }
            if (cell != Row.EMPTY) {
                cells[i + by] = cell;
            }
        }
        List<Row> rows = new ArrayList<>(plate.rows());
        rows.set(index, row.withCells(String.valueOf(cells)));
        Optional<RowId> id = row.id();
        return Optional.of(plate.edit()
                .rows(rows)
                .marks(plate.marks().stream()
                        .map(m -> id.equals(Optional.of(m.row())) ? m.at(m.row(), Pleat.text(m.place() + by)) : m)
                        .toList())
                .remarks(plate.remarks().stream()
                        .map(r ->
                                id.isPresent() && r.row().equals(id) && r.from().isPresent()
                                        ? r.at(
                                                id.get(),
                                                r.from().get() + by,
                                                r.to().orElse(r.from().get()) + by)
                                        : r)
                        .toList())
                .build());
    }
}
