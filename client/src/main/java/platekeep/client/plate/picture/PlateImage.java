package platekeep.client.plate.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.GatheringRow;

/**
 * A plate as a picture of dots, painted by what paints the screen, always on light paper: a chart with its numbers
 * beside it, or the finished work with some cloth around it.
 */
final class PlateImage {
    /** Larger pictures are not made. */
    static final long MOST_DOTS = 60_000_000L;

    private static final int BESIDE = 44;
    private static final int ABOVE = 28;

    private final Drawing drawing;
    private final ChartScale scale;
    private final PlatePainter.View view;

    private PlateImage(Drawing drawing, int pleat, PlatePainter.View view) {
        this.drawing = drawing;
        this.scale = ChartScale.whole(pleat);
        this.view = view;
    }

    /** How large a picture becomes, in dots. */
    record Size(int width, int height) {
        long dots() {
            return (long) width * height;
        }

        @Override
        public String toString() {
            return width + " x " + height;
        }
    }

    static Size size(Drawing drawing, int pleat) {
        ChartScale scale = ChartScale.whole(pleat);
        return new Size(
                (int) scale.left(drawing.pleats()) + 2 * BESIDE,
                (int) Math.ceil(scale.top(drawing.height())) + 2 * ABOVE);
    }

    /** The picture as a PNG file. */
    static byte[] png(Drawing drawing, int pleat, PlatePainter.View view) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(of(drawing, pleat, view), "png", out);
        return out.toByteArray();
    }

    static BufferedImage of(Drawing drawing, int pleat, PlatePainter.View view) {
        return Look.onLightPaper(() -> new PlateImage(drawing, pleat, view).painted());
    }

    private BufferedImage painted() {
        Size size = size(drawing, (int) scale.pleat());
        BufferedImage image = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        int down = ABOVE - (int) Math.floor(scale.top(drawing.top()));
        g.setColor(Look.paper());
        g.fillRect(0, 0, size.width(), size.height());
        g.translate(BESIDE, down);
        g.setClip(-BESIDE, -down, size.width(), size.height());
        new PlatePainter().paint(g, drawing, scale, view);
        if (view == PlatePainter.View.CHART) {
            paintNumbers(g);
        }
        g.dispose();
        return image;
    }

    private void paintNumbers(Graphics2D g) {
        PlatePainter.smooth(g);
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 11));
        int from = drawing.plate().from();
        for (int i = 0; i < drawing.pleats(); i++) {
            if (Math.floorMod(from + i, every(scale.pleat(), 34)) == 0) {
                write(
                        g,
                        Look.faintInk(),
                        Integer.toString(from + i),
                        scale.left(i + 0.5),
                        scale.top(drawing.top()) - 12,
                        0.5);
            }
        }
        for (int row = 0; row < drawing.rows(); row++) {
            int number = drawing.plate().numberFromBottom(row);
            if (number % every(scale.row(), 16) == 0) {
                write(g, Look.faintInk(), Integer.toString(number), -8, scale.top(row + 0.5), 1);
            }
        }
        for (GatheringRow row : drawing.gathering()) {
            write(g, Look.gathering(), row.label(), scale.left(drawing.pleats()) + 8, scale.top(row.y()), 0);
        }
    }

    private static int every(double step, int needed) {
        int every = 1;
        while (every * step < needed) {
            every = every == 1 ? 5 : every * 2;
        }
        return every;
    }

    /**
     * @param part which part of the words lies left of x: 0 none, 1 all
     */
    private static void write(Graphics2D g, Color ink, String words, double x, double middle, double part) {
        g.setColor(ink);
        g.drawString(words, (float) (x - g.getFontMetrics().stringWidth(words) * part), (float) middle + 4);
    }
}
