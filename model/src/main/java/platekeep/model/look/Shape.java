package platekeep.model.look;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * What a chart shows, apart from its ground: a box just as large as the picture, where each place is outside of it or
 * belongs to a colour. A gap inside the picture counts as one more colour, so that a picture on empty cloth and the same
 * picture with its ground worked in full are the same shape.
 *
 * <p>What is ground cannot always be told: a plain wall as wide as its house may be one. Then a chart is read in both
 * ways. Where a band runs along the upper or lower edge from side to side, such as water or grass, the picture is read
 * without it too.
 */
final class Shape {
    /** A place outside of the picture. */
    static final byte OUTSIDE = 0;

    private final int width;
    private final int height;
    private final byte[] cells;
    private final boolean isPart;
    private int[] keys = {};

    private Shape(int width, int height, byte[] cells, boolean isPart) {
        this.width = width;
        this.height = height;
        this.cells = cells;
        this.isPart = isPart;
    }

    /** The ways to read a chart, at most three, whole ones first; none where it has no cable. Linear in its cells. */
    static List<Shape> of(Plate plate) {
        return plate.rows().isEmpty() ? List.of() : new Reader(plate).readings();
    }

    /** A shape that was drawn up otherwise, as in a test. */
    static Shape of(int width, byte[] cells) {
        return new Shape(width, cells.length / width, cells.clone(), false);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Whether a band above or below was left out. */
    boolean isPart() {
        return isPart;
    }

    /** The key of the colour at a place, {@link Row#EMPTY} for a gap inside, or {@link #OUTSIDE}. */
    byte at(int row, int place) {
        return cells[row * width + place];
    }

    /** All places, row by row; not to be changed. */
    byte[] cells() {
        return cells;
    }

    /** The keys that occur in it, a gap's too; not to be changed. */
    int[] keys() {
        if (keys.length == 0) {
            boolean[] occurs = new boolean[Reader.KEYS];
            for (byte cell : cells) {
                occurs[cell] = true;
            }
            keys = java.util.stream.IntStream.range(1, occurs.length)
                    .filter(key -> occurs[key])
                    .toArray();
        }
        return keys;
    }

    Shape mirrored(Mirror mirror) {
        if (mirror == Mirror.NONE) {
            return this;
        }
        byte[] turned = new byte[cells.length];
        for (int r = 0; r < height; r++) {
            int from = (mirror.turnsOver() ? height - 1 - r : r) * width;
            for (int i = 0; i < width; i++) {
                turned[r * width + i] = cells[from + (mirror.turnsAcross() ? width - 1 - i : i)];
            }
        }
        return new Shape(width, height, turned, isPart);
    }

    /** Reads one chart, on a grid with an empty place more on each side. */
    private static final class Reader {
        /** From this share of the rim of the drawn box on, a colour is surely the ground. */
        private static final double SURELY = 0.85;

        /** From this share of the rim on, it may be. */
        private static final double PERHAPS = 0.45;

        /** A row that reaches so close to both ends of the chart, in shares of its width, runs from side to side. */
        private static final double NEAR_END = 0.06;

        /** What is left without bands has to be so much of the picture, or it is not read by itself. */
        private static final double LEAST_LEFT = 0.2;

        private static final int KEYS = 128;

        private final int width;
        private final int height;
        private final byte[] all;

        Reader(Plate plate) {
            this.width = plate.positions() + 2;
            this.height = plate.rows().size() + 2;
            this.all = new byte[width * height];
            Arrays.fill(all, (byte) Row.EMPTY);
            for (int r = 1; r < height - 1; r++) {
                byte[] row = plate.rows().get(r - 1).cells().getBytes(StandardCharsets.ISO_8859_1);
                System.arraycopy(row, 0, all, r * width + 1, width - 2);
            }
        }

        List<Shape> readings() {
            int[] box = box(all, (byte) Row.EMPTY);
            if (box[0] > box[1]) {
                return List.of();
            }
            List<Shape> readings = new ArrayList<>();
            int[] rim = rim(box);
            int around = Arrays.stream(rim).sum();
            int ground = most(rim);
            boolean isSure = rim[ground] >= SURELY * around;
            byte[] first = new byte[0];
            if (rim[ground] >= PERHAPS * around) {
                first = cut((byte) ground, readings);
            }
            if (readings.isEmpty() || !isSure) {
                byte[] open = cut((byte) Row.EMPTY, readings);
                first = readings.size() == 1 ? open : first;
            }
            cutBands(first, readings);
            return readings;
        }

        /** How often each colour, or no cable, lies on the rim of the box. */
        private int[] rim(int[] box) {
            int[] rim = new int[KEYS];
            for (int r = box[0]; r <= box[1]; r++) {
                rim[all[r * width + box[2]]]++;
                rim[all[r * width + box[3]]]++;
            }
            for (int i = box[2] + 1; i < box[3]; i++) {
                rim[all[box[0] * width + i]]++;
                rim[all[box[1] * width + i]]++;
            }
            return rim;
        }

        private static int most(int[] rim) {
            int most = 0;
            for (int key = 0; key < rim.length; key++) {
                most = key != Row.EMPTY && rim[key] > rim[most] ? key : most;
            }
            return most;
        }

        /** Takes away the ground as far as it can be reached from outside. */
        private byte[] cut(byte ground, List<Shape> into) {
            byte[] inside = all.clone();
            new Flood(all, width, ground, (byte) Row.EMPTY).write(inside, width, OUTSIDE);
            int[] box = box(inside, OUTSIDE);
            if (box[0] <= box[1]) {
                into.add(cropped(inside, box, false));
            }
            return inside;
        }

        private void cutBands(byte[] inside, List<Shape> into) {
            if (inside.length == 0) {
                return;
            }
            int[] box = box(inside, OUTSIDE);
            int top = box[0];
            int bottom = box[1];
            while (top <= bottom && isBand(inside, top)) {
                top++;
            }
            while (bottom >= top && isBand(inside, bottom)) {
                bottom--;
            }
            boolean isCut = top > box[0] || bottom < box[1];
            if (!isCut || count(inside, top, bottom) < LEAST_LEFT * count(inside, box[0], box[1])) {
                return;
            }
            Arrays.fill(inside, 0, top * width, OUTSIDE);
            Arrays.fill(inside, (bottom + 1) * width, inside.length, OUTSIDE);
            into.add(cropped(inside, box(inside, OUTSIDE), true));
        }

        private boolean isBand(byte[] inside, int row) {
            int first = 0;
            while (first < width && inside[row * width + first] == OUTSIDE) {
                first++;
            }
            int last = width - 1;
            while (last > first && inside[row * width + last] == OUTSIDE) {
                last--;
            }
            double near = 1 + NEAR_END * width;
            return first <= near && last >= width - 1 - near;
        }

        private int count(byte[] inside, int top, int bottom) {
            int count = 0;
            for (int at = top * width; at < (bottom + 1) * width; at++) {
                count += inside[at] == OUTSIDE ? 0 : 1;
            }
            return count;
        }

        private Shape cropped(byte[] inside, int[] box, boolean isPart) {
            int newWidth = box[3] - box[2] + 1;
            int newHeight = box[1] - box[0] + 1;
            byte[] cells = new byte[newWidth * newHeight];
            for (int r = 0; r < newHeight; r++) {
                System.arraycopy(inside, (box[0] + r) * width + box[2], cells, r * newWidth, newWidth);
            }
            return new Shape(newWidth, newHeight, cells, isPart);
        }

        /** First and last row, first and last place that differ from what lies around. */
        private int[] box(byte[] cells, byte around) {
            int[] box = {height, -1, width, -1};
            for (int r = 0; r < height; r++) {
                int from = r * width;
                int first = 0;
                while (first < width && cells[from + first] == around) {
                    first++;
                }
                if (first < width) {
                    int last = width - 1;
                    while (cells[from + last] == around) {
                        last--;
                    }
                    box[0] = Math.min(box[0], r);
                    box[1] = r;
                    box[2] = Math.min(box[2], first);
                    box[3] = Math.max(box[3], last);
                }
            }
            return box;
        }
    }
}
