package platekeep.client.plate.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import platekeep.client.ui.Look;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;

/** Flags on a chart where something was remarked that is still open: a line under the place, a bubble at its end. */
final class Flags {
    private static final double SIZE = 11;

    private Flags() {}

    /** Paints them; the chart's top left corner is the origin. */
    static void paint(Graphics2D g, Drawing drawing, ChartScale scale) {
        Plate plate = drawing.plate();
        for (Remark remark : plate.remarks()) {
            int row = remark.row().map(plate::indexOf).orElse(-1);
            if (row >= 0 && !remark.done() && remark.from().isPresent()) {
                int from = remark.from().get() - plate.from();
                int to = remark.to().orElse(remark.from().get()) - plate.from();
                paint(g, scale.left(from), scale.left(to + 2), scale.top(row), scale.row());
            }
        }
    }

    private static void paint(Graphics2D g, double left, double right, double top, double height) {
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke(2f));
        g.draw(new Line2D.Double(left, top + height, right, top + height));
        Path2D bubble = new Path2D.Double();
        bubble.moveTo(right, top);
        bubble.lineTo(right + 3, top - SIZE * 0.4);
        bubble.lineTo(right, top - SIZE * 0.4);
        bubble.lineTo(right, top - SIZE * 1.2);
        bubble.lineTo(right + SIZE * 1.4, top - SIZE * 1.2);
        bubble.lineTo(right + SIZE * 1.4, top - SIZE * 0.4);
        bubble.lineTo(right + 7, top - SIZE * 0.4);
        bubble.closePath();
        g.fill(bubble);
        g.setStroke(new BasicStroke(1f));
        g.setColor(new Color(255, 255, 255, 220));
        g.draw(bubble);
    }
}
