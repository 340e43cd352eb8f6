package platekeep.model.look;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * One picture laid over another of about its size, where their outlines agree best: in which rows and at how many places
 * they differ when each colour of the one stands for a colour of the other.
 *
 * <p>The places to try come from the pictures' edges and middles; at the best of them each colour stands for the one it
 * most often lies on. Not the least difference there could be, but that of two pictures that are alike save for a part.
 *
 * @param mirror how the other picture was mirrored
 * @param part whether bands above or below the pictures were left out
 * @param rows in how many rows they differ
 * @param places at how many places
 * @param of at how many places either shows something
 * @param sameColours whether each colour stands for just the same one, in sRGB
 */
public record Overlay(Mirror mirror, boolean part, int rows, int places, int of, boolean sameColours) {

    /** Whether the two are one picture, colours aside. */
    public boolean isSame() {
        return places == 0;
    }

    /** The share of places where they agree, 0 to 1. */
    public double agreement() {
        return 1 - places / (double) of;
    }

    /** Lays one picture over another, mirrored so; empty where they are of quite different sizes or there is none. */
    public static Optional<Overlay> of(Plate one, Plate other, Mirror mirror) {
        return Laid.of(one).over(Laid.of(other), mirror);
    }

    /** A picture that is to be laid over several others, with what was made out of it so far; for one thread. */
    public static final class Laid {
        private static final double LARGEST_SCALE = 1.2;
        private static final int MIRRORS = Mirror.values().length;

        private final List<Shape> readings;
        private final List<Moments> moments;
        private final Shape[] turned;
        private final Outline[] outlines;
        private final Palette palette;

        private Laid(List<Shape> readings, Palette palette) {
            this.readings = readings;
            this.moments = readings.stream().map(Moments::of).toList();
            this.turned = new Shape[readings.size() * MIRRORS];
            this.outlines = new Outline[readings.size() * MIRRORS];
            this.palette = palette;
        }

        /** Linear in the cells of the chart; holds a byte for each, and again for each way in which it is mirrored. */
        public static Laid of(Plate plate) {
            return new Laid(Shape.of(plate), plate.palette());
        }

        /** The likest way to lay it over another one that is mirrored so; a whole picture rather than a part. */
        public Optional<Overlay> over(Laid other, Mirror mirror) {
            return over(other, mirror, 0);
        }

        /** The same where they agree at least so much, else empty, which is told much sooner. */
        public Optional<Overlay> over(Laid other, Mirror mirror, double least) {
            Optional<Overlay> best = Optional.empty();
            for (int a = 0; a < readings.size(); a++) {
                for (int b = 0; b < other.readings.size(); b++) {
                    if (isNear(moments.get(a).wide(), other.moments.get(b).wide())
                            && isNear(
                                    moments.get(a).high(), other.moments.get(b).high())) {
                        Laying laying = new Laying(this, a, other, b, mirror);
                        Optional<Overlay> laid = laying.best(least);
                        Optional<Overlay> before = best;
                        best = laid.filter(o -> before.map(Overlay::worth).orElse(-1.0) < o.worth())
                                .or(() -> before);
                    }
                }
            }
            return best;
        }

        private Shape mirrored(int reading, Mirror mirror) {
            int at = reading * MIRRORS + mirror.ordinal();
            turned[at] = turned[at] == null ? readings.get(reading).mirrored(mirror) : turned[at];
            return turned[at];
        }

        private Outline outline(int reading, Mirror mirror) {
            int at = reading * MIRRORS + mirror.ordinal();
            outlines[at] = outlines[at] == null ? new Outline(mirrored(reading, mirror)) : outlines[at];
            return outlines[at];
        }

        private static boolean isNear(double one, double other) {
            return Math.max(one, other) <= LARGEST_SCALE * Math.min(one, other);
        }
    }

    private double worth() {
        return part ? agreement() - 0.05 : agreement();
    }

    /** Two shapes that are laid one over the other. */
    private static final class Laying {
        private static final int KEYS = 128;

        private final Laid first;
        private final Laid second;
        private final Mirror mirror;
        private final Shape one;
        private final Shape other;
        private final Outline here;
        private final Outline there;
        private final Moments middles;
        private final Moments otherMiddles;

