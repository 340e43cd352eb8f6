package platekeep.client.paper.picture;

import java.awt.geom.AffineTransform;

/**
 * How stored dots are to be turned to be seen upright: the eight values of the tag Orientation (EXIF 2.3, 4.6.4 A, tag
 * 0x0112), in its order. Each says where the first stored row and column are seen.
 */
public enum Turn {
    NONE,
    MIRROR_ACROSS,
    HALF,
    MIRROR_OVER,
    MIRROR_DIAGONAL,
    RIGHT,
    MIRROR_OTHER_DIAGONAL,
    LEFT;

    /** The tag's value, 1 to 8. */
    public int code() {
        return ordinal() + 1;
    }

    /** The turn of a tag's value; none for a value that there is not. */
    static Turn of(int code) {
        return code >= 1 && code <= values().length ? values()[code - 1] : NONE;
    }

    /** Whether width and height change places. */
    public boolean swaps() {
        return code() >= MIRROR_DIAGONAL.code();
    }

    /** Turns dots of a stored picture, so many wide and high, to where they are seen. */
    AffineTransform upright(int width, int height) {
        return switch (this) {
            case NONE -> new AffineTransform();
            case MIRROR_ACROSS -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case HALF -> new AffineTransform(-1, 0, 0, -1, width, height);
            case MIRROR_OVER -> new AffineTransform(1, 0, 0, -1, 0, height);
            case MIRROR_DIAGONAL -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case RIGHT -> new AffineTransform(0, 1, -1, 0, height, 0);
            case MIRROR_OTHER_DIAGONAL -> new AffineTransform(0, -1, -1, 0, height, width);
            case LEFT -> new AffineTransform(0, -1, 1, 0, 0, width);
        };
    }
}
