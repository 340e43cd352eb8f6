package platekeep.client.ui;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Plate;

/**
 * Small pictures of the finished stitching on pleated cloth, kept in memory up to a bound; the ones not looked at for
 * longest go first. Drawing one anew costs less than reading it from a file would. Safe for many threads.
 */
public final class Thumbnails {
    /** Dots across a pleat at most, so that a narrow plate is not blown up. */
    private static final double WIDEST_PLEAT = 7;

    private static final double AIR = 0.07;

    /** Scales to a dot across a pleat. */
    private static final int STEPS = 16;

    private static final Rasters RASTERS = new Rasters();

    private final long mostDots;
    private final Map<Key, BufferedImage> kept = new LinkedHashMap<>(64, 0.75f, true);
    private long dots;

    private record Key(String content, int width, int height, int cloth) {}

    /**
     * @param mostBytes how much memory pictures may take, four bytes a dot
     */
    public Thumbnails(long mostBytes) {
        this.mostDots = mostBytes / 4;
    }

    /**
     * The picture, if it is at hand.
     *
     * @param content the id of the plate's content, the same for the same bytes
     */
    public synchronized Optional<BufferedImage> ready(String content, Dimension size) {
        return Optional.ofNullable(kept.get(key(content, size)));
    }

    /** The picture, drawn if it is not at hand. */
    public BufferedImage of(String content, Plate plate, Dimension size) {
        return of(new PlateSource(content, plate), size);
    }

    /** The picture of anything that can be seen, drawn if it is not at hand. */
    public BufferedImage of(PictureSource source, Dimension size) {
        Optional<BufferedImage> ready = ready(source.key(), size);
        if (ready.isPresent()) {
            return ready.get();
        }
        BufferedImage drawn = source.drawn(size);
        keep(key(source.key(), size), drawn);
        return drawn;
    }

    private static Key key(String content, Dimension size) {
        return new Key(content, size.width, size.height, Look.cloth());
    }

    private synchronized void keep(Key key, BufferedImage drawn) {
        BufferedImage before = kept.put(key, drawn);
        dots += dots(drawn) - (before == null ? 0 : dots(before));
        var oldest = kept.entrySet().iterator();
        while (dots > mostDots && kept.size() > 1) {
            dots -= dots(oldest.next().getValue());
            oldest.remove();
        }
    }

    /** How many pictures are at hand. */
    public synchronized int size() {
        return kept.size();
    }

    private static long dots(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight();
    }

    /** Draws a plate into a picture of this size, in the middle, on cloth to every side. */
    public static BufferedImage draw(Plate plate, Dimension size) {
        Drawing drawing = Drawing.of(plate);
        Lie lie = lie(drawing, size);
        return RASTERS.with(
                lie.scale(),
                Look.cloth(),
                raster -> raster.picture(drawing, size.width, size.height, lie.x(), lie.y()));
    }

    /** How a plate lies in a picture of this size. */
    public static Lie lie(Plate plate, Dimension size) {
        return lie(Drawing.of(plate), size);
    }

    private static Lie lie(Drawing drawing, Dimension size) {
        double air = Math.min(size.width, size.height) * AIR;
        ChartScale fitting =
                ChartScale.fitting(drawing.pleats(), drawing.height(), size.width - 2 * air, size.height - 2 * air);
        ChartScale scale = ChartScale.exact(stepped(Math.min(fitting.pleat(), WIDEST_PLEAT)));
        double x = (size.width - scale.left(drawing.pleats())) / 2;
        double y = (size.height - scale.top(drawing.height())) / 2 - scale.top(drawing.top());
        return new Lie(scale, x, y);
    }

    /**
     * How a plate lies in a picture.
     *
     * @param x of the left edge of its first pleat, in dots
     * @param y of the top edge of its first row, in dots
     */
    public record Lie(ChartScale scale, double x, double y) {

        /** The box around some rows and cables; the lower half-level of the last row is in it. */
        public Rectangle2D box(int row, int index, int rows, int cables) {
            return new Rectangle2D.Double(
                    x + scale.left(index), y + scale.top(row), scale.left(cables + 1), scale.top(rows) + scale.half());
        }
    }

    /** A little smaller, so that plates of nearly the same size are drawn at one scale. */
    private static double stepped(double pleat) {
        return pleat < 1 ? pleat : Math.floor(pleat * STEPS) / STEPS;
    }
}
