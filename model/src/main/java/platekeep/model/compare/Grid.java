package platekeep.model.compare;

import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * The cells of a plate laid into a frame of positions that several plates share, so that the same index means the same
 * pleats in each. Cells outside the plate's own chart are empty. Rows with equal cells share one array.
 */
public final class Grid {
    private final Frame frame;
    private final char[][] rows;

    /**
     * Positions {@code from} (included) to {@code from + width} (excluded).
     */
    public record Frame(int from, int width) {

        /** The least frame around the charts of all plates. */
        public static Frame around(Plate... plates) {
            int from = Integer.MAX_VALUE;
            int to = Integer.MIN_VALUE;
            for (Plate plate : plates) {
                if (plate.pleats().isPresent()) {
                    from = Math.min(from, plate.pleats().get().from());
                    to = Math.max(to, plate.pleats().get().to());
                }
            }
            return from > to ? new Frame(0, 0) : new Frame(from, to - from);
        }

        public int index(int position) {
            return position - from;
        }

        public int position(int index) {
            return from + index;
        }
    }

    private Grid(Frame frame, char[][] rows) {
        this.frame = frame;
        this.rows = rows;
    }

    public static Grid of(Plate plate, Frame frame, Map<String, char[]> shared) {
        int offset = plate.from() - frame.from();
        char[][] rows = new char[plate.rows().size()][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = padded(plate.rows().get(i).cells(), offset, frame.width(), shared);
        }
        return new Grid(frame, rows);
    }

    public static Grid of(Plate plate, Frame frame) {
        return of(plate, frame, new HashMap<>());
    }

    private static char[] padded(String cells, int offset, int width, Map<String, char[]> shared) {
        String whole = cells.length() == width
                ? cells
                : ".".repeat(offset) + cells + ".".repeat(width - offset - cells.length());
        return shared.computeIfAbsent(whole, String::toCharArray);
    }

    static Grid ofRows(Frame frame, char[][] rows) {
        return new Grid(frame, rows);
    }

    public Frame frame() {
        return frame;
    }

    public int height() {
        return rows.length;
    }

    /** The row's cells by index in the frame; not to be changed. */
    public char[] row(int row) {
        return rows[row];
    }

    public char at(int row, int index) {
        if (row < 0 || row >= rows.length || index < 0 || index >= frame.width()) {
            return Row.EMPTY;
        }
        return rows[row][index];
    }

    /** Which figure each cell belongs to. Linear in the cells. */
    public Labels figures() {
        return Labels.ofFigures(rows.length, frame.width(), this::row);
    }

    /** The same grid with each cell's letter exchanged by the table; cells without an entry stay. */
    public Grid mapped(char[] table) {
        Map<char[], char[]> done = new IdentityHashMap<>();
        char[][] out = new char[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            out[i] = done.computeIfAbsent(rows[i], row -> {
                char[] copy = row.clone();
                for (int k = 0; k < copy.length; k++) {
                    copy[k] = table[copy[k]];
                }
                return copy;
            });
        }
        return new Grid(frame, out);
    }

    /** The same rows from the bottom up. */
    Grid turnedOver() {
        char[][] out = new char[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            out[i] = rows[rows.length - 1 - i];
        }
        return new Grid(frame, out);
    }

    /** The same cells moved sideways or mirrored left to right; what would leave the frame is lost. */
    Grid movedSideways(Motion motion) {
        if (motion.isNone()) {
            return this;
        }
        char[][] out = new char[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            out[i] = new char[frame.width()];
            Arrays.fill(out[i], Row.EMPTY);
            for (int k = 0; k < frame.width(); k++) {
                int to = motion.position(k);
                if (to >= 0 && to < frame.width()) {
                    out[i][to] = rows[i][k];
                }
            }
        }
        return new Grid(frame, out);
    }

    static boolean isBlank(char[] row) {
        for (char c : row) {
            if (c != Row.EMPTY) {
                return false;
            }
        }
        return true;
    }
}
