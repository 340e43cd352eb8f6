package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import platekeep.client.compare.chart.Line;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.ui.Look;
import platekeep.model.compare.Side;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.GatheringRow;

/** What lies behind the cables of one side: paper, gaps, hatching, fine lines, gathering rows, the centre valley. */
final class ChartGround {
    /** Below so many dots a pleat there are no fine lines. */
    static final double FINE = 4;

    private final PairedPlates plates;
    private final Sight sight;

    ChartGround(PairedPlates plates, Sight sight) {
        this.plates = plates;
        this.sight = sight;
    }

    /** The box that a stretch of lines of a side covers in the pane. */
    private Rectangle2D box(Side side, double from, double to) {
        double left = sight.xOf(plates.offset(side));
        double right = sight.xOf(plates.offset(side) + plates.drawing(side).pleats());
        return new Rectangle2D.Double(left, sight.yOf(from), right - left, sight.yOf(to) - sight.yOf(from));
    }

    void paint(Graphics2D g, Side side, Seen seen) {
        Drawing drawing = plates.drawing(side);
        if (drawing.positions() == 0) {
            return;
        }
        if (drawing.top() < 0) {
            g.setColor(Look.paper());
            g.fill(box(side, drawing.top(), 0));
        }
        for (int line = seen.first(); line <= seen.last(); line++) {
            paintLine(g, side, line);
        }
        if (sight.scale().pleat() >= FINE) {
            paintFineLines(g, side, seen);
        }
        paintGathering(g, side);
        paintCentre(g, side);
    }

    private void paintLine(Graphics2D g, Side side, int at) {
        Line line = plates.lines().line(at);
        Rectangle2D box = box(side, at, at + 1.0);
        if (line.row(side) == Line.NONE) {
            Color edge = Look.line();
            g.setColor(new Color(edge.getRed(), edge.getGreen(), edge.getBlue(), 70));
            g.fill(box);
            g.setColor(Look.faintInk());
            g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 5}, 0));
            g.draw(new Line2D.Double(box.getX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
            return;
        }
        g.setColor(Look.paper());
        g.fill(box);
        hatch(line.fate()).ifPresent(hatch -> hatch.fill(g, box));
    }

    static Optional<Hatch> hatch(Line.Fate fate) {
        return switch (fate) {
            case ADDED -> Optional.of(Hatch.RISING);
            case REMOVED -> Optional.of(Hatch.FALLING);
            case LEFT, CAME -> Optional.of(Hatch.LEVEL);
            case STAYED, BESIDE -> Optional.empty();
        };
    }

    private void paintFineLines(Graphics2D g, Side side, Seen seen) {
        g.setStroke(new BasicStroke(1));
        double high =
                Math.max(sight.yOf(plates.drawing(side).top()), seen.clip().getMinY());
        double low = Math.min(sight.yOf(plates.lines().size()), seen.clip().getMaxY());
        int from = plates.plate(side).from();
        int offset = plates.offset(side);
        for (int i = 0; i <= plates.drawing(side).pleats(); i++) {
            double x = sight.xOf((double) offset + i);
            if (x >= seen.clip().getMinX() - 1 && x <= seen.clip().getMaxX() + 1) {
                g.setColor(Math.floorMod(from + i - 1, 10) == 0 ? Look.line() : Look.fineLine());
                g.draw(new Line2D.Double(x, high, x, low));
            }
        }
        for (int line = seen.first(); line <= seen.last(); line++) {
            int row = plates.lines().line(line).row(side);
            if (row != Line.NONE) {
                g.setColor(plates.plate(side).numberFromBottom(row) % 10 == 0 ? Look.line() : Look.fineLine());
                Rectangle2D box = box(side, line, line);
                g.draw(new Line2D.Double(box.getX(), box.getY(), box.getMaxX(), box.getY()));
            }
        }
    }

    private void paintGathering(Graphics2D g, Side side) {
        g.setColor(Look.gathering());
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 3, 2, 3}, 0));
        for (GatheringRow row : plates.drawing(side).gathering()) {
            Rectangle2D box = box(side, plates.lineOf(side, row.y()), 0);
            g.draw(new Line2D.Double(box.getX(), box.getY(), box.getMaxX(), box.getY()));
        }
    }

    private void paintCentre(Graphics2D g, Side side) {
        g.setColor(Look.centre());
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 4}, 0));
        double x = sight.xOf(plates.offset(side) + plates.drawing(side).pleats() / 2.0);
        g.draw(new Line2D.Double(
                x,
                sight.yOf(plates.drawing(side).top()),
                x,
                sight.yOf(plates.lines().size())));
    }
}
