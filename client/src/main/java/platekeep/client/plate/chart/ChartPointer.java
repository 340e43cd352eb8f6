package platekeep.client.plate.chart;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/** Turns what the mouse does on a chart into spots: left draws, right picks, the middle one moves the view. */
final class ChartPointer extends MouseAdapter {
    private final ChartSurface surface;
    private final ChartEars ears;
    private Point grabbed;
    private boolean holdsLine;

    ChartPointer(ChartSurface surface, ChartEars ears) {
        this.surface = surface;
        this.ears = ears;
    }

    void listen() {
        surface.addMouseListener(this);
        surface.addMouseMotionListener(this);
        surface.addMouseWheelListener(this);
    }

    @Override
    public void mousePressed(MouseEvent e) {
        surface.requestFocusInWindow();
        if (SwingUtilities.isMiddleMouseButton(e)) {
            grabbed = e.getLocationOnScreen();
        } else if (SwingUtilities.isRightMouseButton(e)) {
            surface.spotAt(e.getPoint()).ifPresent(ears::pick);
        } else if (ears.grab(surface.acrossAt(e.getX()), surface.downAt(e.getY()))) {
            holdsLine = true;
        } else {
            surface.spotAt(e.getPoint()).ifPresent(spot -> ears.press(spot, how(e)));
        }
    }

    private static Press how(MouseEvent e) {
        return e.isShiftDown() ? Press.ADD : e.isControlDown() ? Press.COPY : Press.PLAIN;
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (grabbed != null) {
            moveView(e.getLocationOnScreen());
        } else if (holdsLine) {
            ears.pull(surface.acrossAt(e.getX()), surface.downAt(e.getY()));
        } else if (SwingUtilities.isLeftMouseButton(e)) {
            surface.spotAt(e.getPoint()).ifPresent(ears::drag);
        }
    }

    private void moveView(Point to) {
        JViewport port = (JViewport) surface.getParent();
        Point at = port.getViewPosition();
        int x = Math.max(0, Math.min(at.x + grabbed.x - to.x, surface.getWidth() - port.getWidth()));
        int y = Math.max(0, Math.min(at.y + grabbed.y - to.y, surface.getHeight() - port.getHeight()));
        port.setViewPosition(new Point(x, y));
        grabbed = to;
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        grabbed = null;
        holdsLine = false;
        ears.release();
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        ears.hover(surface.spotAt(e.getPoint()));
    }

    @Override
    public void mouseExited(MouseEvent e) {
        ears.hover(java.util.Optional.empty());
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
        if (e.isControlDown()) {
            JViewport port = (JViewport) surface.getParent();
            Point seen = port.getViewPosition();
            Point fixed = new Point(e.getX() - seen.x, e.getY() - seen.y);
            surface.zoomBy(-e.getWheelRotation(), fixed);
        } else {
            surface.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(surface, e, surface.getParent()));
        }
    }
}
