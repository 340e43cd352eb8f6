package platekeep.client.paper.picture;

import platekeep.client.library.LibraryException;

/**
 * A picture's file, JPEG or PNG, with what it says about itself. Reading it looks at no dot, so a huge or a broken one
 * costs nothing.
 *
 * @param bytes what is kept: the dots as they came, without what tells where, when and by whom they were taken
 * @param kind what it is
 * @param width as it is seen, upright
 * @param height as it is seen, upright
 * @param turn what the stored dots need to be upright
 */
public record PictureFile(byte[] bytes, Format kind, int width, int height, Turn turn) {
    /** More dots than these are not taken: an A3 sheet at 600 dots an inch has 70 million. */
    public static final long MOST_DOTS = 120_000_000L;

    /** A picture is stored as one of these. */
    public enum Format {
        JPEG("jpeg"),
        PNG("png");

        private final String word;

        Format(String word) {
            this.word = word;
        }

        /** The name by which Java's readers and writers know it. */
        String word() {
            return word;
        }
    }

    /** Reads it; linear in the bytes. */
    public static PictureFile of(String name, byte[] bytes) throws LibraryException {
        try {
            if (JpegFile.begins(bytes)) {
                JpegFile file = JpegFile.of(bytes);
                return fitting(file.measures(), file.cleaned(), Format.JPEG, file.turn());
            }
            if (PngFile.begins(bytes)) {
                PngFile file = PngFile.of(bytes);
                return fitting(file.measures(), file.cleaned(), Format.PNG, file.turn());
            }
            throw new Damaged("is neither a JPEG nor a PNG picture; save it as one of the two");
        } catch (Damaged e) {
            throw new LibraryException("\"" + name + "\" " + e.getMessage() + ".", e);
        }
    }

    private static PictureFile fitting(int[] measures, byte[] bytes, Format kind, Turn turn) throws Damaged {
        int width = measures[turn.swaps() ? 1 : 0];
        int height = measures[turn.swaps() ? 0 : 1];
        if (width <= 0 || height <= 0) {
            throw Damaged.broken();
        }
        if ((long) width * height > MOST_DOTS) {
            throw new Damaged("is " + width + " x " + height + " dots large, and at most " + MOST_DOTS / 1_000_000
                    + " million dots are taken; scan it with fewer dots an inch (300 are plenty)");
        }
        return new PictureFile(bytes, kind, width, height, turn);
    }

    /** The longer of the two measures. */
    public int longest() {
        return Math.max(width, height);
    }
}
