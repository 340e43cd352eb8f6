package platekeep.model.look;

/**
 * What of a grid can be reached from its upper edge through open places, up, down and sideways. A row is held as bits and
 * filled 64 places at a time; rows are gone through down and up again until nothing more is reached, which takes a few
 * rounds in pictures, and as many as there are turns in a maze.
 */
final class Flood {
    private final int height;
    private final int words;
    private final long[] open;
    private final long[] reached;

    /**
     * @param cells row by row
     * @param one the cells that are open
     * @param other likewise
     */
    Flood(byte[] cells, int width, byte one, byte other) {
        this.height = cells.length / width;
        this.words = (width + Long.SIZE - 1) / Long.SIZE;
        this.open = new long[height * words];
        this.reached = new long[open.length];
        for (int r = 0; r < height; r++) {
            for (int w = 0; w < words; w++) {
                int from = r * width + w * Long.SIZE;
                int to = Math.min((r + 1) * width, from + Long.SIZE);
                long bits = 0;
                for (int at = to - 1; at >= from; at--) {
                    bits = bits << 1 | (cells[at] == one || cells[at] == other ? 1 : 0);
                }
                open[r * words + w] = bits;
            }
        }
        System.arraycopy(open, 0, reached, 0, words);
        run();
    }

    private void run() {
        boolean isMore = true;
        while (isMore) {
            isMore = false;
            for (int r = 1; r < height; r++) {
                isMore |= spread(r - 1, r);
            }
            for (int r = height - 2; r >= 0; r--) {
                isMore |= spread(r + 1, r);
            }
        }
    }

    /** Fills the runs of a row that are reached from another one; whether any was reached newly. */
    private boolean spread(int from, int to) {
        boolean isMore = false;
        for (int w = 0; w < words; w++) {
            int at = to * words + w;
            long come = reached[from * words + w] & open[at] & ~reached[at];
            reached[at] |= come;
            isMore |= come != 0;
        }
        if (isMore) {
            fill(to * words);
        }
        return isMore;
    }

    /** Fills each run of a row in which something is reached. */
    private void fill(int row) {
        long carry = 0;
        for (int at = row; at < row + words; at++) {
            reached[at] = up(reached[at] | carry & open[at], open[at]);
            carry = reached[at] >>> Long.SIZE - 1;
        }
        carry = 0;
        for (int at = row + words - 1; at >= row; at--) {
            reached[at] = down(reached[at] | carry << Long.SIZE - 1 & open[at], open[at]);
            carry = reached[at] & 1;
        }
    }

    /** By doubling steps, as in H. S. Warren, "Hacker's Delight", on parallel prefix operations (from memory). */
    private static long up(long seeds, long open) {
        long filled = seeds;
        long way = open;
        for (int step = 1; step < Long.SIZE; step *= 2) {
            filled |= way & filled << step;
            way &= way << step;
        }
        return filled;
    }

    private static long down(long seeds, long open) {
        long filled = seeds;
        long way = open;
        for (int step = 1; step < Long.SIZE; step *= 2) {
            filled |= way & filled >>> step;
            way &= way >>> step;
        }
        return filled;
    }

    boolean has(int row, int place) {
        return (reached[row * words + place / Long.SIZE] >>> place & 1) != 0;
    }

    /** Writes a value wherever something was reached. */
    void write(byte[] cells, int width, byte value) {
        for (int r = 0; r < height; r++) {
            for (int w = 0; w < words; w++) {
                int from = r * width + w * Long.SIZE;
                for (long bits = reached[r * words + w]; bits != 0; ) {
                    int first = Long.numberOfTrailingZeros(bits);
                    long rest = ~(bits >>> first);
                    int run = rest == 0
                            ? Long.SIZE - first
                            : Math.min(Long.SIZE - first, Long.numberOfTrailingZeros(rest));
                    for (int i = from + first; i < from + first + run; i++) {
                        cells[i] = value;
                    }
                    bits = first + run == Long.SIZE ? 0 : bits & -1L << first + run;
                }
            }
        }
    }
}
