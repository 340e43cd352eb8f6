package platekeep.client.plate.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.OptionalInt;
import platekeep.client.plate.piece.Area;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;

/**
 * What the hand does, drawn over a chart: what is chosen, where something begins, about which axis drawing is mirrored.
 *
 * @param chosen what is chosen
 * @param firstEnd where a line or block begins
 * @param axis the sum of two places that face each other
 * @param line the geometric line in hand, by its place in the plate's list
 */
public record Overlay(Optional<Area> chosen, Optional<Spot> firstEnd, OptionalInt axis, OptionalInt line) {
    /** Nothing. */
    public static final Overlay NONE =
            new Overlay(Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty());

    private static final float[] DASHES = {5, 4};

    /** Below so many dots a pleat what is chosen is marked by plain bars. */
    private static final double FINE = 4;

    /** Paints it; the chart's top left corner is the origin. */
    void paint(Graphics2D g, Drawing drawing, ChartScale scale) {
        chosen.ifPresent(area -> paintChosen(g, drawing, scale, area));
        firstEnd.filter(drawing::has).ifPresent(spot -> twice(g, bar(drawing, scale, spot), DASHES));
        line.ifPresent(at -> drawing.lineBox(at)
                .ifPresent(box -> twice(
                        g,
                        new Rectangle2D.Double(
                                scale.left(box[0]),
                                scale.top(box[1]),
                                scale.left(box[2] - box[0]),
                                scale.top(box[3] - box[1])),
                        DASHES)));
        axis.ifPresent(sum -> {
            double x = scale.left(sum / 2.0 + 1);
            twice(g, new Line2D.Double(x, scale.top(drawing.top()), x, scale.top(drawing.rows())), null);
        });
    }

    private static void paintChosen(Graphics2D g, Drawing drawing, ChartScale scale, Area area) {
        Rectangle clip = g.getClipBounds();
        Color accent = Look.accent();
        int first = Math.max(area.top(), (int) Math.floor((clip.y - 4) / scale.row()));
        int last = Math.min(area.bottom(), (int) Math.ceil((clip.getMaxY() + 4) / scale.row()));
        int from = Math.max(area.left(), (int) Math.floor((clip.x - 4) / scale.pleat()) - 2);
        int to = Math.min(area.right(), (int) Math.ceil((clip.getMaxX() + 4) / scale.pleat()));
        g.setStroke(new BasicStroke(scale.pleat() >= 8 ? 2.2f : 1.4f));
        area.rim(drawing.plate())
                .ifPresent(rim -> rim.each(new int[] {first, last}, new int[] {from, to}, (row, i) -> {
                    if (scale.pleat() < FINE) {
                        g.setColor(accent);
                        g.fillRect((int) scale.left(i), (int) scale.top(row), least(scale.cable()), least(scale.row()));
                    } else {
                        Shape bar = bar(drawing, scale, new Spot(row, i));
                        g.setColor(new Color(255, 255, 255, 150));
                        g.fill(bar);
                        g.setColor(accent);
                        g.draw(bar);
                    }
                }));
        PlatePainter.smooth(g);
        if (area.isRectangle()) {
            twice(g, box(scale, area), DASHES);
        }
    }

    private static int least(double dots) {
        return Math.max(1, (int) dots);
    }

    private static Shape bar(Drawing drawing, ChartScale scale, Spot spot) {
        CableKind kind = drawing.kind(spot.row(), spot.index());
        return PlatePainter.bar(scale, scale.left(spot.index()), scale.top(spot.row(), kind));
    }

    private static Rectangle2D.Double box(ChartScale scale, Area area) {
        return new Rectangle2D.Double(
                scale.left(area.left()), scale.top(area.top()), scale.left(area.width() + 1), scale.top(area.height()));
    }

    /** Where it is seen of what is chosen, in dots from the chart's corner; empty when nothing is. */
    Optional<Rectangle> chosenBounds(ChartScale scale) {
        return chosen.map(area -> {
            Rectangle bounds = box(scale, area).getBounds();
            bounds.grow(4, 4);
            return bounds;
        });
    }

    /** On pale ground and on dark cables alike. */
    private static void twice(Graphics2D g, Shape shape, float[] dashes) {
        g.setStroke(new BasicStroke(3.4f));
        g.setColor(new Color(255, 255, 255, 170));
        g.draw(shape);
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.setColor(Look.accent());
        g.draw(shape);
    }
}
