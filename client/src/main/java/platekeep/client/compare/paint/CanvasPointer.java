package platekeep.client.compare.paint;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import platekeep.client.compare.chart.PlaceInWords;
import platekeep.client.compare.chart.Sight;
import platekeep.model.compare.Side;

/** Turns what the mouse does: the wheel moves, with Control it zooms; dragging moves; a click chooses what lies there. */
final class CanvasPointer extends MouseAdapter {
    private static final int LINE = 40;

    private final ChartCanvas canvas;
    private final PairedCharts.Ears ears;
    private final Runnable moved;
    private Point grabbed;
    private boolean isDragged;

    CanvasPointer(ChartCanvas canvas, PairedCharts.Ears ears, Runnable moved) {
        this.canvas = canvas;
        this.ears = ears;
        this.moved = moved;
    }

    void listen() {
        canvas.addMouseListener(this);
        canvas.addMouseMotionListener(this);
        canvas.addMouseWheelListener(this);
    }

    @Override
    public void mousePressed(MouseEvent e) {
        canvas.requestFocusInWindow();
        grabbed = e.getPoint();
        isDragged = false;
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (isDragged || grabbed.distance(e.getPoint()) > 3) {
            isDragged = true;
            canvas.sight().moveBy((double) grabbed.x - e.getX(), (double) grabbed.y - e.getY());
            grabbed = e.getPoint();
            moved.run();
        }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        if (!isDragged) {
            Point at = canvas.inPane(e.getPoint());
            Sight sight = canvas.sight();
            ears.clicked(canvas.sideAt(e.getX()), sight.pleatAt(at.x), sight.lineAt(at.y));
        }
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        Point at = canvas.inPane(e.getPoint());
        Side side = canvas.sideAt(e.getX());
        boolean isInside = at.x >= 0 && at.x < canvas.paneSize().x && at.y >= 0;
        Sight sight = canvas.sight();
        ears.over(canvas.plates()
                .filter(plates -> isInside)
                .flatMap(plates -> PlaceInWords.of(plates, side, sight.pleatAt(at.x), sight.lineAt(at.y))));
    }

    @Override
    public void mouseExited(MouseEvent e) {
        ears.over(Optional.empty());
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
        Sight sight = canvas.sight();
        double by = e.getPreciseWheelRotation();
        if (e.isControlDown()) {
            Point at = canvas.inPane(e.getPoint());
            sight.zoom(by < 0 ? 1 : -1, at.x, at.y);
        } else if (e.isShiftDown()) {
            sight.moveBy(by * LINE, 0);
        } else {
            sight.moveBy(0, by * LINE);
        }
        moved.run();
    }
}
