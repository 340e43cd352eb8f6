package platekeep.client.compare.paint;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import platekeep.model.draw.Drawing;

/** A picture made dot by dot. */
final class Dots {
    private Dots() {}

    /** The colour of a dot of the pane as {@code 0xRRGGBB}, or {@link Drawing#NOTHING}. */
    interface At {
        int at(double x, double y);
    }

    /** A picture of a part of the pane, clear where there is nothing. */
    static BufferedImage image(Rectangle part, At dots) {
        int width = Math.max(1, part.width);
        int height = Math.max(1, part.height);
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int rgb = dots.at(part.x + x + 0.5, part.y + y + 0.5);
                pixels[y * width + x] = rgb == Drawing.NOTHING ? 0 : 0xFF000000 | rgb;
            }
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, width, height, pixels, 0, width);
        return image;
    }
}
