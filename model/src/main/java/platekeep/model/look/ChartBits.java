package platekeep.model.look;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** A chart in a form in which 64 places are looked at in one go. */
final class ChartBits {
    private static final int KEYS = 128;

    private final Palette palette;
    private final int from;
    private final int width;
    private final int height;
    private final int words;
    private final byte[] cells;
    private final long[] cables;
    private final long[] same;

    private ChartBits(Plate plate, byte[] keys) {
        this.palette = plate.palette();
        this.from = plate.from();
        this.width = plate.positions();
        this.height = plate.rows().size();
        this.words = width / Long.SIZE + 2;
        this.cells = new byte[width * height];
        this.cables = new long[words * height];
        this.same = new long[words * height];
        for (int r = 0; r < height; r++) {
            read(plate.rows().get(r).cells(), r, keys);
        }
    }

    /** A chart; where colours matter, letters of equal colours are one. */
    static ChartBits of(Plate plate, Wanted.Colours colours) {
        byte[] keys = new byte[KEYS];
        for (int key = 0; key < KEYS; key++) {
            keys[key] = (byte) key;
        }
        if (colours == Wanted.Colours.SAME) {
            Map<String, Character> first = new HashMap<>();
            plate.palette().entries().forEach((key, colour) -> {
                Character known = first.putIfAbsent(colour.srgb(), key);
                keys[key] = (byte) (known == null ? key : known).charValue();
            });
        }
        return new ChartBits(plate, keys);
    }

    private void read(String row, int r, byte[] keys) {
        byte before = 0;
        for (int i = 0; i < width; i++) {
            byte cell = keys[row.charAt(i)];
            cells[r * width + i] = cell;
            int word = r * words + i / Long.SIZE;
            long bit = 1L << i;
            cables[word] |= cell == Row.EMPTY ? 0 : bit;
            same[word] |= cell == before ? bit : 0;
            before = cell;
        }
    }

    int from() {
        return from;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    byte at(int row, int place) {
        return cells[row * width + place];
    }

    /** From the lowest bit on: whether a cable lies at this place and the 63 after it. */
    long cables(int row, int place) {
        return window(cables, row, place);
    }

    /** Whether there is the same at this place, and the 63 after it, as at the place before. */
    long same(int row, int place) {
        return window(same, row, place);
    }

    private long window(long[] bits, int row, int place) {
        int word = row * words + place / Long.SIZE;
        int shift = place % Long.SIZE;
        return bits[word] >>> shift | bits[word + 1] << 1 << (Long.SIZE - 1 - shift);
    }

    /** Whether a letter's colour looks like another colour. */
    boolean isSeenAs(char key, Optional<Colour> colour) {
        return colour.isPresent()
                && palette.get(key)
                        .map(c -> c.srgb().equals(colour.get().srgb()))
                        .orElse(false);
    }
}
