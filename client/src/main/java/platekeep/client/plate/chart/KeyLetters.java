package platekeep.client.plate.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/** The letter of its colour on each cable, so that a chart can be read without telling colours apart. */
final class KeyLetters {
    /** Smaller cables have no room for a letter. */
    private static final double LEAST_HALF = 9;

    private KeyLetters() {}

    /** Paints them; the chart's top left corner is the origin. */
    static void paint(Graphics2D g, Drawing drawing, ChartScale scale) {
        if (scale.half() < LEAST_HALF) {
            return;
        }
        Font before = g.getFont();
        g.setFont(before.deriveFont(Font.BOLD, (float) Math.min(18, scale.half() * 0.92)));
        FontMetrics metrics = g.getFontMetrics();
        Rectangle clip = g.getClipBounds();
        int first = Math.max(0, (int) Math.floor(clip.y / scale.row()));
        int last = Math.min(drawing.rows() - 1, (int) Math.floor(clip.getMaxY() / scale.row()));
        int from = Math.max(0, (int) Math.floor(clip.x / scale.pleat()) - 2);
        int to = Math.min(drawing.positions() - 1, (int) Math.ceil(clip.getMaxX() / scale.pleat()));
        for (int row = first; row <= last; row++) {
            String cells = drawing.plate().rows().get(row).cells();
            for (int i = from; i <= to; i++) {
                if (drawing.rgb(row, i) != Drawing.NOTHING) {
                    String letter = cells.substring(i, i + 1);
                    double x = scale.left(i) + (scale.cable() - metrics.stringWidth(letter)) / 2;
                    double middle = scale.top(row, drawing.kind(row, i)) + scale.half() / 2;
                    g.setColor(Widgets.readableOn(new Color(drawing.rgb(row, i))));
                    g.drawString(letter, (float) x, (float) (middle + metrics.getAscent() * 0.36));
                }
            }
        }
        g.setFont(before);
    }
}
