package platekeep.client.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import platekeep.model.colour.Contrast;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.GatheringRow;
import platekeep.model.draw.Knot;
import platekeep.model.draw.Strand;
import platekeep.model.plate.CableKind;

/**
 * Paints a plate on a screen, as a chart or as finished work on the cloth. The chart's top left corner is the origin of
 * the graphics handed in; only what lies in its clip is painted, so a small change costs little.
 */
public final class PlatePainter {
    /** Below so many dots a pleat a chart is painted without fine lines, its cables as plain bars. */
    private static final double FINE = 4;

    /** Below so many dots a pleat cables have no outline, which would take too much of their colour. */
    private static final double OUTLINED = 8;

    /** A contrast below this against the paper is hardly seen. */
    private static final double SINKS = 1.7;

    /** The dashes of a gathering row come again after so many dots; those of the centre below. */
    private static final double GATHERING_DASH = 7 + 3 + 2 + 3;

    private static final double CENTRE_DASH = 4 + 4;

    private ClothRaster raster;
    private CableStamps stamps;

    /** The two ways to look at a plate. */
    public enum View {
        CHART,
        CLOTH
    }

    /** Paints the plate. */
    public void paint(Graphics2D graphics, Drawing drawing, ChartScale scale, View view) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (view == View.CLOTH) {
            paintCloth(g, drawing, scale);
        } else {
            paintChart(g, drawing, scale);
        }
        g.dispose();
    }

    private void paintCloth(Graphics2D g, Drawing drawing, ChartScale scale) {
        Device device = Device.of(g, scale);
        if (device.scale().pleat() < 1) {
            g.setColor(new Color(Look.cloth()));
            g.fill(g.getClipBounds());
            paintBars(g, drawing, scale);
            return;
        }
        if (raster == null || !raster.isFor(device.scale(), Look.cloth())) {
            raster = new ClothRaster(device.scale(), Look.cloth());
        }
        Rectangle seen = device.seen();
        if (!seen.isEmpty()) {
            device.put(g, raster.picture(drawing, seen.width, seen.height, device.left(), device.top()));
        }
    }

    /**
     * The dots of the screen under a clip: pictures are made for them and put there as they are, never scaled.
     *
     * @param seen the clip
     * @param scale in dots of the screen
     * @param left where the chart's left edge lies, in dots from the clip's
     * @param top where its top edge lies
     */
    private record Device(Rectangle seen, ChartScale scale, double left, double top) {
        static Device of(Graphics2D g, ChartScale scale) {
            AffineTransform to = g.getTransform();
            double zoom = to.getScaleX();
            Rectangle seen =
                    to.createTransformedShape(g.getClipBounds()).getBounds2D().getBounds();
            return new Device(
                    seen,
                    new ChartScale(scale.pleat() * zoom, scale.half() * zoom),
                    to.getTranslateX() - seen.x,
                    to.getTranslateY() - seen.y);
        }

        void put(Graphics2D graphics, BufferedImage image) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setTransform(new AffineTransform());
            g.drawImage(image, seen.x, seen.y, null);
            g.dispose();
        }
    }

    private void paintChart(Graphics2D g, Drawing drawing, ChartScale scale) {
        smooth(g);
        Rectangle2D.Double sheet = new Rectangle2D.Double(
                0, scale.top(drawing.top()), scale.left(drawing.pleats()), scale.top(drawing.height()));
        g.setColor(Look.paper());
        g.fill(sheet);
        Rectangle clip = g.getClipBounds();
        if (scale.pleat() >= FINE) {
            paintFineLines(g, drawing, scale, clip);
        }
        paintGathering(g, drawing, scale);
        paintCables(g, drawing, scale);
        drawing.strands().stream()
                .filter(strand ->
                        scale.left(strand.x2()) >= clip.x - 8 && scale.left(strand.x1()) <= clip.getMaxX() + 8)
                .forEach(strand -> paintStrand(g, scale, strand));
        drawing.knots().forEach(knot -> paintKnot(g, scale, knot));
        paintCentre(g, drawing, scale);
    }

    /** Paints the cables of a chart alone. */
    public void paintCables(Graphics2D g, Drawing drawing, ChartScale scale) {
        Rectangle clip = g.getClipBounds();
        int first = Math.max(0, (int) Math.floor(clip.y / scale.row()));
        int last = Math.min(drawing.rows() - 1, (int) Math.floor((clip.getMaxY()) / scale.row()));
        int[] columns = columns(drawing, scale, clip);
        if (first > last || columns[0] > columns[1]) {
            return;
        }
        if (scale.pleat() < FINE) {
            paintBars(g, drawing, scale);
        } else if (CableStamps.serve(g.getTransform())) {
            stamps = CableStamps.of(stamps, g.getTransform(), scale);
            stamps.paint(g, drawing, new int[] {first, last}, columns);
        } else {
            for (int row = first; row <= last; row++) {
                paintRow(g, drawing, row, scale, scale.top(row));
            }
        }
    }

    /** Cables so small that they are bars of one colour. */
    private static void paintBars(Graphics2D g, Drawing drawing, ChartScale scale) {
        Device device = Device.of(g, scale);
        Rectangle seen = device.seen();
        if (!seen.isEmpty()) {
            device.put(
                    g,
                    BarRaster.picture(drawing, device.scale(), seen.width, seen.height, device.left(), device.top()));
        }
    }

    /** The first and the last place of a row that can be seen. */
    private static int[] columns(Drawing drawing, ChartScale scale, Rectangle clip) {
        return new int[] {
            Math.max(0, (int) Math.floor(clip.x / scale.pleat()) - 2),
            Math.min(drawing.positions() - 1, (int) Math.ceil(clip.getMaxX() / scale.pleat()))
        };
    }

    /**
     * Paints the cables of one row of a chart, at a height of the caller's choosing.
     *
     * @param top the row's top edge, in dots
     */
    public static void paintRow(Graphics2D g, Drawing drawing, int row, ChartScale scale, double top) {
        Rectangle clip = g.getClipBounds();
        int first = clip == null ? 0 : Math.max(0, (int) Math.floor(clip.x / scale.pleat()) - 2);
        int last = drawing.positions() - 1;
        if (clip != null) {
            last = Math.min(last, (int) Math.ceil(clip.getMaxX() / scale.pleat()));
        }
        for (int i = first; i <= last; i++) {
            int rgb = drawing.rgb(row, i);
            if (rgb != Drawing.NOTHING) {
                double y = top + (drawing.kind(row, i) == CableKind.UP ? 0 : scale.half());
                paintCable(g, new Color(rgb), scale, scale.left(i), y);
            }
        }
    }

    /** Paints one cable of a chart with its top left corner at a point. */
    public static void paintCable(Graphics2D g, Color colour, ChartScale scale, double x, double y) {
        if (scale.pleat() < FINE) {
            g.setColor(colour);
            g.fill(new Rectangle2D.Double(x, y, scale.cable(), scale.half()));
            return;
        }
        g.setColor(colour);
        if (scale.pleat() < OUTLINED && !sinks(colour)) {
            g.fill(new RoundRectangle2D.Double(x + 0.2, y + 0.2, scale.cable() - 0.4, scale.half() - 0.4, 3, 3));
            return;
        }
        RoundRectangle2D.Double bar = bar(scale, x, y);
        g.fill(bar);
        g.setColor(outline(colour));
        g.setStroke(hairline());
        g.draw(bar);
    }

    /** The outline of a cable with its top left corner at a point. */
    public static RoundRectangle2D.Double bar(ChartScale scale, double x, double y) {
        double arc = scale.half() * 0.9;
        return new RoundRectangle2D.Double(x + 0.5, y + 0.5, scale.cable() - 1, scale.half() - 1, arc, arc);
    }

    /** Paints a piece of thread of a geometric line; the chart's top left corner is the origin. */
    public static void paintStrand(Graphics2D g, ChartScale scale, Strand strand) {
        ClothRaster.paintStrand(g, scale, strand);
    }

    /** Paints a single stitch on top; the chart's top left corner is the origin. */
    public static void paintKnot(Graphics2D g, ChartScale scale, Knot knot) {
        ClothRaster.paintKnot(g, scale, knot);
    }

    /** Whether a colour is so near to the paper's that its cables need an outline to be seen. */
    private static boolean sinks(Color colour) {
        return Contrast.of(colour.getRGB() & 0xFFFFFF, Look.paper().getRGB() & 0xFFFFFF) < SINKS;
    }

    private static Color outline(Color colour) {
        Color ground = Look.paper();
        boolean lightOnDark = ground.getRed() < 128;
        double by = sinks(colour) ? 0.45 : lightOnDark ? 0.24 : 0.30;
        int to = lightOnDark ? 255 : 0;
        return new Color(
                (int) (colour.getRed() + (to - colour.getRed()) * by),
                (int) (colour.getGreen() + (to - colour.getGreen()) * by),
                (int) (colour.getBlue() + (to - colour.getBlue()) * by));
    }

    private static void paintFineLines(Graphics2D g, Drawing drawing, ChartScale scale, Rectangle clip) {
        g.setStroke(hairline());
        double above = scale.top(drawing.top());
        double below = scale.top(drawing.rows());
        int from = drawing.plate().from();
        for (int i = 0; i <= drawing.pleats(); i++) {
            double x = scale.left(i);
            if (x >= clip.x - 1 && x <= clip.getMaxX() + 1) {
                g.setColor(Math.floorMod(from + i - 1, 10) == 0 ? Look.line() : Look.fineLine());
                g.draw(new Line2D.Double(x, above, x, below));
            }
        }
        for (int row = 0; row <= drawing.rows(); row++) {
            double y = scale.top(row);
            if (y >= clip.y - 1 && y <= clip.getMaxY() + 1) {
                g.setColor((drawing.rows() - row) % 10 == 0 ? Look.line() : Look.fineLine());
                g.draw(new Line2D.Double(0, y, scale.left(drawing.pleats()), y));
            }
        }
    }

    private static void paintGathering(Graphics2D g, Drawing drawing, ChartScale scale) {
        g.setColor(Look.gathering());
        g.setStroke(dashes(1f, 7, 3, 2, 3));
        Rectangle clip = g.getClipBounds();
        double from = begin(clip.x, 0, GATHERING_DASH);
        double to = Math.min(clip.getMaxX() + 1, scale.left(drawing.pleats()));
        for (GatheringRow row : drawing.gathering()) {
            double y = scale.top(row.y());
            if (y >= clip.y - 2 && y <= clip.getMaxY() + 2 && from < to) {
                g.draw(new Line2D.Double(from, y, to, y));
            }
        }
    }

    private static void paintCentre(Graphics2D g, Drawing drawing, ChartScale scale) {
        g.setColor(Look.centre());
        g.setStroke(dashes(1.2f, 4, 4));
        double x = scale.left(drawing.pleats() / 2.0);
        Rectangle clip = g.getClipBounds();
        double from = begin(clip.y, scale.top(drawing.top()), CENTRE_DASH);
        double to = Math.min(clip.getMaxY() + 1, scale.top(drawing.rows()));
        if (x >= clip.x - 2 && x <= clip.getMaxX() + 2 && from < to) {
            g.draw(new Line2D.Double(x, from, x, to));
        }
    }

    /** Where a dashed line begins so that its dashes lie as if it had begun at its start, but little is unseen. */
    private static double begin(double seen, double start, double dash) {
        return start + Math.max(0, Math.floor((seen - start) / dash)) * dash;
    }

    private static Stroke hairline() {
        return new BasicStroke(1f);
    }

    private static Stroke dashes(float width, float... lengths) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, lengths, 0);
    }

    /** Smooth edges, at the very place asked for. */
    public static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }
}
