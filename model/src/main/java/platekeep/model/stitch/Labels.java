package platekeep.model.stitch;

import java.util.Arrays;
import java.util.function.IntFunction;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * The cells of a chart, labelled by the set of joined cables they belong to.
 *
 * <p>Cables that are neighbours in a row are always joined; whether two that lie over the same pleats in rows next to
 * each other are joined is asked of a {@link Link}. Labels are given out from the bottom row up, in each row from the
 * left, so label order is the order of each set's leftmost cable in its lowest row.
 *
 * <p>Idea: one scan over runs of cables with a union-find (smaller root wins, paths halved), a second scan that numbers
 * the roots and measures the sets. Linear in the cells but for the inverse Ackermann factor; no recursion; four bytes a
 * cell and six numbers a set.
 */
public final class Labels {

    /** No cable lies here. */
    public static final int NONE = -1;

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

    private final int rows;
    private final int width;
    private final int[] label;
    private int count;
    private int[] cells = new int[16];
    private int[] top = new int[16];
    private int[] bottom = new int[16];
    private int[] first = new int[16];
    private int[] from = new int[16];
    private int[] to = new int[16];

    private Labels(int rows, int width) {
        this.rows = rows;
        this.width = width;
        this.label = new int[Math.multiplyExact(rows, width)];
    }

    static Labels of(Plate plate, Link link) {
        return of(
                plate.rows().size(),
                plate.positions(),
                r -> plate.rows().get(r).cells().toCharArray(),
                link);
    }

    /**
     * The figures of cells that are no plate's yet.
     *
     * @param row the cells of a row, top row 0, each {@code width} long; not changed
     */
    public static Labels ofFigures(int rows, int width, IntFunction<char[]> row) {
        return of(rows, width, row, Link.TOUCHING);
    }

    private static Labels of(int rows, int width, IntFunction<char[]> row, Link link) {
        Labels labels = new Labels(rows, width);
        labels.number(labels.join(row, link));
        return labels;
    }

    /** Gives each run a provisional label and joins it to the row below; returns the forest of labels. */
    private int[] join(IntFunction<char[]> chart, Link link) {
        int[] parent = new int[64];
        int runs = 0;
        for (int r = rows - 1; r >= 0; r--) {
            char[] row = chart.apply(r);
            for (int i = 0; i < width; i++) {
                int cell = r * width + i;
                if (row[i] == Row.EMPTY) {
                    label[cell] = NONE;
                    continue;
                }
                if (i > 0 && label[cell - 1] != NONE) {
                    label[cell] = label[cell - 1];
                } else {
                    parent = runs == parent.length ? Arrays.copyOf(parent, runs * 2) : parent;
                    parent[runs] = runs;
                    label[cell] = runs++;
                }
                if (r + 1 < rows && label[cell + width] != NONE && link.upward(r + 1, i)) {
                    unite(parent, label[cell], label[cell + width]);
                }
            }
        }
        return parent;
    }

    private void number(int[] parent) {
        int[] given = new int[parent.length];
        Arrays.fill(given, NONE);
        for (int r = rows - 1; r >= 0; r--) {
            for (int i = 0; i < width; i++) {
                int cell = r * width + i;
                if (label[cell] == NONE) {
                    continue;
                }
                int root = root(parent, label[cell]);
                if (given[root] == NONE) {
                    given[root] = begin(r, i);
                }
                label[cell] = given[root];
                measure(given[root], r, i);
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

    private void measure(int set, int row, int index) {
        cells[set]++;
        top[set] = row;
        from[set] = Math.min(from[set], index);
        to[set] = Math.max(to[set], index);
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
        return rows;
    }

    int width() {
        return width;
    }

    /** How many sets there are. */
    public int count() {
        return count;
    }

    /** The label at a row (top row 0) and cell (from 0); {@link #NONE} where no cable lies or outside the chart. */
    public int at(int row, int index) {
        return row < 0 || row >= rows || index < 0 || index >= width ? NONE : label[row * width + index];
    }

    /** A set measured, its positions counted from {@code pleat}, the first pleat of the chart. */
    Figure figure(int set, int pleat) {
        return new Figure(
                set, cells[set], top[set], bottom[set], pleat + from[set], pleat + to[set], pleat + first[set]);
    }

    /** How many cables a set has. */
    public int cells(int set) {
        return cells[set];
    }

    /** From its leftmost to its rightmost cell, both included. */
    int width(int set) {
        return to[set] - from[set] + 1;
    }

    int top(int set) {
        return top[set];
    }

    int bottom(int set) {
        return bottom[set];
    }

    /** The cell of the set's leftmost cable in its lowest row. */
    int first(int set) {
        return first[set];
    }
}
