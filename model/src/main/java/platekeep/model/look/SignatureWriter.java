package platekeep.model.look;

import java.util.Arrays;

/** Lays a shape on the grids of a {@link Signature}, row by row, and writes down what is met there. */
final class SignatureWriter {
    /** The grid reaches this many standard deviations to each side; an even block reaches 1.73. */
    private static final double REACH = 2.1;

    /** From which share of a field on it is covered by so many steps. */
    private static final double[] COVERED = {0.2, 0.5, 0.8};

    /** From how many borders on a way through a field on they count as so many steps. */
    private static final double[] CROSSED = {0.2, 0.6, 1.3};

    private static final int FINE = Signature.FIELDS;
    private static final int COARSE = Signature.BORDER_FIELDS;

    private final Shape shape;
    private final int width;
    private final byte[] cells;
    private final Moments moments;
    private final Axis across;
    private final Axis down;
    private final double[] cover = new double[FINE * FINE];
    private final double[] upright = new double[COARSE * COARSE];
    private final double[] level = new double[COARSE * COARSE];

    SignatureWriter(Shape shape) {
        this.shape = shape;
        this.width = shape.width();
        this.cells = shape.cells();
        this.moments = Moments.of(shape);
        this.across = new Axis(moments.across(), moments.wide(), shape.width());
        this.down = new Axis(moments.down(), moments.high(), shape.height());
    }

    void write(long[] bits, int at) {
        for (int r = 0; r <= shape.height(); r++) {
            if (r < shape.height()) {
                layRow(r);
            }
            layBorderAbove(r);
        }
        int plane = FINE * FINE / Long.SIZE;
        for (int step = 0; step < Signature.STEPS; step++) {
            set(bits, at + step * plane, cover, COVERED[step]);
            set(bits, at + Signature.COVER_WORDS + step, upright, CROSSED[step]);
            set(bits, at + Signature.COVER_WORDS + Signature.STEPS + step, level, CROSSED[step]);
        }
        bits[at + Signature.BORDER_WORDS] = proportions() | (shape.isPart() ? Signature.PART : 0);
    }

    private static void set(long[] bits, int word, double[] values, double from) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] >= from) {
                bits[word + i / Long.SIZE] |= 1L << i % Long.SIZE;
            }
        }
    }

    /** The more bits, the wider: from an eighth as wide as high to eight times, evenly in the logarithm. */
    private long proportions() {
        double octaves = Math.log(moments.wide() / moments.high()) / Math.log(2);
        int count = (int) Math.round((octaves + 3) / 6 * (Long.SIZE - 1));
        return (1L << Math.max(0, Math.min(Long.SIZE - 1, count))) - 1;
    }

    /** What a row covers, and the upright borders in it. */
    private void layRow(int r) {
        double[] covered = new double[FINE];
        double[] crossed = new double[COARSE];
        byte before = Shape.OUTSIDE;
        int began = 0;
        int row = r * width;
        for (int i = 0; i <= width; i++) {
            byte here = i < width ? cells[row + i] : Shape.OUTSIDE;
            if (here != before) {
                across.cross(i, crossed);
                if (before == Shape.OUTSIDE) {
                    began = i;
                } else if (here == Shape.OUTSIDE) {
                    across.cover(began, i, covered);
                }
                before = here;
            }
        }
        double[] rows = new double[FINE];
        down.cover(r, r + 1, rows);
        for (int y = 0; y < FINE; y++) {
            if (rows[y] > 0) {
                for (int x = 0; x < FINE; x++) {
                    cover[y * FINE + x] += rows[y] * covered[x];
                }
                for (int x = 0; x < COARSE; x++) {
                    upright[y / 2 * COARSE + x] += rows[y] / 2 * crossed[x];
                }
            }
        }
    }

    /** The level borders between a row and the one above it. */
    private void layBorderAbove(int r) {
        double[] met = new double[FINE];
        int began = -1;
        int row = r * width;
        boolean isOn = r < shape.height();
        boolean isBelow = r > 0;
        for (int i = 0; i <= width; i++) {
            byte here = isOn && i < width ? cells[row + i] : Shape.OUTSIDE;
            byte above = isBelow && i < width ? cells[row - width + i] : Shape.OUTSIDE;
            if (here != above) {
                began = began < 0 ? i : began;
            } else if (began >= 0) {
                across.cover(began, i, met);
                began = -1;
            }
        }
        double[] rows = new double[COARSE];
        down.cross(r, rows);
        for (int y = 0; y < COARSE; y++) {
            for (int x = 0; x < FINE && rows[y] > 0; x++) {
                level[y * COARSE + x / 2] += rows[y] * met[x] / 2;
            }
        }
    }

    /** Where the places of one direction come to lie on the grid. */
    private static final class Axis {
        private final double[] edges;

        Axis(double middle, double deviation, int places) {
            edges = new double[places + 1];
            Arrays.setAll(edges, i -> ((i - middle) / (2 * REACH * deviation) + 0.5) * FINE);
        }

        /** Adds how much of each field lies between two edges. */
        void cover(int from, int to, double[] fields) {
            double low = Math.max(0, edges[from]);
            double high = Math.min(FINE, edges[to]);
            int f = (int) low;
            if (high <= f + 1) {
                if (f < high) {
                    fields[f] += high - low;
                }
                return;
            }
            fields[f] += f + 1 - low;
            for (f++; f + 1 <= high; f++) {
                fields[f] += 1;
            }
            if (f < high) {
                fields[f] += high - f;
            }
        }

        /** Adds a border at an edge to the two coarse fields between whose middles it lies, more to the nearer. */
        void cross(int edge, double[] fields) {
            double at = edges[edge] * COARSE / FINE - 0.5;
            int low = (int) Math.floor(at);
            if (low >= 0 && low < COARSE) {
                fields[low] += (low + 1 - at);
            }
            if (low + 1 >= 0 && low + 1 < COARSE) {
                fields[low + 1] += (at - low);
            }
        }
    }
}
