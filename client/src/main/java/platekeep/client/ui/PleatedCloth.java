package platekeep.client.ui;

import java.awt.Color;
import java.awt.image.BufferedImage;

/**
 * Pleated cloth seen from the front: a roll of light for each pleat, a dark valley between two, lit from the left above.
 */
public final class PleatedCloth {
    private static final int STEPS = 512;

    /** Sums of the light over one pleat, so that the mean over any stretch costs two look-ups. */
    private static final double[] SUM = sums();

    private PleatedCloth() {}

    private static double[] sums() {
        double[] sum = new double[STEPS + 1];
        for (int i = 0; i < STEPS; i++) {
            sum[i + 1] = sum[i] + lightAt((i + 0.5) / STEPS) / STEPS;
        }
        return sum;
    }

    /** The light at a place across one pleat, 0 at its left valley, 1 at its right. */
    private static double lightAt(double t) {
        double bulge = Math.sqrt(Math.max(0, 1 - Math.pow(2 * t - 1, 2)));
        double side = 0.5 - t;
        return 0.70 + 0.30 * Math.pow(bulge, 0.8) + 0.14 * side * bulge;
    }

    /** The mean light over a stretch, in pleats. */
    static double meanLight(double from, double to) {
        return (sumTo(to) - sumTo(from)) / Math.max(1e-9, to - from);
    }

    private static double sumTo(double x) {
        double whole = Math.floor(x);
        double at = (x - whole) * STEPS;
        int i = Math.min(STEPS - 1, (int) at);
        return whole * SUM[STEPS] + SUM[i] + (at - i) * (SUM[i + 1] - SUM[i]);
    }

    /**
     * Fills a raster with cloth.
     *
     * @param originX where pleat 0 begins, in dots
     * @param pleat dots across a pleat
     */
    static void fill(int[] pixels, int width, double originX, double pleat, int cloth) {
        int height = pixels.length / width;
        int[] line = new int[width];
        for (int x = 0; x < width; x++) {
            float light = (float) meanLight((x - originX) / pleat, (x + 1 - originX) / pleat);
            line[x] = ThreadMask.rgb((cloth >> 16 & 255) * light, (cloth >> 8 & 255) * light, (cloth & 255) * light);
        }
        for (int y = 0; y < height; y++) {
            System.arraycopy(line, 0, pixels, y * width, width);
        }
    }

    /** A picture of cloth alone. */
    public static BufferedImage picture(int width, int height, double pleat, Color cloth) {
        int[] pixels = new int[width * height];
        fill(pixels, width, 0, pleat, cloth.getRGB() & 0xFFFFFF);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.getRaster().setDataElements(0, 0, width, height, pixels);
        return image;
    }
}
