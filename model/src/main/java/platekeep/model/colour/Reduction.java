package platekeep.model.colour;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A picture's colours reduced to a few.
 *
 * <p>Idea: k-means in CIELAB over the distinct colours, each weighing as often as it comes (S. Lloyd, "Least squares
 * quantization in PCM", IEEE Transactions on Information Theory 28(2), 1982). It begins with the colour that comes most
 * often and then always the one that lies farthest, by distance times weight, from those taken, so the same picture
 * always gives the same colours. Colours that differ by less than a 64th of a channel count as one when there are many.
 * At most {@value #ROUNDS} rounds over the distinct colours, which are then at most 262,144.
 */
public final class Reduction {
    private static final int ROUNDS = 24;
    private static final int MANY = 4096;

    /** A colour that makes up more than one in so many of those around it is taken as it is, without their mixture. */
    private static final int PLAIN = 3;

    private final int[] rgb;
    private final double[][] lab;
    private final long[] weight;

    private Reduction(int[] rgb, long[] weight) {
        this.rgb = rgb;
        this.weight = weight;
        this.lab = new double[rgb.length][];
        for (int i = 0; i < rgb.length; i++) {
            lab[i] = triple(rgb[i]);
        }
    }

    private static double[] triple(int rgb) {
        Lab of = Lab.of(rgb);
        return new double[] {of.l(), of.a(), of.b()};
    }

    /**
     * The few colours that stand best for all, the one that comes most often first.
     *
     * @param colours {@code 0xRRGGBB}, one for each place of the picture
     * @param most how many at most, at least 1; fewer when the picture has fewer
     */
    public static int[] of(int[] colours, int most) {
        Map<Integer, long[]> distinct = distinct(colours, 0xFFFFFF);
        if (distinct.size() > MANY) {
            distinct = distinct(colours, 0xFCFCFC);
        }
        int[] rgb = new int[distinct.size()];
        long[] weight = new long[distinct.size()];
        int at = 0;
        for (long[] sums : distinct.values()) {
            rgb[at] = (int) (sums[0] / sums[3]) << 16 | (int) (sums[1] / sums[3]) << 8 | (int) (sums[2] / sums[3]);
            weight[at++] = sums[3];
        }
        return rgb.length == 0 ? new int[0] : new Reduction(rgb, weight).reduced(Math.min(most, rgb.length));
    }

    /** For each distinct colour its sums of channels and its count; in the order in which they come. */
    private static Map<Integer, long[]> distinct(int[] colours, int mask) {
        Map<Integer, long[]> distinct = new java.util.LinkedHashMap<>();
        for (int colour : colours) {
            long[] sums = distinct.computeIfAbsent(colour & mask, c -> new long[4]);
            sums[0] += colour >> 16 & 255;
            sums[1] += colour >> 8 & 255;
            sums[2] += colour & 255;
            sums[3]++;
        }
        return distinct;
    }

    private int[] reduced(int count) {
        double[][] centres = first(count);
        int[] nearest = new int[rgb.length];
        Arrays.fill(nearest, -1);
        for (int round = 0; round < ROUNDS && assign(centres, nearest); round++) {
            centre(centres, nearest);
        }
        return byWeight(centres, nearest);
    }

    private double[][] first(int count) {
        double[][] centres = new double[count][];
        double[] away = new double[rgb.length];
        Arrays.fill(away, Double.MAX_VALUE);
        int next = 0;
        for (int i = 1; i < rgb.length; i++) {
            next = weight[i] > weight[next] ? i : next;
        }
        for (int c = 0; c < count; c++) {
            centres[c] = lab[next].clone();
            double farthest = -1;
            for (int i = 0; i < rgb.length; i++) {
                away[i] = Math.min(away[i], squared(lab[i], centres[c]));
            }
            for (int i = 0; i < rgb.length; i++) {
                double far = away[i] * weight[i];
                if (far > farthest) {
                    farthest = far;
                    next = i;
                }
            }
        }
        return centres;
    }

    /** Whether any colour goes to another centre than before. */
    private boolean assign(double[][] centres, int[] nearest) {
        boolean changed = false;
        for (int i = 0; i < rgb.length; i++) {
            int best = nearest(lab[i], centres);
            changed |= best != nearest[i];
            nearest[i] = best;
        }
        return changed;
    }

    private void centre(double[][] centres, int[] nearest) {
        double[][] sums = new double[centres.length][3];
        long[] count = new long[centres.length];
        for (int i = 0; i < rgb.length; i++) {
            for (int k = 0; k < 3; k++) {
                sums[nearest[i]][k] += lab[i][k] * weight[i];
            }
            count[nearest[i]] += weight[i];
        }
        for (int c = 0; c < centres.length; c++) {
            for (int k = 0; k < 3 && count[c] > 0; k++) {
                centres[c][k] = sums[c][k] / count[c];
            }
        }
    }

    private int[] byWeight(double[][] centres, int[] nearest) {
        long[] count = new long[centres.length];
        int[] commonest = new int[centres.length];
        Arrays.fill(commonest, -1);
        for (int i = 0; i < rgb.length; i++) {
            int c = nearest[i];
            count[c] += weight[i];
            commonest[c] = commonest[c] < 0 || weight[i] > weight[commonest[c]] ? i : commonest[c];
        }
        return java.util.stream.IntStream.range(0, centres.length)
                .filter(c -> count[c] > 0)
                .boxed()
                .sorted((a, b) -> Long.compare(count[b], count[a]))
                .mapToInt(c -> weight[commonest[c]] * PLAIN > count[c]
                        ? rgb[commonest[c]]
                        : new Lab(centres[c][0], centres[c][1], centres[c][2]).rgb())
                .distinct()
                .toArray();
    }

    /**
     * For each colour the index of the one of a few that lies nearest in CIELAB, the first of two as near.
     *
     * @param few not empty
     */
    public static int[] nearest(int[] colours, int[] few) {
        double[][] centres = Arrays.stream(few).mapToObj(Reduction::triple).toArray(double[][]::new);
        Map<Integer, Integer> known = new HashMap<>();
        int[] nearest = new int[colours.length];
        for (int i = 0; i < colours.length; i++) {
            nearest[i] = known.computeIfAbsent(colours[i], c -> nearest(triple(c), centres));
        }
        return nearest;
    }

    private static int nearest(double[] lab, double[][] centres) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int c = 0; c < centres.length; c++) {
            double away = squared(lab, centres[c]);
            if (away < least) {
                least = away;
                best = c;
            }
        }
        return best;
    }

    private static double squared(double[] a, double[] b) {
        double l = a[0] - b[0];
        double x = a[1] - b[1];
        double y = a[2] - b[2];
        return l * l + x * x + y * y;
    }
}
