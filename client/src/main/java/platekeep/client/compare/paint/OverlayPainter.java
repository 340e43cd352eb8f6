package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import platekeep.client.compare.chart.Line;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.compare.Side;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.CableKind;

/**
 * The two pictures one over the other, like tracing paper on paper: what is the same is pale, a cable that came is full,
 * one that went is hollow and struck through, one worked in another colour shows its old colour at the left and its new
 * one at the right.
 */
final class OverlayPainter {
    private static final double PALE = 0.68;

    private final PairedPlates plates;
    private final Sight sight;

    OverlayPainter(PairedPlates plates, Sight sight) {
        this.plates = plates;
        this.sight = sight;
    }

    void paint(Graphics2D g, Seen seen) {
        if (sight.scale().pleat() < ChartGround.FINE) {
            BufferedImage dots = Dots.image(seen.clip(), this::dot);
            g.drawImage(dots, seen.clip().x, seen.clip().y, null);
            return;
        }
        int first = plates.from() + (int) Math.floor(sight.pleatAt(seen.clip().getMinX())) - 2;
        int last = plates.from() + (int) Math.ceil(sight.pleatAt(seen.clip().getMaxX()));
        for (int at = seen.first(); at <= seen.last(); at++) {
            Line line = plates.lines().line(at);
            for (int position = Math.max(plates.from(), first);
                    position <= Math.min(plates.from() + plates.pleats() - 2, last);
                    position++) {
                paintCable(g, at, position);
            }
        }
    }

    private void paintCable(Graphics2D g, int at, int position) {
        Line line = plates.lines().line(at);
        int was = plates.was(line, position);
        int is = plates.is(line, position);
        if (was == Drawing.NOTHING && is == Drawing.NOTHING) {
            return;
        }
        ChartScale scale = sight.scale();
        double x = sight.xOf((double) position - plates.from());
        double y = sight.yOf(at) + (kind(line, position) == CableKind.UP ? 0 : scale.half());
        if (!plates.isChanged(line, position)) {
            PlatePainter.paintCable(g, pale(is), scale, x, y);
        } else if (is == Drawing.NOTHING) {
            hollow(g, new Color(was), scale, x, y);
        } else if (was == Drawing.NOTHING) {
            PlatePainter.paintCable(g, new Color(is), scale, x, y);
        } else {
            halved(g, new Color(was), new Color(is), scale, x, y);
        }
    }

    /** The old colour at the left, the new one at the right. */
    private static void halved(Graphics2D g, Color was, Color is, ChartScale scale, double x, double y) {
        PlatePainter.paintCable(g, is, scale, x, y);
        Shape kept = g.getClip();
        g.clip(new Rectangle2D.Double(x, y, scale.pleat(), scale.half()));
        PlatePainter.paintCable(g, was, scale, x, y);
        g.setClip(kept);
        g.setColor(Look.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x + scale.pleat(), y, x + scale.pleat(), y + scale.half()));
    }

    private static void hollow(Graphics2D g, Color was, ChartScale scale, double x, double y) {
        RoundRectangle2D bar = PlatePainter.bar(scale, x, y);
        g.setColor(Look.paper());
        g.fill(bar);
        g.setColor(was);
        g.setStroke(new BasicStroke((float) Math.max(1.2, scale.half() * 0.28)));
        double inset = Math.max(0.6, scale.half() * 0.14);
        g.draw(new RoundRectangle2D.Double(
                bar.getX() + inset,
                bar.getY() + inset,
                bar.getWidth() - 2 * inset,
                bar.getHeight() - 2 * inset,
                bar.getArcWidth(),
                bar.getArcHeight()));
        g.setColor(Look.ink());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x + scale.pleat() * 0.5, y + scale.half() - 1, x + scale.pleat() * 1.5, y + 1));
    }

    private int dot(double x, double y) {
        double down = sight.lineAt(y);
        double pleat = sight.pleatAt(x);
        int at = (int) Math.floor(down);
        if (at < 0 || at >= plates.lines().size()) {
            return Drawing.NOTHING;
        }
        Line line = plates.lines().line(at);
        CableKind level = down - at < 0.5 ? CableKind.UP : CableKind.DOWN;
        int right = plates.from() + (int) Math.floor(pleat);
        for (int position = right; position >= right - 1; position--) {
            int was = plates.was(line, position);
            int is = plates.is(line, position);
            boolean isThere = was != Drawing.NOTHING || is != Drawing.NOTHING;
            if (isThere && kind(line, position) == level) {
                boolean isChanged = plates.isChanged(line, position);
                return isChanged
                        ? dot(was, is, ((int) x + (int) y) % 2 == 0, position == right)
                        : pale(is).getRGB() & 0xFFFFFF;
            }
        }
        return Drawing.NOTHING;
    }

    private static int dot(int was, int is, boolean isEven, boolean isLeft) {
        if (is == Drawing.NOTHING) {
            return isEven ? was : Look.paper().getRGB() & 0xFFFFFF;
        }
        return was != Drawing.NOTHING && isLeft ? was : is;
    }

    private static Color pale(int rgb) {
        Color colour = new Color(rgb);
        Color paper = Look.paper();
        return new Color(
                mixed(colour.getRed(), paper.getRed()),
                mixed(colour.getGreen(), paper.getGreen()),
                mixed(colour.getBlue(), paper.getBlue()));
    }

    private static int mixed(int colour, int paper) {
        return (int) Math.round(colour + (paper - colour) * PALE);
    }

    private CableKind kind(Line line, int position) {
        Side side = line.after() != Line.NONE && isOn(Side.AFTER, position) || line.before() == Line.NONE
                ? Side.AFTER
                : Side.BEFORE;
        Drawing drawing = plates.drawing(side);
        int index = position - plates.plate(side).from();
        return isOn(side, position) ? drawing.kind(line.row(side), index) : CableKind.DOWN;
    }

    private boolean isOn(Side side, int position) {
        int index = position - plates.plate(side).from();
        return index >= 0 && index < plates.drawing(side).positions();
    }
}
