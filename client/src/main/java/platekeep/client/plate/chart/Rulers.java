package platekeep.client.plate.chart;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import platekeep.client.ui.Look;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/**
 * Pleat numbers above a chart and row numbers, counted from the bottom, beside it. They stand next to the chart while
 * its edge is in view, else at the edge of the view.
 */
final class Rulers {
    /** The room that row numbers take. */
    static final int BESIDE = 38;

    /** The room that pleat numbers take. */
    static final int ABOVE = 22;

    private static final int[] STEPS = {1, 5, 10, 20, 50, 100, 500};

    private final Graphics2D g;
    private final Drawing drawing;
    private final ChartScale scale;
    private final Point origin;
    private final Rectangle view;
    private final Color ground;

    Rulers(Graphics2D g, ChartSurface chart, Drawing drawing) {
        this.g = g;
        this.drawing = drawing;
        this.scale = chart.scale();
        this.origin = chart.origin();
        this.view = chart.getVisibleRect();
        Color behind = chart.getParent().getBackground();
        this.ground = new Color(behind.getRed(), behind.getGreen(), behind.getBlue(), 225);
    }

    void paint() {
        paintRows();
        paintPleats();
    }

    private void paintRows() {
        int right = Math.max(origin.x, view.x + BESIDE);
        int top = Math.max(view.y, origin.y);
        g.setColor(ground);
        g.fillRect(right - BESIDE, view.y, BESIDE, view.height);
        FontMetrics metrics = g.getFontMetrics();
        int every = every(metrics.getHeight(), scale.row());
        g.setColor(Look.faintInk());
        for (int row = 0; row < drawing.rows(); row++) {
            int number = drawing.plate().numberFromBottom(row);
            double middle = origin.y + scale.top(row + 0.5);
            if (number % every == 0 && middle > top - 4 && middle < view.getMaxY()) {
                String text = Integer.toString(number);
                g.drawString(
                        text, right - 9 - metrics.stringWidth(text), (int) (middle + metrics.getAscent() / 2.0 - 1));
                g.draw(new Line2D.Double(right - 5, middle, right - 2, middle));
            }
        }
    }

    private void paintPleats() {
        int above = origin.y + (int) scale.top(drawing.top());
        int bottom = Math.max(above, view.y + ABOVE);
        g.setColor(ground);
        g.fillRect(view.x, bottom - ABOVE, view.width, ABOVE);
        FontMetrics metrics = g.getFontMetrics();
        int every = every(metrics.stringWidth("-000") + 6, scale.pleat());
        for (int i = 0; i < drawing.pleats(); i++) {
            int pleat = drawing.plate().from() + i;
            double middle = origin.x + scale.left(i + 0.5);
            if (middle < view.x || middle > view.getMaxX()) {
                continue;
            }
            boolean isNamed = Math.floorMod(pleat, every) == 0;
            if (isNamed || scale.pleat() >= 5) {
                g.setColor(isNamed ? Look.faintInk() : Look.line());
                g.draw(new Line2D.Double(middle, bottom - (isNamed ? 5 : 3), middle, bottom - 1));
            }
            if (isNamed) {
                String text = Integer.toString(pleat);
                g.drawString(text, (int) (middle - metrics.stringWidth(text) / 2.0), bottom - 8);
            }
        }
    }

    /** Each one, each fifth, tenth, ...: the least of these that leaves every number room enough. */
    private static int every(int needed, double step) {
        for (int every : STEPS) {
            if (every * step >= needed) {
                return every;
            }
        }
        return STEPS[STEPS.length - 1];
    }
}
