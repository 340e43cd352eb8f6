package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots;
import platekeep.client.compare.chart.Way;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.compare.Side;

/** Paints the charts in their panes. */
final class ChartCanvas extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;

    private final transient Sight sight;
    private final transient Runnable moved;
    private transient PairedPlates plates;
    private transient Spots pointed = Spots.NONE;
    private Way way = Way.SIDE_BY_SIDE;
    private Side front = Side.AFTER;
    private String frontWords = "";

    ChartCanvas(Sight sight, PairedCharts.Ears ears, Runnable moved) {
        this.sight = sight;
        this.moved = moved;
        setName("compare-charts");
        setFocusable(true);
        setOpaque(true);
        new CanvasPointer(this, ears, moved).listen();
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    void show(PairedPlates newPlates) {
        plates = newPlates;
        pointed = Spots.NONE;
    }

    Optional<PairedPlates> plates() {
        return Optional.ofNullable(plates);
    }

    Sight sight() {
        return sight;
    }

    void way(Way newWay) {
        way = newWay;
        fitPane();
    }

    void front(Side side, String words) {
        front = side;
        frontWords = words;
        repaint();
    }

    void point(Spots spots, String words) {
        pointed = spots;
        String old = getAccessibleContext().getAccessibleDescription();
        getAccessibleContext().setAccessibleDescription(words);
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, old, words);
    }

    Spots pointed() {
        return pointed;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        fitPane();
        moved.run();
    }

    private void fitPane() {
        Point size = paneSize();
        sight.pane(size.x, size.y);
    }

    /** The size of one pane. */
    Point paneSize() {
        int all = getWidth() - RowColumn.WIDTH;
        return new Point(
                Math.max(1, way == Way.SIDE_BY_SIDE ? all / 2 : all), Math.max(1, getHeight() - PleatRuler.HEIGHT));
    }

    private int columnLeft() {
        return way == Way.SIDE_BY_SIDE ? paneSize().x : 0;
    }

    private int paneLeft(Side side) {
        return way == Way.SIDE_BY_SIDE && side == Side.BEFORE ? 0 : columnLeft() + RowColumn.WIDTH;
    }

    /** The side whose pane lies under a point; one pane for both: the one in front. */
    Side sideAt(int x) {
        return way == Way.SIDE_BY_SIDE ? (x < columnLeft() ? Side.BEFORE : Side.AFTER) : front;
    }

    /** A point of this component as a point of its pane; left of 0 or right of the pane beside it. */
    Point inPane(Point at) {
        return new Point(at.x - paneLeft(sideAt(at.x)), at.y - PleatRuler.HEIGHT);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(getParent().getBackground());
        g.fill(g.getClipBounds());
        PlatePainter.smooth(g);
        g.setFont(getParent().getFont().deriveFont(11f));
        if (plates != null && plates.pleats() > 0) {
            paintAll(g);
        }
        if (isFocusOwner()) {
            g.setColor(Look.accent());
            g.setStroke(new BasicStroke(1.5f));
            g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        g.dispose();
    }

    private void paintAll(Graphics2D g) {
        Point pane = paneSize();
        switch (way) {
            case SIDE_BY_SIDE -> {
                paintSide(g, Side.BEFORE, pane);
                paintSide(g, Side.AFTER, pane);
            }
            case OVERLAY -> paintOverlay(g, pane);
            default -> paintFront(g, pane);
        }
        Graphics2D column = (Graphics2D) g.create(columnLeft(), PleatRuler.HEIGHT, RowColumn.WIDTH, pane.y);
        if (!column.getClipBounds().isEmpty()) {
            column.setColor(Look.card());
            column.fill(column.getClipBounds());
            new RowColumn(plates, sight).paint(column, Seen.of(column, plates, sight), pointed);
        }
        column.dispose();
    }

    private Optional<Graphics2D> pane(Graphics2D g, Side side, Point pane) {
        Graphics2D ruler = (Graphics2D) g.create(paneLeft(side), 0, pane.x, PleatRuler.HEIGHT);
        PleatRuler.paint(ruler, plates, sight, pane.x);
        ruler.dispose();
        Graphics2D inside = (Graphics2D) g.create(paneLeft(side), PleatRuler.HEIGHT, pane.x, pane.y);
        if (inside.getClipBounds().isEmpty()) {
            inside.dispose();
            return Optional.empty();
        }
        return Optional.of(inside);
    }

    private void paintSide(Graphics2D g, Side side, Point size) {
        pane(g, side, size).ifPresent(pane -> {
            Seen seen = Seen.of(pane, plates, sight);
            new ChartGround(plates, sight).paint(pane, side, seen);
            new CablesPainter(plates, sight).paint(pane, side, seen);
            MarksPainter marks = new MarksPainter(plates, sight);
            marks.paint(pane, side, seen);
            marks.paintChosen(pane, side, seen, pointed);
            pane.dispose();
        });
    }

    private void paintOverlay(Graphics2D g, Point size) {
        pane(g, Side.AFTER, size).ifPresent(pane -> {
            Seen seen = Seen.of(pane, plates, sight);
            ChartGround ground = new ChartGround(plates, sight);
            ground.paint(pane, Side.BEFORE, seen);
            ground.paint(pane, Side.AFTER, seen);
            new OverlayPainter(plates, sight).paint(pane, seen);
            new CablesPainter(plates, sight).paintOnTop(pane, Side.AFTER);
            MarksPainter marks = new MarksPainter(plates, sight);
            marks.paintStitches(pane, Side.BEFORE);
            marks.paint(pane, Side.AFTER, seen);
            marks.paintChosen(pane, Side.BEFORE, seen, pointed);
            marks.paintChosen(pane, Side.AFTER, seen, pointed);
            pane.dispose();
        });
    }

    /** Only the picture itself: what changes is seen by its coming and going. */
    private void paintFront(Graphics2D g, Point size) {
        pane(g, front, size).ifPresent(pane -> {
            Seen seen = Seen.of(pane, plates, sight);
            new ChartGround(plates, sight).paint(pane, front, seen);
            new CablesPainter(plates, sight).paint(pane, front, seen);
            MarksPainter marks = new MarksPainter(plates, sight);
            marks.paintChosen(pane, Side.BEFORE, seen, pointed);
            marks.paintChosen(pane, Side.AFTER, seen, pointed);
            paintTag(pane, size);
            pane.dispose();
        });
    }

    /** Which side is in front: the earlier one's tag stands at the left, the later one's at the right. */
    private void paintTag(Graphics2D g, Point size) {
        g.setFont(g.getFont().deriveFont(Font.BOLD, 14f));
        FontMetrics metrics = g.getFontMetrics();
        int width = metrics.stringWidth(frontWords) + 24;
        int x = front == Side.BEFORE ? 12 : size.x - width - 12;
        RoundRectangle2D tag = new RoundRectangle2D.Double(x, 10, width, 30, 15, 15);
        Color ground = front == Side.BEFORE ? Look.card() : Look.ink();
        g.setColor(ground);
        g.fill(tag);
        g.setColor(Look.ink());
        g.setStroke(new BasicStroke(1.5f));
        g.draw(tag);
        g.setColor(front == Side.BEFORE ? Look.ink() : Look.card());
        g.drawString(frontWords, x + 12, 10 + (30 + metrics.getAscent() - metrics.getDescent()) / 2);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
            accessibleContext.setAccessibleName("Two charts, row beside row");
        }
        return accessibleContext;
    }
}
