package platekeep.client.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import platekeep.client.ui.PlatePainter;

class CardGroundTest {
    private static final Color CLOTH = new Color(0xE2E7EA);
    private static final Color CARD = new Color(0xFCFDFD);
    private static final Color EDGE = new Color(0xD2D9DE);
    private static final Color ACCENT = new Color(0x2C5F86);
    private static final int LEAST = 2;

    private final CardGround ground = new CardGround();

    /** Something that is painted on cloth. */
    private interface Painting {
        void on(Graphics2D g);
    }

    private static BufferedImage painted(double zoom, Painting painting) {
        BufferedImage picture = new BufferedImage(200, 160, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(CLOTH);
        g.fillRect(0, 0, 200, 160);
        g.scale(zoom, zoom);
        PlatePainter.smooth(g);
        painting.on(g);
        g.dispose();
        return picture;
    }

    /** The shape itself, filled and outlined by the platform. */
    private static void shape(Graphics2D g, int width, int height, Color edge, float stroke) {
        RoundRectangle2D shape = new RoundRectangle2D.Double(4.5, 4.5, width - 9, height - 9, 10, 10);
        g.setColor(CARD);
        g.fill(shape);
        g.setColor(edge);
        g.setStroke(new BasicStroke(stroke));
        g.draw(shape);
    }

    @Test
    void aCopiedGroundIsTheShapeThatThePlatformPaints() {
        for (double zoom : new double[] {1, 1.5, 2}) {
            for (int time = 0; time < 2; time++) {
                assertSame(
                        painted(zoom, g -> ground.paint(g, 90, 70, CARD, EDGE, 1f)),
                        painted(zoom, g -> shape(g, 90, 70, EDGE, 1f)));
                assertSame(
                        painted(zoom, g -> ground.paint(g, 80, 70, CARD, ACCENT, 2f)),
                        painted(zoom, g -> shape(g, 80, 70, ACCENT, 2f)));
            }
        }
    }

    /** The same but for rounding where smooth edges are laid over the cloth in two steps. */
    private static void assertSame(BufferedImage one, BufferedImage other) {
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                Color a = new Color(one.getRGB(x, y));
                Color b = new Color(other.getRGB(x, y));
                assertThat(Math.abs(a.getRed() - b.getRed()))
                        .as("red at " + x + "," + y)
                        .isLessThanOrEqualTo(LEAST);
                assertThat(Math.abs(a.getGreen() - b.getGreen())).as("green").isLessThanOrEqualTo(LEAST);
                assertThat(Math.abs(a.getBlue() - b.getBlue())).as("blue").isLessThanOrEqualTo(LEAST);
            }
        }
    }
}
