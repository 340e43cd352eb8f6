package platekeep.client.ui;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/**
 * Paints the cables of a chart that is seen so small that they are bars of one colour. Each bar covers the whole dots
 * nearest to its place; where a dot holds several cables it has their mean colour, thinned by the empty places among
 * them. Linear in the cables that are seen and the dots of the picture.
 */
final class BarRaster {
    private final Drawing drawing;
    private final ChartScale scale;
    private final double originX;
    private final double originY;
    private final BufferedImage image;
    private final int[] pixels;
    private final int width;
    private final int height;

    private BarRaster(Drawing drawing, ChartScale scale, double originX, double originY, BufferedImage image) {
        this.drawing = drawing;
        this.scale = scale;
        this.originX = originX;
        this.originY = originY;
        this.image = image;
        this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        this.width = image.getWidth();
        this.height = image.getHeight();
    }

    /**
     * The bars on nothing.
     *
     * @param scale in dots of the picture
     * @param originX where the chart's left edge lies in the picture, in dots
     * @param originY where its top edge lies
     */
    static BufferedImage picture(
            Drawing drawing, ChartScale scale, int width, int height, double originX, double originY) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        BarRaster raster = new BarRaster(drawing, scale, originX, originY, image);
        if (scale.pleat() >= 1 && scale.half() >= 1) {
            raster.paintBars();
        } else {
            raster.paintMeans();
        }
        return raster.image;
    }

    private void paintBars() {
        int[] left = new int[drawing.positions() + 2];
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.max(0, Math.min(width, (int) Math.rint(originX + scale.left(i))));
        }
        for (int level = 0; level < 2 * drawing.rows(); level++) {
            int top = Math.max(0, (int) Math.rint(originY + level * scale.half()));
            int bottom = Math.min(height, (int) Math.rint(originY + (level + 1) * scale.half()));
            if (top < bottom) {
                paintLevel(left, level, top);
                for (int y = top + 1; y < bottom; y++) {
                    System.arraycopy(pixels, top * width, pixels, y * width, width);
                }
            }
        }
    }

    /** One line of dots through the up or the down cables of a row. */
    private void paintLevel(int[] left, int level, int y) {
        int row = level / 2;
        boolean isUpper = level % 2 == 0;
        for (int i = 0; i < drawing.positions(); i++) {
            int from = left[i];
            int to = left[i + 2];
            if (from < to && drawing.isUp(row, i) == isUpper && drawing.rgb(row, i) != Drawing.NOTHING) {
                java.util.Arrays.fill(pixels, y * width + from, y * width + to, 0xFF000000 | drawing.rgb(row, i));
            }
        }
    }

    private void paintMeans() {
        int[] sums = new int[4 * width];
        int[] column = new int[drawing.positions()];
        for (int i = 0; i < column.length; i++) {
            int x = (int) Math.floor(originX + scale.left(i + 1));
            column[i] = x < 0 || x >= width ? -1 : x;
        }
        int row = 0;
        for (int y = 0; y < height; y++) {
            java.util.Arrays.fill(sums, 0);
            int last = Math.min(drawing.rows() - 1, (int) Math.floor((y + 1 - originY) / scale.row()));
            row = Math.max(row, (int) Math.floor((y - originY) / scale.row()));
            for (int r = Math.max(0, row); r <= last; r++) {
                add(sums, column, r);
            }
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = mean(sums, 4 * x);
            }
        }
    }

    private void add(int[] sums, int[] column, int row) {
        for (int i = 0; i < column.length; i++) {
            if (column[i] >= 0) {
                int at = 4 * column[i];
                int rgb = drawing.rgb(row, i);
                sums[at + 3] += 1 << 16;
                if (rgb != Drawing.NOTHING) {
                    sums[at] += rgb >> 16 & 255;
                    sums[at + 1] += rgb >> 8 & 255;
                    sums[at + 2] += rgb & 255;
                    sums[at + 3]++;
                }
            }
        }
    }

    /** Premultiplied; the count of places lies in the upper half of the fourth sum, that of cables in the lower. */
    private static int mean(int[] sums, int at) {
        int places = sums[at + 3] >>> 16;
        int cables = sums[at + 3] & 0xFFFF;
        return cables == 0
                ? 0
                : 255 * cables / places << 24
                        | sums[at] / places << 16
                        | sums[at + 1] / places << 8
                        | sums[at + 2] / places;
    }
}
