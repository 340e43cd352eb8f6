package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.ui.Look;

/** The numbers of the pleats above a pane. */
final class PleatRuler {
    /** The room that it takes. */
    static final int HEIGHT = 20;

    private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    private PleatRuler() {}

    static void paint(Graphics2D g, PairedPlates plates, Sight sight, int width) {
        FontMetrics metrics = g.getFontMetrics();
        int every = every(metrics.stringWidth("-000") + 8, sight.scale().pleat());
        int first = Math.max(0, (int) Math.floor(sight.pleatAt(0)));
        int last = Math.min(plates.pleats() - 1, (int) Math.ceil(sight.pleatAt(width)));
        g.setStroke(new BasicStroke(1));
        for (int i = first; i <= last; i++) {
            int pleat = plates.from() + i;
            if (Math.floorMod(pleat, every) == 0) {
                double middle = sight.xOf(i + 0.5);
                String text = Integer.toString(pleat);
                g.setColor(Look.faintInk());
                g.draw(new Line2D.Double(middle, HEIGHT - 5.0, middle, HEIGHT - 1.0));
                g.drawString(text, (int) (middle - metrics.stringWidth(text) / 2.0), HEIGHT - 7);
            }
        }
    }

    /** The least of a few plain steps that leaves every number room enough. */
    static int every(int needed, double step) {
        for (int every : STEPS) {
            if (every * step >= needed) {
                return every;
            }
        }
        return STEPS[STEPS.length - 1];
    }
}
