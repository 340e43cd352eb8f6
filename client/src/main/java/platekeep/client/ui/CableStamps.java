package platekeep.client.ui;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/**
 * Cables of a chart as small pictures, drawn once for each colour and then put in place dot by dot: the same dots as drawn
 * one by one, at a fraction of the cost. Where a cable would begin between two dots of the screen, each of its edges lies
 * at the nearest one, so that neighbours still touch and no edge is blurred; pictures then come in up to four sizes.
 *
 * <p>Not for two threads at once.
 */
final class CableStamps {
    private final ChartScale scale;
    private final double zoom;
    private final int paper;
    private final Map<Key, BufferedImage> stamps = new HashMap<>();

    private CableStamps(ChartScale scale, double zoom, int paper) {
        this.scale = scale;
        this.zoom = zoom;
        this.paper = paper;
    }

    /** Whether cables can be stamped: neither turned nor sheared. */
    static boolean serve(AffineTransform device) {
        return device.getShearX() == 0
                && device.getShearY() == 0
                && device.getScaleX() == device.getScaleY()
                && device.getScaleX() > 0;
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
        int[] across = new int[columns[1] - columns[0] + 3];
        for (int i = 0; i < across.length; i++) {
            across[i] = (int) Math.rint(device.getTranslateX() + scale.left(columns[0] + i) * zoom);
        }
        for (int row = rows[0]; row <= rows[1]; row++) {
            int[] down = new int[3];
            for (int level = 0; level < down.length; level++) {
                down[level] = (int) Math.rint(device.getTranslateY() + (2 * row + level) * scale.half() * zoom);
            }
            for (int i = columns[0]; i <= columns[1]; i++) {
                int rgb = drawing.rgb(row, i);
                if (rgb != Drawing.NOTHING) {
                    int level = drawing.isUp(row, i) ? 0 : 1;
                    int left = across[i - columns[0]];
                    Key key = new Key(rgb, across[i - columns[0] + 2] - left, down[level + 1] - down[level]);
                    g.drawImage(stamps.computeIfAbsent(key, this::stamp), left, down[level], null);
                }
            }
        }
        g.dispose();
    }

    private record Key(int rgb, int width, int height) {}

    private BufferedImage stamp(Key key) {
        BufferedImage stamp =
                new BufferedImage(Math.max(1, key.width()), Math.max(1, key.height()), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = stamp.createGraphics();
        PlatePainter.smooth(g);
        g.scale(key.width() / scale.cable(), key.height() / scale.half());
        PlatePainter.paintCable(g, new Color(key.rgb()), scale, 0, 0);
        g.dispose();
        return stamp;
    }
}
