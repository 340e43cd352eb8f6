package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.EnumMap;
import java.util.Map;
import platekeep.client.compare.chart.Line;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots;
import platekeep.client.ui.Look;
import platekeep.model.compare.CableChange;
import platekeep.model.compare.CableChange.How;
import platekeep.model.compare.Side;
import platekeep.model.draw.Knot;
import platekeep.model.draw.Spot;
import platekeep.model.draw.Strand;

/** The marks of what changed on one side: outlines of cables, rings, flags at starts, and the frame of the change chosen. */
final class MarksPainter {
    private final PairedPlates plates;
    private final Sight sight;

    MarksPainter(PairedPlates plates, Sight sight) {
        this.plates = plates;
        this.sight = sight;
    }

    static Outline.Manner manner(How how) {
        return switch (how) {
            case PUT_IN -> Outline.Manner.SOLID;
            case TAKEN_OUT -> Outline.Manner.DASHED;
            case RECOLOURED -> Outline.Manner.DOUBLE;
        };
    }

    void paint(Graphics2D g, Side side, Seen seen) {
        Map<How, Outline> outlines = new EnumMap<>(How.class);
        for (How how : How.values()) {
            outlines.put(how, new Outline());
        }
        for (int at = seen.first(); at <= seen.last(); at++) {
            int row = plates.lines().line(at).row(side);
            if (row != Line.NONE) {
                for (CableChange change : plates.changes(side, row)) {
                    outlines.get(change.how())
                            .add(at, (double) change.from() - plates.from(), (double) change.to() + 2 - plates.from());
                }
            }
        }
        outlines.forEach((how, outline) -> outline.draw(g, sight, manner(how)));
        paintStitches(g, side);
    }

    /** Rings, underlines and flags alone: dashed for what went, solid for what came. */
    void paintStitches(Graphics2D g, Side side) {
        boolean went = side == Side.BEFORE;
        double pleat = sight.scale().pleat();
        int offset = plates.offset(side);
        for (Knot knot : plates.stitches().knots(side)) {
            double r = Math.max(5, pleat * 1.3);
            double x = sight.xOf(offset + knot.x());
            double y = sight.yOf(plates.lineOf(side, knot.y()));
            line(g, new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), went);
        }
        Path2D under = new Path2D.Double();
        for (Strand strand : plates.stitches().strands(side)) {
            double lower = sight.scale().half() * 0.75;
            under.moveTo(sight.xOf(offset + strand.x1()), sight.yOf(plates.lineOf(side, strand.y1())) + lower);
            under.lineTo(sight.xOf(offset + strand.x2()), sight.yOf(plates.lineOf(side, strand.y2())) + lower);
        }
        line(g, under, went);
        for (Spot start : plates.stitches().starts(side)) {
            flag(g, side, start, went);
        }
    }

    /** A little flag whose foot stands on the cable. */
    private void flag(Graphics2D g, Side side, Spot start, boolean went) {
        double x = sight.xOf((double) plates.offset(side) + start.index() + 1);
        double y = sight.yOf(plates.lineOf(side, start.row() + 0.5));
        double size = Math.max(9, Math.min(18, sight.scale().row()));
        Path2D flag = new Path2D.Double();
        flag.moveTo(x, y);
        flag.lineTo(x, y - 1.6 * size);
        flag.lineTo(x + size, y - 1.2 * size);
        flag.lineTo(x, y - 0.8 * size);
        if (!went) {
            g.setColor(Look.paper());
            g.fill(flag);
        }
        line(g, flag, went);
    }

    /** Dashed for what went, solid for what came. */
    private static void line(Graphics2D g, Shape shape, boolean went) {
        g.setColor(Look.paper());
        g.setStroke(new BasicStroke(4.4f));
        g.draw(shape);
        Color ink = Look.ink();
        g.setColor(ink);
        float[] dashes = went ? new float[] {4, 3} : null;
        g.setStroke(new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0));
        g.draw(shape);
    }

    void paintChosen(Graphics2D g, Side side, Seen seen, Spots chosen) {
        Outline outline = new Outline();
        chosen.forEach(
                side,
                seen.first() - 1,
                seen.last() + 1,
                (line, stretches) -> stretches.forEach(s -> outline.add(line, s.from(), s.to())));
        outline.draw(g, sight, Outline.Manner.HEAVY);
    }
}