        Laying(Laid first, int a, Laid second, int b, Mirror mirror) {
            this.first = first;
            this.second = second;
            this.mirror = mirror;
            this.one = first.readings.get(a);
            this.other = second.mirrored(b, mirror);
            this.here = first.outline(a, Mirror.NONE);
            this.there = second.outline(b, mirror);
            this.middles = first.moments.get(a);
            this.otherMiddles = second.moments.get(b).mirrored(mirror, other.width(), other.height());
        }

        /** Empty where they cannot agree so much. */
        Optional<Overlay> best(double least) {
            // of n places that either shows, the outlines may differ at (1 - least) n; n is half of all and of those
            int both = here.count + there.count;
            int best = least == 0 ? Integer.MAX_VALUE : (int) ((1 - least) / (1 + least) * both) + 1;
            if (Math.abs(here.count - there.count) >= best) {
                return Optional.empty();
            }
            int[] at = {Integer.MIN_VALUE, 0};
            for (int dy : tries(one.height(), other.height(), middles.down() - otherMiddles.down())) {
                for (int dx : tries(one.width(), other.width(), middles.across() - otherMiddles.across())) {
                    int differing = here.differing(there, dy, dx, best);
                    if (differing < best) {
                        best = differing;
                        at[0] = dy;
                        at[1] = dx;
                    }
                }
            }
            return at[0] == Integer.MIN_VALUE
                    ? Optional.empty()
                    : Optional.of(at(at[0], at[1])).filter(laid -> laid.agreement() >= least);
        }

        /** Near edge on near edge, far edge on far edge, middle on middle and one to each side of it. */
        private static int[] tries(int size, int otherSize, double middles) {
            int middle = (int) Math.round(middles);
            return Arrays.stream(new int[] {middle, middle - 1, middle + 1, 0, size - otherSize})
                    .distinct()
                    .toArray();
        }

        private Overlay at(int dy, int dx) {
            int[] stands = stands(dy, dx);
            int rows = 0;
            int places = 0;
            int of = 0;
            for (int r = Math.min(0, dy); r < Math.max(one.height(), other.height() + dy); r++) {
                boolean isOne = r >= 0 && r < one.height();
                boolean isOther = r >= dy && r < other.height() + dy;
                Met met = isOne && isOther ? met(r, dy, dx, stands) : Met.NOWHERE;
                int either = (isOne ? here.inRow(r) : 0) + (isOther ? there.inRow(r - dy) : 0) - met.places();
                of += either;
                rows += either > met.alike() ? 1 : 0;
                places += either - met.alike();
            }
            boolean isPart = one.isPart() || other.isPart();
            return new Overlay(mirror, isPart, rows, places, of, sameColours(stands, first.palette, second.palette));
        }

        /**
         * How two rows meet.
         *
         * @param places at which both are there
         * @param alike at how many of these each shows what stands for the other
         */
        private record Met(int places, int alike) {
            static final Met NOWHERE = new Met(0, 0);
        }

        private Met met(int r, int dy, int dx, int[] stands) {
            byte[] a = one.cells();
            byte[] b = other.cells();
            int rowA = r * one.width();
            int rowB = (r - dy) * other.width() - dx;
            int both = 0;
            int alike = 0;
            for (int i = Math.max(0, dx); i < Math.min(one.width(), other.width() + dx); i++) {
                byte x = a[rowA + i];
                byte y = b[rowB + i];
                if (x != Shape.OUTSIDE && y != Shape.OUTSIDE) {
                    both++;
                    alike += stands[x] == y ? 1 : 0;
                }
            }
            return new Met(both, alike);
        }

