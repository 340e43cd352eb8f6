package platekeep.client.compare.chart;

import java.awt.geom.Rectangle2D;
import platekeep.model.draw.ChartScale;

/**
 * Which part of two charts is seen and how large, the same part of both: one zoom and one place for all panes. Places
 * are in pleats and lines; what is smaller than its pane stands in the middle of it. Draws nothing and needs no display.
 */
public final class Sight {
    /** The largest size: one cable then covers so many dots twice. */
    public static final double MOST = 96;

    private static final double LEAST = 0.05;
    /** Up to here sizes need not be whole dots. */
    private static final double SMALL = 2;

    private static final double STEP = 1.25;
    /** Air around the charts, in dots. */
    private static final int AIR = 14;

    private double pleats = 1;
    private double top;
    private double bottom = 1;
    private double width = 1;
    private double height = 1;
    private ChartScale scale = ChartScale.whole(9);
    private double x;
    private double y;
    private boolean isFitted = true;

    /** Says how much there is to see; the whole of it is shown. */
    public void content(double newPleats, double newTop, double newBottom) {
        pleats = Math.max(1, newPleats);
        top = newTop;
        bottom = Math.max(newTop + 1, newBottom);
        fit();
    }

    /** The same two charts, a little different now: the place and size are kept as far as they can be. */
    public void contentAgain(double newPleats, double newTop, double newBottom) {
        boolean wasFitted = isFitted;
        double keptX = x;
        double keptY = y;
        ChartScale kept = scale;
        content(newPleats, newTop, newBottom);
        if (!wasFitted) {
            scale = kept;
            isFitted = false;
            place(keptX, keptY);
        }
    }

    /** Says how large a pane is, in dots. */
    public void pane(double newWidth, double newHeight) {
        if (newWidth == width && newHeight == height) {
            return;
        }
        double middleX = pleatAt(width / 2);
        double middleY = lineAt(height / 2);
        width = Math.max(1, newWidth);
        height = Math.max(1, newHeight);
        if (isFitted) {
            fit();
        } else {
            centre(middleX, middleY);
        }
    }

    public ChartScale scale() {
        return scale;
    }

    /** Whether all is seen, and will be when the pane changes. */
    public boolean isFitted() {
        return isFitted;
    }

    /** Shows all of it. */
    public void fit() {
        scale = fitting(pleats, bottom - top, 40);
        isFitted = true;
        place(0, 0);
    }

    private ChartScale fitting(double across, double down, double most) {
        double w = Math.max(1, width - 2 * AIR);
        double h = Math.max(1, height - 2 * AIR);
        ChartScale exact = ChartScale.fitting(across, down, w, h);
        double pleat = Math.min(most, exact.pleat());
        if (pleat < SMALL) {
            return ChartScale.exact(Math.max(LEAST, pleat));
        }
        int whole = (int) pleat;
        while (whole > SMALL && ChartScale.whole(whole).top(down) > h) {
            whole--;
        }
        return ChartScale.whole(whole);
    }

    /** Zooms so many steps in, or out where negative, keeping a point of the pane in its place. */
    public void zoom(int steps, double fixedX, double fixedY) {
        double pleat = scale.pleat();
        for (int i = 0; i < Math.abs(steps); i++) {
            pleat = step(pleat, steps > 0);
        }
        zoomTo(pleat, fixedX, fixedY);
    }

    private static double step(double pleat, boolean in) {
        double next = in ? pleat * STEP : pleat / STEP;
        if (next < SMALL) {
            return next;
        }
        return in
                ? Math.max(Math.floor(pleat) + 1, Math.round(next))
                : Math.min(Math.ceil(pleat) - 1, Math.round(next));
    }

    private void zoomTo(double pleat, double fixedX, double fixedY) {
        double at = pleatAt(fixedX);
        double line = lineAt(fixedY);
        double least = Math.min(fitting(pleats, bottom - top, MOST).pleat(), 4);
        double wanted = Math.max(least, Math.min(MOST, pleat));
        scale = wanted < SMALL ? ChartScale.exact(wanted) : ChartScale.whole((int) Math.round(wanted));
        isFitted = false;
        place(AIR + scale.left(at) - fixedX, AIR + scale.top(line - top) - fixedY);
    }

    /** Moves the view by dots. */
    public void moveBy(double dx, double dy) {
        place(x + dx, y + dy);
    }

    /** Puts the view's top left corner at a place of all there is, in dots, as scroll bars count. */
    public void moveTo(double newX, double newY) {
        place(newX, newY);
    }

    /** Moves as little as is needed to see a place well; what is larger than the pane is put at its middle. */
    public void show(Rectangle2D region) {
        double left = AIR + scale.left(region.getMinX());
        double right = AIR + scale.left(region.getMaxX());
        double high = AIR + scale.top(region.getMinY() - top);
        double low = AIR + scale.top(region.getMaxY() - top);
        place(near(x, left, right, width), near(y, high, low, height));
    }

    private static double near(double at, double from, double to, double size) {
        double air = Math.min(48, size / 6);
        if (from - air >= at && to + air <= at + size) {
            return at;
        }
        return (from + to - size) / 2;
    }

    /** Shows a place as large as it fits with room around it. */
    public void closeUp(Rectangle2D region) {
        double across = region.getWidth() + 8;
        double down = region.getHeight() + 6;
        scale = fitting(across, down, 28);
        isFitted = false;
        centre(region.getCenterX(), region.getCenterY());
    }

    private void centre(double pleat, double line) {
        place(AIR + scale.left(pleat) - width / 2, AIR + scale.top(line - top) - height / 2);
    }

    private void place(double newX, double newY) {
        x = kept(newX, allWidth(), width);
        y = kept(newY, allHeight(), height);
    }

    private static double kept(double at, double all, double size) {
        return all <= size ? Math.rint((all - size) / 2) : Math.rint(Math.max(0, Math.min(all - size, at)));
    }

    /** The width of all there is to see, in dots. */
    public double allWidth() {
        return scale.left(pleats) + 2 * AIR;
    }

    /** The height of all there is to see, in dots. */
    public double allHeight() {
        return scale.top(bottom - top) + 2 * AIR;
    }

    /** Where the view's left edge lies in all there is; less than 0 when there is room to spare. */
    public double x() {
        return x;
    }

    /** Where the view's top edge lies; less than 0 when there is room to spare. */
    public double y() {
        return y;
    }

    /** Where a pleat's left edge lies in the pane, in dots. */
    public double xOf(double pleat) {
        return AIR + scale.left(pleat) - x;
    }

    /** Where a line's top edge lies in the pane, in dots. */
    public double yOf(double line) {
        return AIR + scale.top(line - top) - y;
    }

    /** The pleat at a place of the pane. */
    public double pleatAt(double paneX) {
        return (paneX + x - AIR) / scale.pleat();
    }

    /** The line at a place of the pane. */
    public double lineAt(double paneY) {
        return (paneY + y - AIR) / scale.row() + top;
    }
}
