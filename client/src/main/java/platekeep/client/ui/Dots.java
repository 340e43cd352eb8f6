package platekeep.client.ui;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Some dots of a small box, in an order of their own, and where they lie in a picture: what is done to a cable's dots is
 * done in one plain loop, hundreds of thousands of times a second.
 *
 * <p>Not for two threads at once.
 */
final class Dots {
    /** The places in the box: line by line from its upper left corner. */
    final int[] places;

    private final int boxWidth;
    private final int boxHeight;
    private int imageWidth = -1;
    private final int[] offsets;

    Dots(IntStream places, int boxWidth, int boxHeight) {
        this.places = places.toArray();
        this.offsets = new int[this.places.length];
        this.boxWidth = boxWidth;
        this.boxHeight = boxHeight;
    }

    /** How far each dot lies behind the box's corner in the dots of a picture. */
    int[] offsets(int width) {
        if (width != imageWidth) {
            imageWidth = width;
            Arrays.setAll(offsets, n -> places[n] / boxWidth * width + places[n] % boxWidth);
        }
        return offsets;
    }

    /** Whether the whole box lies in a picture. */
    boolean isWithin(int width, int height, int left, int above) {
        return left >= 0 && above >= 0 && left + boxWidth <= width && above + boxHeight <= height;
    }

    /** Whether one dot lies in a picture. */
    boolean isWithin(int width, int height, int left, int above, int number) {
        int x = left + places[number] % boxWidth;
        int y = above + places[number] / boxWidth;
        return x >= 0 && y >= 0 && x < width && y < height;
    }
}
