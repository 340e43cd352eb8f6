package platekeep.client.ui;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.CableKind;

/**
 * Cables of a chart as small pictures, drawn once for each colour and then put in place dot by dot: the same dots as drawn
 * one by one, at a fraction of the cost. Serves only where every cable begins at a whole dot of the screen.
 *
 * <p>Not for two threads at once.
 */
final class CableStamps {
    private final ChartScale scale;
    private final double zoom;
    private final int paper;
    private final Map<Integer, BufferedImage> stamps = new HashMap<>();

    private CableStamps(ChartScale scale, double zoom, int paper) {
        this.scale = scale;
        this.zoom = zoom;
        this.paper = paper;
    }

    /** Whether cables can be stamped: neither turned nor sheared, and each at a whole dot. */
    static boolean serve(AffineTransform device, ChartScale scale) {
        double zoom = device.getScaleX();
        return device.getShearX() == 0
                && device.getShearY() == 0
                && zoom == device.getScaleY()
                && zoom > 0
                && isWhole(scale.pleat() * zoom)
                && isWhole(scale.half() * zoom)
                && isWhole(device.getTranslateX())
                && isWhole(device.getTranslateY());
    }

    private static boolean isWhole(double x) {
        return Math.abs(x - Math.rint(x)) < 1e-6;
    }

    /** These stamps while they are of the scale and theme asked for, else new ones. */
    static CableStamps of(CableStamps before, AffineTransform device, ChartScale scale) {
        int paper = Look.paper().getRGB();
        boolean serves = before != null
                && before.scale.equals(scale)
                && before.zoom == device.getScaleX()
                && before.paper == paper;
        return serves ? before : new CableStamps(scale, device.getScaleX(), paper);
    }

    /**
     * Puts the cables of some rows in place.
     *
     * @param rows from and to, both included, as {@code columns}
     */
    void paint(Graphics2D graphics, Drawing drawing, int[] rows, int[] columns) {
        AffineTransform device = graphics.getTransform();
        Graphics2D g = (Graphics2D) graphics.create();
        g.setTransform(new AffineTransform());
        int left = (int) Math.rint(device.getTranslateX());
        int top = (int) Math.rint(device.getTranslateY());
        int pleat = (int) Math.rint(scale.pleat() * zoom);
        int half = (int) Math.rint(scale.half() * zoom);
        for (int row = rows[0]; row <= rows[1]; row++) {
            for (int i = columns[0]; i <= columns[1]; i++) {
                int rgb = drawing.rgb(row, i);
                if (rgb != Drawing.NOTHING) {
                    int down = 2 * row + (drawing.kind(row, i) == CableKind.UP ? 0 : 1);
                    g.drawImage(stamps.computeIfAbsent(rgb, this::stamp), left + i * pleat, top + down * half, null);
                }
            }
        }
        g.dispose();
    }

    private BufferedImage stamp(int rgb) {
        int width = Math.max(1, (int) Math.rint(scale.cable() * zoom));
        int height = Math.max(1, (int) Math.rint(scale.half() * zoom));
        BufferedImage stamp = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = stamp.createGraphics();
        PlatePainter.smooth(g);
        g.scale(zoom, zoom);
        PlatePainter.paintCable(g, new Color(rgb), scale, 0, 0);
        g.dispose();
        return stamp;
    }
}