        /** For each colour of the one the colour of the other that it most often lies on; no two stand for one. */
        private int[] stands(int dy, int dx) {
            int[] here = one.keys();
            int[] there = other.keys();
            int[][] met = new int[here.length][there.length];
            int[] placeOf = places(here);
            int[] otherPlaceOf = places(there);
            for (int r = Math.max(0, dy); r < Math.min(one.height(), other.height() + dy); r++) {
                int rowA = r * one.width();
                int rowB = (r - dy) * other.width() - dx;
                for (int i = Math.max(0, dx); i < Math.min(one.width(), other.width() + dx); i++) {
                    byte a = one.cells()[rowA + i];
                    byte b = other.cells()[rowB + i];
                    if (a != Shape.OUTSIDE && b != Shape.OUTSIDE) {
                        met[placeOf[a]][otherPlaceOf[b]]++;
                    }
                }
            }
            int[] stands = new int[KEYS];
            Arrays.fill(stands, -1);
            stands[Shape.OUTSIDE] = Shape.OUTSIDE;
            for (int round = 0; round < Math.min(here.length, there.length); round++) {
                takeMost(met, here, there, stands);
            }
            return stands;
        }

        private static void takeMost(int[][] met, int[] here, int[] there, int[] stands) {
            int most = 0;
            int a = 0;
            int b = 0;
            for (int i = 0; i < here.length; i++) {
                for (int j = 0; j < there.length; j++) {
                    if (met[i][j] > most) {
                        most = met[i][j];
                        a = i;
                        b = j;
                    }
                }
            }
            if (most > 0) {
                stands[here[a]] = there[b];
                Arrays.fill(met[a], 0);
                for (int[] row : met) {
                    row[b] = 0;
                }
            }
        }

        private static int[] places(int[] keys) {
            int[] places = new int[KEYS];
            for (int i = 0; i < keys.length; i++) {
                places[keys[i]] = i;
            }
            return places;
        }

        private static boolean sameColours(int[] stands, Palette first, Palette second) {
            for (int key = 1; key < KEYS; key++) {
                boolean isGap = key == Row.EMPTY && stands[key] == Row.EMPTY;
                if (stands[key] >= 0 && !isGap) {
                    Optional<String> a = first.get((char) key).map(c -> c.srgb());
                    Optional<String> b = second.get((char) stands[key]).map(c -> c.srgb());
                    if (a.isEmpty() || !a.equals(b)) {
                        return false;
                    }
                }
            }
            return true;
        }
    }

    /** The places inside of a shape, a bit each. */
    private static final class Outline {
        private final int width;
        private final int height;
        private final int words;
        private final long[] bits;
        private final int[] inRow;
        private final int count;

        Outline(Shape shape) {
            this.width = shape.width();
            this.height = shape.height();
            this.words = width / Long.SIZE + 2;
            this.bits = new long[words * height];
            this.inRow = new int[height];
            byte[] cells = shape.cells();
            for (int r = 0; r < height; r++) {
                for (int w = 0; w * Long.SIZE < width; w++) {
                    int from = r * width + w * Long.SIZE;
                    long word = 0;
                    for (int at = Math.min((r + 1) * width, from + Long.SIZE) - 1; at >= from; at--) {
                        word = word << 1 | (cells[at] != Shape.OUTSIDE ? 1 : 0);
                    }
                    bits[r * words + w] = word;
                    inRow[r] += Long.bitCount(word);
                }
            }
            this.count = Arrays.stream(inRow).sum();
        }

        int inRow(int row) {
            return inRow[row];
        }

        /** At how many places just one of two is inside, the other one moved so; stops counting at a number. */
        int differing(Outline other, int dy, int dx, int most) {
            int differing = 0;
            int bottom = Math.max(height, other.height + dy);
            for (int r = Math.min(0, dy); r < bottom && differing < most; r++) {
                for (int i = Math.min(0, dx); i < Math.max(width, other.width + dx); i += Long.SIZE) {
                    differing += Long.bitCount(from(r, i) ^ other.from(r - dy, i - dx));
                }
            }
            return differing;
        }

        /** The 64 places from one on, outside where the shape ends. */
        private long from(int row, int place) {
            if (row < 0 || row >= height || place >= width || place <= -Long.SIZE) {
                return 0;
            }
            if (place < 0) {
                return bits[row * words] << -place;
            }
            int at = row * words + place / Long.SIZE;
            int shift = place % Long.SIZE;
            return bits[at] >>> shift | bits[at + 1] << 1 << Long.SIZE - 1 - shift;
        }
    }
}
