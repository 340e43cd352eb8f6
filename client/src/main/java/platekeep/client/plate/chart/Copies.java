package platekeep.client.plate.chart;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Repeat;

/** The next repeats of a chart that is one repeat of a strip, shown faintly to its right. */
final class Copies {
    private static final int MOST = 3;
    private static final int MOST_PLEATS = 4000;
    private static final float FAINT = 0.34f;

    private final Drawing drawing;

    Copies(Drawing drawing) {
        this.drawing = drawing;
    }

    private int count() {
        Repeat repeat = drawing.plate().repeat().orElse(null);
        if (repeat == null || repeat.every() < 1) {
            return 0;
        }
        return Math.max(0, Math.min(Math.min(MOST, repeat.times() - 1), MOST_PLEATS / repeat.every()));
    }

    /** How many pleats chart and copies take together. */
    int pleats() {
        int every = drawing.plate().repeat().map(Repeat::every).orElse(0);
        return drawing.pleats() + count() * every;
    }

    /** How many pleats are to be seen at once: the chart, and where the next repeat begins. */
    double fittedPleats() {
        return Math.min(pleats(), drawing.pleats() * 1.25);
    }

    /** Paints them; the chart's top left corner is the origin. */
    void paint(Graphics2D graphics, PlatePainter painter, ChartScale scale) {
        for (int n = 1; n <= count(); n++) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.translate(
                    scale.left(
                            (double) n * drawing.plate().repeat().orElseThrow().every()),
                    0);
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, FAINT));
            painter.paintCables(g, drawing, scale);
            g.dispose();
        }
    }
}
