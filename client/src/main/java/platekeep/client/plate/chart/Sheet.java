package platekeep.client.plate.chart;

import java.awt.Graphics2D;
import java.awt.GraphicsDevice;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/**
 * Paints into memory first, dot for dot as the screen has them, and puts the whole on the screen at once: a chart is
 * thousands of small shapes, and each would be handed to the display by itself.
 */
final class Sheet {
    private BufferedImage image;

    /** Paints what lies in the clip. */
    void paint(Graphics2D screen, Consumer<Graphics2D> painting) {
        if (screen.getDeviceConfiguration().getDevice().getType() == GraphicsDevice.TYPE_IMAGE_BUFFER) {
            painting.accept(screen);
            return;
        }
        AffineTransform device = screen.getTransform();
        Rectangle clip = screen.getClipBounds();
        Rectangle dots = device.createTransformedShape(clip).getBounds2D().getBounds();
        if (dots.isEmpty()) {
            return;
        }
        if (image == null || image.getWidth() < dots.width || image.getHeight() < dots.height) {
            image = new BufferedImage(dots.width, dots.height, BufferedImage.TYPE_INT_RGB);
        }
        Graphics2D g = image.createGraphics();
        g.translate(-dots.x, -dots.y);
        g.transform(device);
        g.setClip(clip);
        painting.accept(g);
        g.dispose();
        screen.setTransform(new AffineTransform());
        screen.drawImage(
                image, dots.x, dots.y, dots.x + dots.width, dots.y + dots.height, 0, 0, dots.width, dots.height, null);
    }
}
