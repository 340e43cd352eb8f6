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
 */
public record Overlay(Optional<Area> chosen, Optional<Spot> firstEnd, OptionalInt axis) {
    /** Nothing. */
    public static final Overlay NONE = new Overlay(Optional.empty(), Optional.empty(), OptionalInt.empty());

    private static final float[] DASHES = {5, 4};

    /** Paints it; the chart's top left corner is the origin. */
    void paint(Graphics2D g, Drawing drawing, ChartScale scale) {
        chosen.ifPresent(area -> paintChosen(g, drawing, scale, area));
        firstEnd.filter(drawing::has).ifPresent(spot -> twice(g, bar(drawing, scale, spot), DASHES));
        axis.ifPresent(sum -> {
            double x = scale.left(sum / 2.0 + 1);
            twice(g, new Line2D.Double(x, scale.top(drawing.top()), x, scale.top(drawing.rows())), null);
        });
    }

    private static void paintChosen(Graphics2D g, Drawing drawing, ChartScale scale, Area area) {
        Rectangle clip = g.getClipBounds();
        Color accent = Look.accent();
        for (int row = area.top(); row <= area.bottom(); row++) {
            for (int i = area.left(); i <= area.right(); i++) {
                Spot spot = new Spot(row, i);
                boolean isCable = area.has(spot) && drawing.has(spot) && drawing.rgb(row, i) != Drawing.NOTHING;
                if (isCable && clip.intersects(bar(drawing, scale, spot).getBounds2D())) {
                    g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 70));
                    g.fill(bar(drawing, scale, spot));
                    if (scale.pleat() >= 4) {
                        g.setStroke(new BasicStroke(scale.pleat() >= 8 ? 2f : 1.2f));
                        g.setColor(accent);
                        g.draw(bar(drawing, scale, spot));
                    }
                }
            }
        }
        if (area.isRectangle()) {
            twice(g, box(scale, area), DASHES);
        }
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
