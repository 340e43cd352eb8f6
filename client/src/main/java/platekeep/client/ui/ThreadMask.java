package platekeep.client.ui;

/**
 * One cable of floss as coverage and light for each dot of a small box, so that a cable is painted by mixing rather
 * than by drawing. The thread is a flattened roll of four strands with a slight twist, a band of sheen above its
 * middle, and ends that dip into the pleats; a soft shadow falls below it.
 *
 * <p>Costs as many samples as the box has dots, times {@value #SAMPLES} squared; made once for a scale and a place
 * between two dots, then used for every cable that falls there.
 */
final class ThreadMask {
    private static final int SAMPLES = 4;

    /** How far the box reaches beyond the bar, in parts of a half-level, for bulge and shadow. */
    private static final double MARGIN = 0.45;

    final int width;
    final int height;
    /** From the bar's whole-dot corner to the box's corner. */
    final int offset;

    final float[] cover;
    final float[] light;
    final float[] gloss;
    final float[] shadow;

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
        this.shadow = new float[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sample(x, y, barWidth, barHeight, phaseX, phaseY);
            }
        }
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
        shadow[at] = (float) shadowAt(
                2 * (x - offset - phaseX + 0.5) / barWidth - 1, 2 * (y - offset - phaseY + 0.5) / barHeight - 1);
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

    /** Darkens what lies under a cable whose bar begins at a whole dot. */
    void shade(int[] pixels, int imageWidth, int imageHeight, int barX, int barY) {
        mix(pixels, imageWidth, imageHeight, barX, barY, (at, below) -> {
            float keep = 1 - shadow[at];
            return rgb((below >> 16 & 255) * keep, (below >> 8 & 255) * keep, (below & 255) * keep);
        });
    }

    /** Lays a cable of a colour over what is there. */
    void lay(int[] pixels, int imageWidth, int imageHeight, int barX, int barY, int colour) {
        int r = colour >> 16 & 255;
        int g = colour >> 8 & 255;
        int b = colour & 255;
        mix(pixels, imageWidth, imageHeight, barX, barY, (at, below) -> {
            float c = cover[at];
            if (c == 0) {
                return below;
            }
            float lit = light[at];
            float shine = 255 * gloss[at];
            float keep = 1 - c;
            return rgb(
                    (below >> 16 & 255) * keep + c * (r * lit + shine * (1 - r / 420f)),
                    (below >> 8 & 255) * keep + c * (g * lit + shine * (1 - g / 420f)),
                    (below & 255) * keep + c * (b * lit + shine * (1 - b / 420f)));
        });
    }

    private interface Mix {
        int of(int at, int below);
    }

    private void mix(int[] pixels, int imageWidth, int imageHeight, int barX, int barY, Mix mix) {
        int left = barX - offset;
        int above = barY - offset;
        int fromX = Math.max(0, -left);
        int toX = Math.min(width, imageWidth - left);
        int toY = Math.min(height, imageHeight - above);
        for (int y = Math.max(0, -above); y < toY; y++) {
            int line = (above + y) * imageWidth + left;
            for (int x = fromX; x < toX; x++) {
                pixels[line + x] = mix.of(y * width + x, pixels[line + x]);
            }
        }
    }

    static int rgb(float r, float g, float b) {
        return clamp(r) << 16 | clamp(g) << 8 | clamp(b);
    }

    private static int clamp(float c) {
        return c < 0 ? 0 : c > 255 ? 255 : (int) (c + 0.5f);
    }
}
