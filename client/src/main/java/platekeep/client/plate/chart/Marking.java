package platekeep.client.plate.chart;

import java.awt.Graphics2D;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/** Marks that a screen of its own puts on a chart. */
@FunctionalInterface
public interface Marking {

    /** Paints them; the chart's top left corner is the origin. */
    void paint(Graphics2D g, Drawing drawing, ChartScale scale);
}
