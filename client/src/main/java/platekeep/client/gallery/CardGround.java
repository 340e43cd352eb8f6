package platekeep.client.gallery;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import platekeep.client.ui.PlatePainter;

/**
 * The ground of cards with its round corners. All cards are of one size, so it is drawn once for each way in which they look
 * and copied from then on: filling smooth shapes costs more than everything else on a card.
 */
final class CardGround {
    private static final int ARC = 10;

    /** Chosen or not, with the focus or not. */
    private static final int WAYS = 4;

    private final Map<Key, BufferedImage> drawn = new HashMap<>();

    /**
     * What a ground depends on.
     *
     * @param zoom dots of the screen for a dot of ours
     */
    private record Key(int width, int height, int zoom, Color fill, Color edge, float stroke) {

        void draw(Graphics2D g) {
            RoundRectangle2D ground = new RoundRectangle2D.Double(4.5, 4.5, width - 9, height - 9, ARC, ARC);
            g.setColor(fill);
            g.fill(ground);
            g.setColor(edge);
            g.setStroke(new BasicStroke(stroke));
            g.draw(ground);
        }

        BufferedImage picture() {
            BufferedImage picture = new BufferedImage(width * zoom, height * zoom, BufferedImage.TYPE_INT_ARGB_PRE);
            Graphics2D g = picture.createGraphics();
            PlatePainter.smooth(g);
            g.scale(zoom, zoom);
            draw(g);
            g.dispose();
            return picture;
        }
    }

    /** Paints the ground of a card so many dots wide and high. */
    void paint(Graphics2D g, int width, int height, Color fill, Color edge, float stroke) {
        double zoom = g.getTransform().getScaleX();
        Key key = new Key(width, height, (int) zoom, fill, edge, stroke);
        if (zoom != key.zoom()) {
            // a picture would not lie on the dots of the screen
            key.draw(g);
            return;
        }
        if (drawn.size() >= WAYS && !drawn.containsKey(key)) {
            drawn.clear();
        }
        g.drawImage(drawn.computeIfAbsent(key, Key::picture), 0, 0, width, height, null);
    }
}
