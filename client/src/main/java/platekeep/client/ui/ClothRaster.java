package platekeep.client.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Knot;
import platekeep.model.draw.Strand;
import platekeep.model.plate.CableKind;

/**
 * Paints the finished work on the cloth into a raster: the one code for small pictures and for the cloth view. Cables
 * that fall between dots are placed to a quarter of a dot.
 *
 * <p>Not for two threads at once.
 */
final class ClothRaster {
    private static final int PHASES = 4;

    private final ChartScale scale;
    private final int cloth;
    private final ThreadMask[] masks = new ThreadMask[PHASES * PHASES];

    ClothRaster(ChartScale scale, int cloth) {
        this.scale = scale;
        this.cloth = cloth;
    }

    boolean isFor(ChartScale otherScale, int otherCloth) {
        return scale.equals(otherScale) && cloth == otherCloth;
    }

    /**
     * A picture of a stretch of the cloth.
     *
     * @param originX where the chart's left edge lies in the picture, in dots
     * @param originY where its top edge lies
     */
    BufferedImage picture(Drawing drawing, int width, int height, double originX, double originY) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        PleatedCloth.fill(pixels, width, originX, scale.pleat(), cloth);
        int first = Math.max(0, (int) Math.floor(-originY / scale.row()) - 1);
        int last = Math.min(drawing.rows() - 1, (int) Math.ceil((height - originY) / scale.row()) + 1);
        Columns columns = columns(drawing, width, originX);
        for (int row = first; row <= last; row++) {
            paintRow(pixels, width, height, drawing, row, columns, originY);
        }
        paintTop(image, drawing, originX, originY);
        return image;
    }

    /**
     * Where the cables of each position begin that can be seen.
     *
     * @param first the first of them
     * @param dots whole dots from the picture's left edge
     * @param phases parts of a dot beyond that, of {@value #PHASES}
     */
    private record Columns(int first, int[] dots, int[] phases) {}

    private Columns columns(Drawing drawing, int width, double ox) {
        int first = Math.max(0, (int) Math.floor(-ox / scale.pleat()) - 3);
        int last = Math.min(drawing.positions() - 1, (int) Math.ceil((width - ox) / scale.pleat()) + 1);
        Columns columns =
                new Columns(first, new int[Math.max(0, last + 1 - first)], new int[Math.max(0, last + 1 - first)]);
        for (int i = first; i <= last; i++) {
            double x = ox + scale.left(i);
            int whole = (int) Math.floor(x);
            columns.dots[i - first] = whole;
            columns.phases[i - first] = (int) ((x - whole) * PHASES);
        }
        return columns;
    }

    /** First the shadows of all cables of the row, then their threads. */
    private void paintRow(
            int[] pixels, int width, int height, Drawing drawing, int row, Columns columns, double originY) {
        double up = originY + scale.top(row, CableKind.UP);
        double down = originY + scale.top(row, CableKind.DOWN);
        int upDot = (int) Math.floor(up);
        int downDot = (int) Math.floor(down);
        int upPhase = (int) ((up - upDot) * PHASES) * PHASES;
        int downPhase = (int) ((down - downDot) * PHASES) * PHASES;
        int[] dots = columns.dots();
        for (int n = 0; n < dots.length; n++) {
            if (drawing.rgb(row, columns.first() + n) != Drawing.NOTHING) {
                boolean isUp = drawing.isUp(row, columns.first() + n);
                mask((isUp ? upPhase : downPhase) + columns.phases()[n])
                        .shade(pixels, width, height, dots[n], isUp ? upDot : downDot);
            }
        }
        for (int n = 0; n < dots.length; n++) {
            int rgb = drawing.rgb(row, columns.first() + n);
            if (rgb != Drawing.NOTHING) {
                boolean isUp = drawing.isUp(row, columns.first() + n);
                mask((isUp ? upPhase : downPhase) + columns.phases()[n])
                        .lay(pixels, width, height, dots[n], isUp ? upDot : downDot, rgb);
            }
        }
    }

    private ThreadMask mask(int at) {
        if (masks[at] == null) {
            masks[at] = new ThreadMask(
                    scale.cable(), scale.half(), at % PHASES / (double) PHASES, at / PHASES / (double) PHASES);
        }
        return masks[at];
    }

    private void paintTop(BufferedImage image, Drawing drawing, double ox, double oy) {
        if (drawing.strands().isEmpty() && drawing.knots().isEmpty()) {
            return;
        }
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(ox, oy);
        drawing.strands().forEach(strand -> paintStrand(g, scale, strand));
        drawing.knots().forEach(knot -> paintKnot(g, scale, knot));
        g.dispose();
    }

    /** A piece of thread of a geometric line, with its shadow and sheen. */
    static void paintStrand(Graphics2D g, ChartScale scale, Strand strand) {
        double thick = scale.half() * 0.72;
        double inset = Math.min(thick / 2, Math.abs(strand.x2() - strand.x1()) * scale.pleat() / 3);
        Line2D path = new Line2D.Double(
                scale.left(strand.x1()) + inset,
                scale.top(strand.y1()),
                scale.left(strand.x2()) - inset,
                scale.top(strand.y2()));
        g.setStroke(new BasicStroke((float) (thick * 1.25), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(new Color(0, 0, 0, 60));
        g.draw(path);
        g.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(new Color(strand.rgb()));
        g.draw(path);
        if (thick > 3) {
            g.setStroke(new BasicStroke((float) (thick * 0.22), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(new Color(255, 255, 255, 70));
            g.translate(0, -thick * 0.2);
            g.draw(path);
            g.translate(0, thick * 0.2);
        }
    }

    /** A knot, or another stitch on top, as a small ball of thread. */
    static void paintKnot(Graphics2D g, ChartScale scale, Knot knot) {
        double wide = knot.stitch().startsWith("french") ? 1.0 : 1.9;
        double d = Math.max(2, scale.pleat() * 1.25);
        double w = d * wide;
        double x = scale.left(knot.x()) - w / 2;
        double y = scale.top(knot.y()) - d / 2;
        g.setColor(new Color(0, 0, 0, 90));
        g.fill(new Ellipse2D.Double(x - d * 0.06, y + d * 0.06, w * 1.12, d * 1.12));
        g.setColor(new Color(knot.rgb()));
        g.fill(new Ellipse2D.Double(x, y, w, d));
        g.setColor(new Color(255, 255, 255, 110));
        g.fill(new Ellipse2D.Double(x + w * 0.22, y + d * 0.16, w * 0.3, d * 0.26));
    }
}
