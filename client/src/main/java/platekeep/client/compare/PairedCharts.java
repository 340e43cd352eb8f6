package platekeep.client.compare;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.compare.CableRun;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Difference;
import platekeep.model.compare.Place;
import platekeep.model.compare.RowPair;
import platekeep.model.compare.Side;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Plate;

/**
 * Two charts whose rows are lined up: a line for each pair of rows, a gap where a side has none, row numbers at the left
 * of each chart, and between the charts what happened to the row, by sign and word.
 */
final class PairedCharts extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final ChartScale SCALE = ChartScale.whole(9);
    private static final int NUMBERS = 40;
    private static final int BETWEEN = 92;
    private static final int TOP = 12;

    private transient Comparison comparison;
    private transient Drawing before;
    private transient Drawing after;
    private transient List<Place> pointed = List.of();

    PairedCharts() {
        setName("compare-charts");
        putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, "Two charts, row beside row");
    }

    boolean shows(Comparison other) {
        return comparison == other;
    }

    void show(Comparison compared) {
        comparison = compared;
        before = Drawing.of(compared.before());
        after = Drawing.of(compared.after());
        pointed = List.of();
        revalidate();
        repaint();
    }

    /** Marks the places of a change and scrolls to them. */
    void point(Optional<Difference> difference) {
        pointed = difference.map(Difference::places).orElse(List.of());
        pointed.stream().map(this::bounds).reduce(Rectangle::union).ifPresent(bounds -> {
            bounds.grow(24, 24);
            scrollRectToVisible(bounds);
        });
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        if (comparison == null) {
            return new Dimension(0, 0);
        }
        return new Dimension(
                left(Side.AFTER) + width(after) + TOP,
                2 * TOP + y(comparison.rows().size()));
    }

    private static int width(Drawing drawing) {
        return (int) Math.ceil(SCALE.left(drawing.pleats()));
    }

    private static int y(int line) {
        return TOP + (int) SCALE.top(line);
    }

    private int left(Side side) {
        return side == Side.BEFORE ? NUMBERS : NUMBERS + width(before) + BETWEEN + NUMBERS;
    }

    private Plate plate(Side side) {
        return side == Side.BEFORE ? comparison.before() : comparison.after();
    }

    private static Optional<Integer> row(RowPair pair, Side side) {
        return side == Side.BEFORE ? pair.before() : pair.after();
    }

    private Rectangle bounds(Place place) {
        int line = 0;
        while (line < comparison.rows().size()
                && !row(comparison.rows().get(line), place.side()).equals(Optional.of(place.row()))) {
            line++;
        }
        return bounds(place.side(), line, place.from(), place.to());
    }

    private Rectangle bounds(Side side, int line, int from, int to) {
        double x = left(side) + SCALE.left((double) from - plate(side).from());
        return new Rectangle(
                (int) x, y(line), (int) (SCALE.left((double) to - from) + SCALE.cable()), (int) SCALE.row());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (comparison == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        Rectangle clip = g.getClipBounds();
        int all = comparison.rows().size();
        int first = Math.max(0, (int) ((clip.y - TOP) / SCALE.row()) - 1);
        int last = Math.min(all - 1, (int) ((clip.getMaxY() - TOP) / SCALE.row()) + 1);
        for (int line = first; line <= last; line++) {
            paintSide(g, line, Side.BEFORE, before);
            paintSide(g, line, Side.AFTER, after);
            paintWord(g, line);
        }
        for (int line = first; line <= last; line++) {
            paintRuns(g, line);
        }
        g.setColor(Look.trouble());
        g.setStroke(new BasicStroke(3f));
        pointed.stream().map(this::bounds).forEach(g::draw);
        g.dispose();
    }

    private void paintSide(Graphics2D g, int line, Side side, Drawing drawing) {
        Optional<Integer> row = row(comparison.rows().get(line), side);
        if (row.isEmpty()) {
            g.setColor(Look.edge());
            int middle = y(line) + (int) SCALE.half();
            g.drawLine(left(side), middle, left(side) + width(drawing), middle);
            return;
        }
        g.setColor(Look.paper());
        g.fillRect(left(side), y(line), width(drawing), (int) SCALE.row());
        Graphics2D chart = (Graphics2D) g.create();
        chart.translate(left(side), y(line));
        PlatePainter.paintRow(chart, drawing, row.get(), SCALE, 0);
        chart.dispose();
        String number = Integer.toString(plate(side).numberFromBottom(row.get()));
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(Look.faintInk());
        g.drawString(number, left(side) - 6 - metrics.stringWidth(number), base(line, metrics));
    }

    private static int base(int line, FontMetrics metrics) {
        return y(line) + ((int) SCALE.row() + metrics.getAscent() - metrics.getDescent()) / 2;
    }

    private void paintWord(Graphics2D g, int line) {
        RowPair pair = comparison.rows().get(line);
        String word = RowWords.of(pair);
        g.setColor(pair.kind() == RowPair.Kind.SAME ? Look.faintInk() : Look.ink());
        g.drawString(word, left(Side.BEFORE) + width(before) + 10, base(line, g.getFontMetrics()));
    }

    private void paintRuns(Graphics2D g, int line) {
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke(2f));
        for (CableRun run : comparison.rows().get(line).runs()) {
            g.draw(bounds(Side.BEFORE, line, run.from(), run.to()));
            g.draw(bounds(Side.AFTER, line, run.from(), run.to()));
        }
    }
}
