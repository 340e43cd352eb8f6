package platekeep.model.stitch;

import java.util.Arrays;
import java.util.List;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * The runs of one row: each is as many cables as lie side by side without a gap. Cells are counted from the left, from 0.
 * Of what colour the cables are does not matter.
 */
final class Runs {

    private final String cells;
    private final int[] ends;

    private Runs(String cells, int[] ends) {
        this.cells = cells;
        this.ends = ends;
    }

    /** The runs of each row of a plate, the top one first. */
    static Runs[] of(Plate plate) {
        Runs[] runs = new Runs[plate.rows().size()];
        Arrays.setAll(runs, r -> of(plate.rows().get(r).cells()));
        return runs;
    }

    /**
     * As {@link #of(Plate)}; those of rows that another plate has, too, are shared with it.
     *
     * @param known the runs of another plate's rows; any
     */
    static Runs[] of(Plate plate, Runs[] known) {
        List<Row> rows = plate.rows();
        Runs[] runs = new Runs[rows.size()];
        int offset = known.length - runs.length;
        for (int r = 0; r < runs.length; r++) {
            String cells = rows.get(r).cells();
            boolean fromTop = r < known.length && known[r].cells == cells;
            boolean fromBottom = r + offset >= 0 && known[r + offset].cells == cells;
            runs[r] = fromTop ? known[r] : fromBottom ? known[r + offset] : of(cells);
        }
        return runs;
    }

    static Runs of(String cells) {
        int[] ends = new int[16];
        int count = 0;
        int length = cells.length();
        boolean isIn = false;
        for (int i = 0; i <= length; i++) {
            boolean isCable = i < length && cells.charAt(i) != Row.EMPTY;
            if (isCable != isIn) {
                ends = count == ends.length ? Arrays.copyOf(ends, count * 2) : ends;
                ends[count++] = i;
                isIn = isCable;
            }
        }
        return new Runs(cells, Arrays.copyOf(ends, count));
    }

    int count() {
        return ends.length / 2;
    }

    /** The first cell of a run. */
    int from(int run) {
        return ends[2 * run];
    }

    /** The cell after its last. */
    int end(int run) {
        return ends[2 * run + 1];
    }

    /** The run that a cell lies in; negative where no cable lies. */
    int at(int cell) {
        int found = Arrays.binarySearch(ends, cell);
        int before = found >= 0 ? found : -found - 2;
        return before >= 0 && (before & 1) == 0 ? before / 2 : -1;
    }

    /** Whether cables lie in the same cells in both. */
    boolean lieLike(Runs other) {
        return this == other || Arrays.equals(ends, other.ends);
    }
}
