package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.TexturePaint;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;

/** Hatching behind whole rows: rising for what came, falling for what went, level for what was moved. */
enum Hatch {
    RISING,
    FALLING,
    LEVEL;

    private static final int SIZE = 7;

    /** Fills a box of the pane. */
    void fill(Graphics2D g, Rectangle2D box) {
        g.setPaint(new TexturePaint(tile(), new Rectangle2D.Double(box.getX(), box.getY(), SIZE, SIZE)));
        g.fill(box);
    }

    private BufferedImage tile() {
        BufferedImage tile = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = tile.createGraphics();
        PlatePainter.smooth(g);
        Color ink = Look.faintInk();
        g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 130));
        g.setStroke(new BasicStroke(1.1f));
        for (int shift = -SIZE; shift <= SIZE; shift += SIZE) {
            switch (this) {
                case RISING -> g.draw(new Line2D.Double(shift - 1, SIZE + 1, shift + SIZE + 1, -1));
                case FALLING -> g.draw(new Line2D.Double(shift - 1, -1, shift + SIZE + 1, SIZE + 1));
                default -> g.draw(new Line2D.Double(0, SIZE / 2.0, SIZE, SIZE / 2.0));
            }
        }
        g.dispose();
        return tile;
    }
}
