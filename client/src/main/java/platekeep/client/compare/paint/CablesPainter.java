package platekeep.client.compare.paint;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import platekeep.client.compare.chart.Line;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.ui.PlatePainter;
import platekeep.model.compare.Side;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Knot;
import platekeep.model.draw.Strand;
import platekeep.model.plate.CableKind;

/**
 * The cables, geometric lines and single stitches of one side. Small charts are painted dot by dot, so that a chart of
 * millions of cables costs as much as the dots that it covers.
 */
final class CablesPainter {
    private final PairedPlates plates;
    private final Sight sight;

    CablesPainter(PairedPlates plates, Sight sight) {
        this.plates = plates;
        this.sight = sight;
    }

    void paint(Graphics2D g, Side side, Seen seen) {
        Drawing drawing = plates.drawing(side);
        if (drawing.positions() == 0) {
            return;
        }
        if (sight.scale().pleat() < ChartGround.FINE) {
            paintDots(g, side, seen);
        } else {
            paintRows(g, side, seen);
        }
        paintOnTop(g, side);
    }

    private void paintRows(Graphics2D g, Side side, Seen seen) {
        double left = sight.xOf(plates.offset(side));
        for (int at = seen.first(); at <= seen.last(); at++) {
            int row = plates.lines().line(at).row(side);
            if (row != Line.NONE) {
                AffineTransform kept = g.getTransform();
                g.translate(left, sight.yOf(at));
                PlatePainter.paintRow(g, plates.drawing(side), row, sight.scale(), 0);
                g.setTransform(kept);
            }
        }
    }

    private void paintDots(Graphics2D g, Side side, Seen seen) {
        Drawing drawing = plates.drawing(side);
        BufferedImage image = Dots.image(seen.clip(), (x, y) -> {
            double at = sight.lineAt(y);
            int line = (int) Math.floor(at);
            if (line < 0 || line >= plates.lines().size()) {
                return Drawing.NOTHING;
            }
            int row = plates.lines().line(line).row(side);
            return row == Line.NONE
                    ? Drawing.NOTHING
                    : at(drawing, row, at - line, sight.pleatAt(x) - plates.offset(side));
        });
        g.drawImage(image, seen.clip().x, seen.clip().y, null);
    }

    /** The colour of the cable over a place within a row. */
    static int at(Drawing drawing, int row, double down, double pleat) {
        int right = (int) Math.floor(pleat);
        CableKind level = down < 0.5 ? CableKind.UP : CableKind.DOWN;
        for (int index = right; index >= right - 1; index--) {
            if (index >= 0
                    && index < drawing.positions()
                    && drawing.rgb(row, index) != Drawing.NOTHING
                    && drawing.kind(row, index) == level) {
                return drawing.rgb(row, index);
            }
        }
        return Drawing.NOTHING;
    }

    /** The geometric lines and single stitches alone. */
    void paintOnTop(Graphics2D g, Side side) {
        Drawing drawing = plates.drawing(side);
        ChartScale scale = sight.scale();
        AffineTransform kept = g.getTransform();
        g.translate(sight.xOf(plates.offset(side)), sight.yOf(0));
        for (Strand s : drawing.strands()) {
            PlatePainter.paintStrand(
                    g,
                    scale,
                    new Strand(s.x1(), plates.lineOf(side, s.y1()), s.x2(), plates.lineOf(side, s.y2()), s.rgb()));
        }
        for (Knot k : drawing.knots()) {
            PlatePainter.paintKnot(g, scale, new Knot(k.stitch(), k.x(), plates.lineOf(side, k.y()), k.rgb()));
        }
        g.setTransform(kept);
    }
}
