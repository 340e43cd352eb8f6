package platekeep.client.plate.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.UIManager;
import platekeep.client.plate.piece.Area;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.GatheringRow;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;

/** Shows a plate and tells what is done on it. Only the rows that change are painted anew. */
public final class ChartSurface extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;

    private static final int MARGIN = 14;
    private static final int LABELS = 34;

    /** Dots to a pleat from which on single cables can be made out. */
    private static final int LEGIBLE = 6;

    private final transient PlatePainter painter = new PlatePainter();
    private final transient Sheet sheet = new Sheet();
    private transient Drawing drawing;
    private transient ChartScale scale = ChartScale.whole(12);
    private PlatePainter.View way = PlatePainter.View.CHART;
    private transient Spot cursor = new Spot(0, 0);
    private transient Optional<Spot> pointedOut = Optional.empty();
    private Letters letters = Letters.HIDDEN;
    private transient Overlay overlay = Overlay.NONE;
    private transient Marking marking = (g, shown, at) -> {};

    public ChartSurface(ChartEars ears) {
        setName("chart");
        setFocusable(true);
        setOpaque(true);
        setFocusTraversalKeysEnabled(true);
        new ChartPointer(this, ears).listen();
        keys(ears);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaintSpot(cursor);
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaintSpot(cursor);
            }
        });
    }

    private void keys(ChartEars ears) {
        String[] keys = {"UP", "DOWN", "LEFT", "RIGHT"};
        int[][] ways = {{-1, 0}, {1, 0}, {0, -1}, {0, 1}};
        for (int i = 0; i < keys.length; i++) {
            int[] to = ways[i];
            Widgets.onOwnKey(this, keys[i], () -> ears.moveCursor(to[0], to[1]));
            Widgets.onOwnKey(this, "shift " + keys[i], () -> ears.drawCursor(to[0], to[1]));
            Widgets.onOwnKey(this, "ctrl " + keys[i], () -> ears.moveChosen(to[0], to[1]));
        }
        Widgets.onOwnKey(this, "PAGE_UP", () -> ears.moveCursor(-10, 0));
        Widgets.onOwnKey(this, "PAGE_DOWN", () -> ears.moveCursor(10, 0));
        Widgets.onOwnKey(this, "HOME", () -> ears.moveCursor(0, -drawing.positions()));
        Widgets.onOwnKey(this, "END", () -> ears.moveCursor(0, drawing.positions()));
        Widgets.onOwnKey(this, "SPACE", ears::useAtCursor);
        Widgets.onOwnKey(this, "ENTER", ears::useAtCursor);
        Widgets.onOwnKey(this, "DELETE", ears::eraseAtCursor);
        Widgets.onOwnKey(this, "BACK_SPACE", ears::eraseAtCursor);
    }

    /** Shows a plate. */
    public void show(Drawing newDrawing) {
        Drawing before = drawing;
        drawing = newDrawing;
        if (before == null
                || !before.hasShapeOf(newDrawing)
                || !before.plate().remarks().equals(newDrawing.plate().remarks())
                || !before.plate().repeat().equals(newDrawing.plate().repeat())) {
            revalidate();
            repaint();
        } else if (before != newDrawing && newDrawing.plate().repeat().isPresent()) {
            repaint();
        } else if (before != newDrawing) {
            for (int row = 0; row < newDrawing.rows(); row++) {
                if (!before.hasRowOf(newDrawing, row)) {
                    repaintRow(row);
                }
            }
        }
    }

    /** Shows nothing. */
    public void clear() {
        drawing = null;
        revalidate();
        repaint();
    }

    Optional<Drawing> drawing() {
        return Optional.ofNullable(drawing);
    }

    ChartScale scale() {
        return scale;
    }

    /** Chart or cloth. */
    public void way(PlatePainter.View newWay) {
        way = newWay;
        repaint();
    }

    public PlatePainter.View way() {
        return way;
    }

    /** Puts marks on the chart, in the place of those that were there. */
    public void marks(Marking newMarking) {
        marking = newMarking;
        repaint();
    }

    /** Brings a stretch of the chart into sight. */
    public void reveal(Spot from, Spot to) {
        if (drawing != null && drawing.has(from) && drawing.has(to)) {
            Rectangle place = place(from).union(place(to));
            place.grow(60 + Rulers.BESIDE, 60 + Rulers.ABOVE);
            scrollRectToVisible(place);
        }
    }

    /** Whether each cable carries the letter of its colour. */
    public enum Letters {
        HIDDEN,
        SHOWN
    }

    /** Shows the letters of colours on the cables, or hides them. */
    public void turnLetters() {
        letters = letters == Letters.SHOWN ? Letters.HIDDEN : Letters.SHOWN;
        repaint();
    }

    /** Moves the drawing cursor, and the view along where it would leave it. */
    public void cursor(Spot spot) {
        if (!spot.equals(cursor)) {
            repaintSpot(cursor);
            cursor = spot;
            repaintSpot(cursor);
            if (isFocusOwner()) {
                scrollTo(spot);
            }
        }
    }

    /** Shows what the hand does. */
    public void overlay(Overlay newOverlay) {
        if (newOverlay.equals(overlay) || drawing == null) {
            return;
        }
        if (!newOverlay.axis().equals(overlay.axis()) || !newOverlay.line().equals(overlay.line())) {
            repaint();
        }
        repaintOverlay();
        overlay = newOverlay;
        repaintOverlay();
    }

    private void repaintOverlay() {
        Point origin = origin();
        overlay.chosenBounds(scale)
                .ifPresent(box -> repaint(origin.x + box.x, origin.y + box.y, box.width, box.height));
        overlay.firstEnd().ifPresent(this::repaintSpot);
    }

    /** Points a spot out, until another one is or none. */
    public void pointOut(Optional<Spot> spot) {
        pointedOut.ifPresent(this::repaintSpot);
        pointedOut = spot;
        spot.ifPresent(s -> {
            repaintSpot(s);
            scrollTo(s);
        });
    }

    private void scrollTo(Spot spot) {
        if (drawing != null && drawing.has(spot)) {
            Rectangle place = place(spot);
            place.grow(30 + Rulers.BESIDE, 30 + Rulers.ABOVE);
            scrollRectToVisible(place);
        }
    }

    /**
     * Brings a part of the chart into view, drawn larger where its cables would be too small to make out.
     *
     * @return whether it had to be drawn larger
     */
    public boolean see(Area area) {
        if (drawing == null || !(getParent() instanceof JViewport port)) {
            return false;
        }
        boolean isTooSmall = scale.pleat() < LEGIBLE;
        if (isTooSmall) {
            Dimension extent = port.getExtentSize();
            double pleat = LEGIBLE;
            while (pleat > scale.pleat()
                    && (scale(pleat).left(area.width()) > extent.width / 2.0
                            || scale(pleat).top(area.height()) > extent.height / 2.0)) {
                pleat = ZoomSteps.next(pleat, -1);
            }
            zoom(Math.max(pleat, scale.pleat()));
        }
        Rectangle box = place(new Spot(area.top(), area.left()));
        box.add(place(new Spot(area.bottom(), area.right())));
        Rectangle seen = getVisibleRect();
        box.grow(Math.max(30 + Rulers.BESIDE, (seen.width - box.width) / 2), 0);
        box.grow(0, Math.max(30 + Rulers.ABOVE, (seen.height - box.height) / 2));
        scrollRectToVisible(box);
        return isTooSmall;
    }

    /** Draws so many steps larger, or smaller where negative, keeping the middle of what is seen in its place. */
    public void zoomBy(int steps) {
        zoom(ZoomSteps.next(scale.pleat(), steps));
    }

    /** As {@link #zoomBy(int)}, keeping a point of the view in its place. */
    void zoomBy(int steps, Point fixed) {
        zoom(ZoomSteps.next(scale.pleat(), steps), fixed);
    }

    /** Draws so many dots to a pleat, keeping the middle of what is seen in its place. */
    public void zoom(double pleat) {
        zoom(pleat, new Point(getVisibleRect().width / 2, getVisibleRect().height / 2));
    }

    private void zoom(double pleat, Point fixed) {
        JViewport port = (JViewport) getParent();
        Point at = port.getViewPosition();
        Point origin = origin();
        double x = (at.x + fixed.x - origin.x) / scale.pleat();
        double y = (at.y + fixed.y - origin.y) / scale.row();
        scale = scale(Math.max(ZoomSteps.least(), Math.min(ZoomSteps.most(), pleat)));
        setSize(getPreferredSize());
        port.validate();
        Point now = origin();
        Dimension extent = port.getExtentSize();
        int left = (int) Math.round(now.x + x * scale.pleat() - fixed.x);
        int top = (int) Math.round(now.y + y * scale.row() - fixed.y);
        port.setViewPosition(new Point(
                Math.max(0, Math.min(left, getWidth() - extent.width)),
                Math.max(0, Math.min(top, getHeight() - extent.height))));
        revalidate();
        repaint();
    }

    /** Whole dots where a pleat has at least one. */
    private static ChartScale scale(double pleat) {
        return pleat >= 1 ? ChartScale.whole((int) pleat) : ChartScale.exact(pleat);
    }

    /** Zooms so that the whole plate is seen. */
    public void fit() {
        if (drawing == null || !(getParent() instanceof JViewport port)) {
            return;
        }
        Dimension extent = port.getExtentSize();
        double across = extent.width - MARGIN - Rulers.BESIDE - LABELS;
        double down = extent.height - MARGIN - Rulers.ABOVE;
        double pleats = new Copies(drawing).fittedPleats();
        double pleat = 40;
        while (pleat > ZoomSteps.least()
                && (scale(pleat).left(pleats) > across || scale(pleat).top(drawing.height()) > down)) {
            pleat = pleat > 1 ? pleat - 1 : ZoomSteps.next(pleat, -1);
        }
        zoom(pleat);
        port.setViewPosition(new Point(0, 0));
    }

    @Override
    public Dimension getPreferredSize() {
        if (drawing == null) {
            return new Dimension(10, 10);
        }
        return new Dimension(
                (int) scale.left(shownPleats()) + Rulers.BESIDE + MARGIN + LABELS,
                (int) Math.ceil(scale.top(drawing.height())) + Rulers.ABOVE + MARGIN);
    }

    private int shownPleats() {
        return new Copies(drawing).pleats();
    }

    /** Where the chart's top left corner lies: in the middle while there is room, else at the margin. */
    Point origin() {
        if (drawing == null) {
            return new Point(Rulers.BESIDE, Rulers.ABOVE);
        }
        Dimension needed = getPreferredSize();
        int x = Rulers.BESIDE + Math.max(0, (getWidth() - needed.width) / 2);
        int y = Rulers.ABOVE
                + Math.max(0, (getHeight() - needed.height) / 2)
                - (int) Math.round(scale.top(drawing.top()));
        return new Point(x, y);
    }

    /** How far across a point lies, in pleats from the chart's left edge. */
    double acrossAt(int x) {
        return (x - origin().x) / scale.pleat();
    }

    /** How far down a point lies, in rows from the chart's top edge. */
    double downAt(int y) {
        return (y - origin().y) / scale.row();
    }

    /** The spot under a point of this component. */
    Optional<Spot> spotAt(Point point) {
        Point origin = origin();
        return drawing().flatMap(d -> d.at((point.x - origin.x) / scale.pleat(), (point.y - origin.y) / scale.row()));
    }

    /** Where a cable lies in this component. */
    public Rectangle place(Spot spot) {
        Point origin = origin();
        CableKind kind = drawing.kind(spot.row(), spot.index());
        return new Rectangle(
                origin.x + (int) scale.left(spot.index()),
                origin.y + (int) Math.floor(scale.top(spot.row(), kind)),
                (int) Math.ceil(scale.cable()),
                (int) Math.ceil(scale.half()));
    }

    private void repaintSpot(Spot spot) {
        if (drawing != null && drawing.has(spot)) {
            Rectangle place = place(spot);
            repaint(place.x - 6, place.y - 6, place.width + 12, place.height + 12);
        }
    }

    private void repaintRow(int row) {
        Point origin = origin();
        repaint(0, origin.y + (int) scale.top(row) - 5, getWidth(), (int) Math.ceil(scale.row()) + 10);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        sheet.paint(g, this::paintAll);
        g.dispose();
    }

    private void paintAll(Graphics2D g) {
        g.setColor(
                way == PlatePainter.View.CLOTH
                        ? new Color(Look.cloth())
                        : getParent().getBackground());
        g.fill(g.getClipBounds());
        if (drawing != null && drawing.pleats() > 0) {
            Point origin = origin();
            g.translate(origin.x, origin.y);
            painter.paint(g, drawing, scale, way);
            PlatePainter.smooth(g);
            new Copies(drawing).paint(g, painter, scale);
            g.setFont(UIManager.getFont("Label.font").deriveFont(11f));
            if (way == PlatePainter.View.CHART) {
                paintLabels(g);
            }
            marking.paint(g, drawing, scale);
            if (letters == Letters.SHOWN && way == PlatePainter.View.CHART) {
                KeyLetters.paint(g, drawing, scale);
            }
            Flags.paint(g, drawing, scale);
            overlay.paint(g, drawing, scale);
            paintCursor(g);
            if (way == PlatePainter.View.CHART) {
                g.translate(-origin.x, -origin.y);
                new Rulers(g, this, drawing).paint();
            }
        }
    }

    private void paintLabels(Graphics2D g) {
        FontMetrics metrics = g.getFontMetrics();
        int x = (int) scale.left(drawing.pleats()) + 6;
        for (GatheringRow row : drawing.gathering()) {
            if (!row.label().isEmpty()) {
                int y = (int) scale.top(row.y());
                int width = Math.max(18, metrics.stringWidth(row.label()) + 8);
                g.setColor(Look.gathering());
                g.draw(new RoundRectangle2D.Double(x, y - 8.5, width, 17, 17, 17));
                g.drawString(
                        row.label(),
                        x + (width - metrics.stringWidth(row.label())) / 2,
                        y + metrics.getAscent() / 2 - 1);
            }
        }
    }

    private void paintCursor(Graphics2D g) {
        pointedOut.filter(drawing::has).ifPresent(spot -> paintFrame(g, spot, Look.trouble(), 3));
        if (drawing.has(cursor)) {
            paintFrame(g, cursor, Look.accent(), isFocusOwner() ? 2 : 1);
        }
    }

    private void paintFrame(Graphics2D g, Spot spot, Color colour, int width) {
        double y = scale.top(spot.row(), drawing.kind(spot.row(), spot.index()));
        double x = scale.left(spot.index());
        RoundRectangle2D frame = new RoundRectangle2D.Double(
                x - 1, y - 1, scale.cable() + 2, scale.half() + 2, scale.half() + 2, scale.half() + 2);
        g.setStroke(new BasicStroke(width + 2f));
        g.setColor(new Color(255, 255, 255, 200));
        g.draw(frame);
        g.setStroke(new BasicStroke(width));
        g.setColor(colour);
        g.draw(frame);
    }

    /** Says to those who cannot see it what lies at the cursor. */
    public void say(String words) {
        getAccessibleContext().setAccessibleDescription(words);
    }

    private static String named(Drawing shown) {
        return "Chart of " + shown.plate().title() + ", " + shown.pleats() + " pleats, " + shown.rows() + " rows";
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

                @Override
                public String getAccessibleName() {
                    return drawing == null ? "Chart" : named(drawing);
                }
            };
        }
        return accessibleContext;
    }
}
