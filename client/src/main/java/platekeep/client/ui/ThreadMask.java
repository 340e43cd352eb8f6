package platekeep.client.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * One cable of floss as coverage and light for each dot of a small box, so that a cable is painted by mixing rather
 * than by drawing. The thread is a flattened roll of four strands with a slight twist, a band of sheen above its
 * middle, and ends that dip into the pleats; a soft shadow falls below it.
 *
 * <p>Costs as many samples as the box has dots, times {@value #SAMPLES} squared; made once for a scale and a place
 * between two dots, then used for every cable that falls there. Mixing is in whole numbers, red and blue at once, and
 * passes over dots that stay as they are.
 *
 * <p>Not for two threads at once.
 */
final class ThreadMask {
    private static final int SAMPLES = 4;

    /** So many colours are remembered. */
    private static final int MOST_COLOURS = 256;

    private static final int WHOLE = 256;
    private static final int NO_COLOUR = -1;

    /** How far the box reaches beyond the bar, in parts of a half-level, for bulge and shadow. */
    private static final double MARGIN = 0.45;

    final int width;
    final int height;
    /** From the bar's whole-dot corner to the box's corner. */
    final int offset;

    private final float[] cover;
    private final float[] light;
    private final float[] gloss;

    /** What a cable leaves of what lies under it, and what its shadow leaves, in parts of {@value #WHOLE}. */
    private final int[] keptBelow;

    private final int[] keptInShadow;

    /** The dots of which a cable leaves nothing, those of which it leaves a part, and those on which its shadow falls. */
    private final Dots hidden;

    private final Dots mixed;
    private final Dots shaded;
    private final int[] mixedKept;
    private final int[] shadedKept;

    private final Map<Integer, Floss> threads = new HashMap<>();
    private Floss last = new Floss(NO_COLOUR, new int[0], new int[0]);

    /**
     * @param barWidth in dots
     * @param barHeight in dots
     * @param phaseX how far right of a dot's edge the bar begins, 0 to 1
     * @param phaseY how far below
     */
    ThreadMask(double barWidth, double barHeight, double phaseX, double phaseY) {
        this.offset = (int) Math.ceil(barHeight * MARGIN) + 1;
        this.width = (int) Math.ceil(barWidth + phaseX) + 2 * offset;
        this.height = (int) Math.ceil(barHeight + phaseY) + 2 * offset;
        this.cover = new float[width * height];
        this.light = new float[width * height];
        this.gloss = new float[width * height];
        this.keptBelow = new int[width * height];
        this.keptInShadow = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sample(x, y, barWidth, barHeight, phaseX, phaseY);
            }
        }
        this.hidden = dots(at -> keptBelow[at] == 0);
        this.mixed = dots(at -> keptBelow[at] != 0 && keptBelow[at] != WHOLE);
        this.shaded = dots(at -> keptInShadow[at] != WHOLE);
        this.mixedKept = IntStream.of(mixed.places).map(at -> keptBelow[at]).toArray();
        this.shadedKept =
                IntStream.of(shaded.places).map(at -> keptInShadow[at]).toArray();
    }

    private Dots dots(IntPredicate which) {
        return new Dots(IntStream.range(0, width * height).filter(which), width, height);
    }

    private void sample(int x, int y, double barWidth, double barHeight, double phaseX, double phaseY) {
        int at = y * width + x;
        int inside = 0;
        double lightSum = 0;
        double glossSum = 0;
        for (int sy = 0; sy < SAMPLES; sy++) {
            for (int sx = 0; sx < SAMPLES; sx++) {
                double u = 2 * (x - offset - phaseX + (sx + 0.5) / SAMPLES) / barWidth - 1;
                double v = 2 * (y - offset - phaseY + (sy + 0.5) / SAMPLES) / barHeight - 1;
                if (isThread(u, v)) {
                    inside++;
                    lightSum += lightAt(u, v);
                    glossSum += glossAt(u, v);
                }
            }
        }
        int all = SAMPLES * SAMPLES;
        cover[at] = inside / (float) all;
        light[at] = inside == 0 ? 1 : (float) (lightSum / inside);
        gloss[at] = inside == 0 ? 0 : (float) (glossSum / inside);
        keptBelow[at] = Math.round(WHOLE * (1 - cover[at]));
        double shadow = shadowAt(
                2 * (x - offset - phaseX + 0.5) / barWidth - 1, 2 * (y - offset - phaseY + 0.5) / barHeight - 1);
        keptInShadow[at] = keptBelow[at] == 0 ? WHOLE : (int) Math.round(WHOLE * (1 - shadow));
    }

    /** The thread's outline: nearly a bar, with softly rounded ends, a little fuller than its level. */
    static boolean isThread(double u, double v) {
        double across = Math.abs(v) * 0.94;
        return u * u * u * u * Math.abs(u) + across * across * across <= 1;
    }

    private static double lightAt(double u, double v) {
        double roll = Math.sqrt(Math.max(0, 1 - 0.88 * v * v));
        double dip = 1 - 0.30 * u * u * u * u;
        double strands = 0.055 * Math.cos(2 * Math.PI * (1.9 * v + 0.9 * u));
        return (0.60 + 0.42 * roll - 0.07 * v) * dip + strands;
    }

    private static double glossAt(double u, double v) {
        double band = (v + 0.32) / 0.34;
        return 0.17 * Math.exp(-band * band) * (1 - u * u * Math.abs(u));
    }

    private static double shadowAt(double u, double v) {
        double across = Math.max(0, Math.abs(v - 0.22) - 0.72);
        double along = Math.max(0, Math.abs(u) - 0.93) * 2.2;
        return 0.42 * Math.exp(-6 * (across * across + along * along));
    }

    /** Darkens what lies under a cable whose bar begins at a whole dot; what the cable hides is left alone. */
    void shade(int[] pixels, int imageWidth, int imageHeight, int barX, int barY) {
        int left = barX - offset;
        int above = barY - offset;
        boolean whole = shaded.isWithin(imageWidth, imageHeight, left, above);
        int corner = above * imageWidth + left;
        int[] offsets = shaded.offsets(imageWidth);
        int[] kept = shadedKept;
        for (int n = 0; n < offsets.length; n++) {
            if (whole || shaded.isWithin(imageWidth, imageHeight, left, above, n)) {
                int at = corner + offsets[n];
                pixels[at] = part(pixels[at], kept[n]);
            }
        }
    }

    /** Lays a cable of a colour over what is there. */
    void lay(int[] pixels, int imageWidth, int imageHeight, int barX, int barY, int colour) {
        Floss thread = threadOf(colour);
        int left = barX - offset;
        int above = barY - offset;
        boolean whole = hidden.isWithin(imageWidth, imageHeight, left, above);
        int corner = above * imageWidth + left;
        int[] offsets = hidden.offsets(imageWidth);
        int[] inside = thread.hidden();
        for (int n = 0; n < offsets.length; n++) {
            if (whole || hidden.isWithin(imageWidth, imageHeight, left, above, n)) {
                pixels[corner + offsets[n]] = inside[n];
            }
        }
        offsets = mixed.offsets(imageWidth);
        int[] kept = mixedKept;
        int[] edge = thread.mixed();
        for (int n = 0; n < offsets.length; n++) {
            if (whole || mixed.isWithin(imageWidth, imageHeight, left, above, n)) {
                int at = corner + offsets[n];
                pixels[at] = edge[n] + part(pixels[at], kept[n]);
            }
        }
    }

    /** The thread of a colour as far as it covers, for the dots it hides and those it leaves a part of. */
    private record Floss(int colour, int[] hidden, int[] mixed) {}

    private Floss threadOf(int colour) {
        if (last.colour() != colour) {
            if (threads.size() > MOST_COLOURS) {
                threads.clear();
            }
            last = threads.computeIfAbsent(
                    colour, c -> new Floss(c, thread(c, hidden.places), thread(c, mixed.places)));
        }
        return last;
    }

    /** So many parts of {@value #WHOLE} of a colour, rounded. */
    private static int part(int rgb, int parts) {
        int redBlue = (rgb & 0xFF00FF) * parts + 0x800080 >>> 8 & 0xFF00FF;
        int green = (rgb & 0x00FF00) * parts + 0x008000 >>> 8 & 0x00FF00;
        return redBlue | green;
    }

    private int[] thread(int colour, int[] places) {
        int[] thread = new int[places.length];
        for (int n = 0; n < thread.length; n++) {
            int at = places[n];
            if (cover[at] > 0) {
                int most = 255 - part(0xFF, keptBelow[at]);
                thread[n] = lit(colour >> 16 & 255, at, most) << 16
                        | lit(colour >> 8 & 255, at, most) << 8
                        | lit(colour & 255, at, most);
            }
        }
        return thread;
    }

    private int lit(int channel, int at, int most) {
        float shine = 255 * gloss[at] * (1 - channel / 420f);
        return Math.min(most, clamp(cover[at] * (channel * light[at] + shine)));
    }

    static int rgb(float r, float g, float b) {
        return clamp(r) << 16 | clamp(g) << 8 | clamp(b);
    }

    private static int clamp(float c) {
        return c < 0 ? 0 : c > 255 ? 255 : (int) (c + 0.5f);
    }
}
