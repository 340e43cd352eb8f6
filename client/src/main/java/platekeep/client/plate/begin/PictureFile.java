package platekeep.client.plate.begin;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import platekeep.client.library.LibraryException;

/** Reads a picture file, its measures before its dots, so that a huge or broken one costs nothing. */
final class PictureFile {
    /** More dots than this are not read, whatever the measures say. */
    static final long MOST_DOTS = 60_000_000L;

    /** A chart has at most 2000 rows and places; finer dots than twice that are left out while reading. */
    private static final int FINEST = 4000;

    private PictureFile() {}

    /** Reads a PNG or JPEG file; in the background. */
    static Picture read(Path file) throws LibraryException {
        String name = "\"" + file.getFileName() + "\"";
        if (!Files.isRegularFile(file)) {
            throw new LibraryException(name + " is no file that can be read. Choose a PNG or JPEG picture.");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = in == null ? null : ImageIO.getImageReaders(in);
            if (readers == null || !readers.hasNext()) {
                throw new LibraryException(name + " is no picture that can be read. Choose a PNG or JPEG picture.");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return read(reader, name);
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            throw new LibraryException(
                    name + " is damaged or of a kind that cannot be read. Save it anew as PNG, then try again; nothing"
                            + " was begun.",
                    e);
        }
    }

    private static Picture read(ImageReader reader, String name) throws IOException, LibraryException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_DOTS) {
            throw new LibraryException(name + " is " + width + " x " + height + " dots large; at most "
                    + MOST_DOTS / 1_000_000 + " million dots are read. Make it smaller (2000 dots across are plenty),"
                    + " then try again; nothing was begun.");
        }
        ImageReadParam how = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(width, height) / FINEST);
        how.setSourceSubsampling(step, step, 0, 0);
        return dots(reader.read(0, how));
    }

    static Picture dots(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
        for (int i = 0; i < dots.length; i++) {
            dots[i] = (dots[i] >>> 24) < 128 ? Picture.CLEAR : dots[i] & 0xFFFFFF;
        }
        return new Picture(width, height, dots);
    }
}
