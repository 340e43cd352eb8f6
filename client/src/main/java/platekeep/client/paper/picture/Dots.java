package platekeep.client.paper.picture;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import platekeep.client.library.LibraryException;

/** The dots of a picture: read upright and in the colours of the screen, made smaller, written again. */
public final class Dots {
    /** The longer side of a picture that was made smaller: a sheet of A4 at 200 dots an inch is 2339 dots long. */
    public static final int SMALLER = 2400;

    private static final float QUALITY = 0.85f;
    /** More dots than these are thinned out while reading, which costs some sharpness and spares memory. */
    private static final long MOST_AT_ONCE = 40_000_000L;

    private Dots() {}

    /** The picture upright, fitted into a size and never blown up; linear in its dots. */
    public static BufferedImage fitted(String name, PictureFile file, Dimension into) throws LibraryException {
        double zoom = Math.min(1, Math.min(into.width / (double) file.width(), into.height / (double) file.height()));
        int width = Math.max(1, (int) Math.round(file.width() * zoom));
        int height = Math.max(1, (int) Math.round(file.height() * zoom));
        int thinned = Math.max(1, (int) (0.5 / zoom));
        return scaled(upright(read(name, file, thinned), file.turn()), width, height);
    }

    /**
     * A smaller file of the same picture.
     *
     * @return empty when it would not be smaller
     */
    public static Optional<byte[]> smaller(String name, PictureFile file) throws LibraryException {
        // reading it through shows whether it is whole, also where it is small enough
        long dots = (long) file.width() * file.height();
        int thinned = 1;
        while (dots / ((long) thinned * thinned) > MOST_AT_ONCE) {
            thinned++;
        }
        BufferedImage read = read(name, file, thinned);
        if (file.longest() <= SMALLER) {
            return Optional.empty();
        }
        double zoom = SMALLER / (double) file.longest();
        BufferedImage image =
                scaled(upright(read, file.turn()), Math.max(1, (int) Math.round(file.width() * zoom)), Math.max(1, (int)
                        Math.round(file.height() * zoom)));
        return Optional.of(written(image, file.kind())).filter(bytes -> bytes.length < file.bytes().length);
    }

    private static BufferedImage read(String name, PictureFile file, int thinned) throws LibraryException {
        Iterator<ImageReader> readers =
                ImageIO.getImageReadersByFormatName(file.kind().word());
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file.bytes()))) {
            reader.setInput(in, true, true);
            ImageReadParam how = reader.getDefaultReadParam();
            how.setSourceSubsampling(thinned, thinned, 0, 0);
            return reader.read(0, how);
        } catch (IOException | RuntimeException e) {
            throw new LibraryException(
                    "\"" + name + "\" is damaged or of a rare kind that cannot be shown; save it anew as PNG.", e);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage image, Turn turn) {
        if (turn == Turn.NONE) {
            return image;
        }
        int width = turn.swaps() ? image.getHeight() : image.getWidth();
        int height = turn.swaps() ? image.getWidth() : image.getHeight();
        BufferedImage turned = like(image, width, height);
        Graphics2D g = turned.createGraphics();
        g.drawImage(image, turn.upright(image.getWidth(), image.getHeight()), null);
        g.dispose();
        return turned;
    }

    private static BufferedImage like(BufferedImage image, int width, int height) {
        boolean isClear = image.getColorModel().hasAlpha();
        return new BufferedImage(width, height, isClear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    }

    /** Halves as often as it can, so that every dot counts, then goes the rest of the way. */
    private static BufferedImage scaled(BufferedImage image, int width, int height) {
        BufferedImage now = image;
        boolean isSeen = false;
        while (now.getWidth() != width || now.getHeight() != height || !isSeen) {
            int w = Math.max(width, (now.getWidth() + 1) / 2);
            int h = Math.max(height, (now.getHeight() + 1) / 2);
            BufferedImage next = like(image, w, h);
            Graphics2D g = next.createGraphics();
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(now, 0, 0, next.getWidth(), next.getHeight(), null);
            g.dispose();
            now = next;
            isSeen = true;
        }
        return now;
    }

    private static byte[] written(BufferedImage image, PictureFile.Format kind) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(kind.word()).next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            if (kind == PictureFile.Format.JPEG) {
                how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                how.setCompressionQuality(QUALITY);
            }
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new IllegalStateException("nothing is written but memory", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
