package platekeep.model.stitch;

import java.util.Arrays;
import java.util.function.IntFunction;
import platekeep.model.plate.Plate;

/**
 * The cells of a chart, labelled by the set of joined cables they belong to.
 *
 * <p>Cables that are neighbours in a row are always joined; whether two that lie over the same pleats in rows next to
 * each other are joined is asked of a {@link Link}. Labels are given out from the bottom row up, in each row from the
 * left, so label order is the order of each set's leftmost cable in its lowest row.
 *
 * <p>Idea: a union-find over the {@link Runs runs} of cables rather than over cells (smaller root wins, paths halved),
 * then one scan that numbers the roots and measures the sets. Linear in the runs but for the inverse Ackermann factor;
 * no recursion. A label is found by halving the runs of a row; once a good part of all cells was asked for, the labels are
 * laid out, four bytes a cell.
 */
public final class Labels {

    /** No cable lies here. */
    public static final int NONE = -1;

    /** Laid out once one in so many of its cells was asked for. */
    private static final int OFTEN = 32;

    /** Whether a cable is joined to the one over the same pleats in the row above; both are there. */
    @FunctionalInterface
    interface Link {
        /** All cables over the same pleats in neighbouring rows touch. */
        Link TOUCHING = (row, index) -> true;

        /**
         * Asked with the lower of the two cables.
         *
         * @param row the lower row, top row 0
         * @param index the cell in the row, from 0
         */
        boolean upward(int row, int index);
    }

    private final Runs[] runs;
    private final int width;
    private final int[][] set;
    private volatile int[] laidOut;
    private int asked;
    private int count;
    private int[] cells = new int[16];
    private int[] top = new int[16];
    private int[] bottom = new int[16];
    private int[] first = new int[16];
    private int[] from = new int[16];
    private int[] to = new int[16];

    private Labels(Runs[] runs, int width) {
        this.runs = runs;
        this.width = width;
        this.set = new int[runs.length][];
    }

    static Labels of(Plate plate, Link link) {
        return of(Runs.of(plate), plate.positions(), link);
    }

    /** As {@link #of(Plate, Link)} where the runs of the plate's rows are known already. */
    static Labels of(Runs[] runs, int width, Link link) {
        Labels labels = new Labels(runs, width);
        labels.number(labels.join(link));
        return labels;
    }

    /**
     * The figures of cells that are no plate's yet.
     *
     * @param row the cells of a row, top row 0, each {@code width} long; not changed
     */
    public static Labels ofFigures(int rows, int width, IntFunction<char[]> row) {
        Runs[] runs = new Runs[rows];
        Arrays.setAll(runs, r -> Runs.of(String.valueOf(row.apply(r))));
        return of(runs, width, Link.TOUCHING);
    }

    /** Gives each run a provisional label and joins it to the row below; returns the forest of labels. */
    private int[] join(Link link) {
        int[] parent = new int[Arrays.stream(runs).mapToInt(Runs::count).sum()];
        Arrays.setAll(parent, run -> run);
        int given = 0;
        for (int r = runs.length - 1; r >= 0; r--) {
            set[r] = new int[runs[r].count()];
            for (int n = 0; n < set[r].length; n++) {
                set[r][n] = given++;
            }
            if (r + 1 < runs.length) {
                join(parent, r, link);
            }
        }
        return parent;
    }

    /** Joins the runs of a row to those of the row below that lie under them. */
    private void join(int[] parent, int row, Link link) {
        Runs above = runs[row];
        Runs below = runs[row + 1];
        int a = 0;
        int b = 0;
        while (a < above.count() && b < below.count()) {
            int begin = Math.max(above.from(a), below.from(b));
            int end = Math.min(above.end(a), below.end(b));
            for (int i = begin; i < end; i++) {
                if (link.upward(row + 1, i)) {
                    unite(parent, set[row][a], set[row + 1][b]);
                    break;
                }
            }
            if (above.end(a) < below.end(b)) {
                a++;
            } else {
                b++;
            }
        }
    }

    private void number(int[] parent) {
        int[] given = new int[parent.length];
        Arrays.fill(given, NONE);
        for (int r = runs.length - 1; r >= 0; r--) {
            for (int n = 0; n < set[r].length; n++) {
                int root = root(parent, set[r][n]);
                if (given[root] == NONE) {
                    given[root] = begin(r, runs[r].from(n));
                }
                set[r][n] = given[root];
                measure(given[root], r, n);
            }
        }
    }

    private int begin(int row, int index) {
        if (count == cells.length) {
            int more = count * 2;
            cells = Arrays.copyOf(cells, more);
            top = Arrays.copyOf(top, more);
            bottom = Arrays.copyOf(bottom, more);
            first = Arrays.copyOf(first, more);
            from = Arrays.copyOf(from, more);
            to = Arrays.copyOf(to, more);
        }
        bottom[count] = row;
        first[count] = index;
        from[count] = index;
        to[count] = index;
        return count++;
    }

    private void measure(int label, int row, int run) {
        int begin = runs[row].from(run);
        int end = runs[row].end(run);
        cells[label] += end - begin;
        top[label] = row;
        from[label] = Math.min(from[label], begin);
        to[label] = Math.max(to[label], end - 1);
    }

    private static int root(int[] parent, int of) {
        int at = of;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    private static void unite(int[] parent, int a, int b) {
        int rootA = root(parent, a);
        int rootB = root(parent, b);
        parent[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
    }

    int rows() {
        return runs.length;
    }

    int width() {
        return width;
    }

    /** The runs of cables in a row. */
    Runs runs(int row) {
        return runs[row];
    }

    /** The label of a run of a row. */
    int ofRun(int row, int run) {
        return set[row][run];
    }

    /** How many sets there are. */
    public int count() {
        return count;
    }

    /** The label at a row (top row 0) and cell (from 0); {@link #NONE} where no cable lies or outside the chart. */
    public int at(int row, int index) {
        if (row < 0 || row >= runs.length || index < 0 || index >= width) {
            return NONE;
        }
        int[] all = laidOut;
        if (all == null && ++asked > runs.length * width / OFTEN) {
            all = layOut();
        }
        if (all != null) {
            return all[row * width + index];
        }
        int run = runs[row].at(index);
        return run < 0 ? NONE : set[row][run];
    }

    private int[] layOut() {
        int[] all = new int[Math.multiplyExact(runs.length, width)];
        Arrays.fill(all, NONE);
        for (int r = 0; r < runs.length; r++) {
            for (int n = 0; n < set[r].length; n++) {
                Arrays.fill(all, r * width + runs[r].from(n), r * width + runs[r].end(n), set[r][n]);
            }
        }
        laidOut = all;
        return all;
    }

    /** A set measured, its positions counted from {@code pleat}, the first pleat of the chart. */
    Figure figure(int label, int pleat) {
        return new Figure(
                label,
                cells[label],
                top[label],
                bottom[label],
                pleat + from[label],
                pleat + to[label],
                pleat + first[label]);
    }

    /** How many cables a set has. */
    public int cells(int label) {
        return cells[label];
    }

    /** From its leftmost to its rightmost cell, both included. */
    int width(int label) {
        return to[label] - from[label] + 1;
    }

    int top(int label) {
        return top[label];
    }

    int bottom(int label) {
        return bottom[label];
    }

    /** The cell of the set's leftmost cable in its lowest row. */
    int first(int label) {
        return first[label];
    }
}
