package platekeep.model.look;

import java.util.HashSet;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Which small patches occur in a chart, in 256 bytes: enough to say of most charts at once that a motif is not in them.
 *
 * <p>A patch is six places of two rows, told by which neighbours in it are of one colour, so that it is the same in all
 * colours. Its sixteen bits are scattered over 2048; two patches may share one (a Bloom filter with one hash: B. H.
 * Bloom, "Space/time trade-offs in hash coding with allowable errors", CACM 13 (1970), 422-426), so a patch that is
 * there is never denied, while one that is not may seem to be.
 */
public final class Trace {
    private static final int WIDE = 6;
    private static final int WORDS = 32;

    private final long[] bits;

    private Trace(long[] bits) {
        this.bits = bits;
    }

    /** Linear in the cells of the chart. */
    public static Trace of(Plate plate) {
        long[] bits = new long[WORDS];
        if (plate.palette().entries().values().stream()
                        .map(c -> c.srgb())
                        .distinct()
                        .count()
                < plate.palette().entries().size()) {
            // two letters of one colour are one or two, as it is asked: nothing is denied
            java.util.Arrays.fill(bits, -1);
            return new Trace(bits);
        }
        for (int r = 0; r + 1 < plate.rows().size(); r++) {
            String upper = plate.rows().get(r).cells();
            String lower = plate.rows().get(r + 1).cells();
            int above = 0;
            int below = 0;
            int between = 0;
            for (int i = 0; i < upper.length(); i++) {
                char a = upper.charAt(i);
                char b = lower.charAt(i);
                above = above << 1 | (i > 0 && a == upper.charAt(i - 1) ? 1 : 0);
                below = below << 1 | (i > 0 && b == lower.charAt(i - 1) ? 1 : 0);
                between = between << 1 | (a == b ? 1 : 0);
                if (i >= WIDE - 1) {
                    int bit = bit(above, below, between);
                    bits[bit / Long.SIZE] |= 1L << bit;
                }
            }
        }
        return new Trace(bits);
    }

    private static int bit(int above, int below, int between) {
        int key = above & 31 | (below & 31) << 5 | (between & 63) << 10;
        return key * 0x9E3779B1 >>> 21;
    }

    boolean hasAll(Set<Integer> wanted) {
        for (int bit : wanted) {
            if ((bits[bit / Long.SIZE] >>> bit & 1) == 0) {
                return false;
            }
        }
        return true;
    }

    /** The patches of a motif of which all is known, whatever lies in its gaps. */
    static Set<Integer> of(Motif motif, Wanted.Gaps gaps) {
        Set<Integer> bits = new HashSet<>();
        for (int r = 0; r + 1 < motif.height(); r++) {
            for (int i = WIDE - 1; i < motif.width(); i++) {
                if (isKnown(motif, r, i, gaps)) {
                    bits.add(bit(along(motif, r, i), along(motif, r + 1, i), across(motif, r, i)));
                }
            }
        }
        return bits;
    }

    /** Between two places, one with a cable and one without, there is a change at least where gaps are kept apart. */
    private static boolean isKnown(Motif motif, int row, int last, Wanted.Gaps gaps) {
        for (int i = last - WIDE + 1; i <= last; i++) {
            for (int r = row; r <= row + 1; r++) {
                boolean isGap = motif.at(r, i) == Row.EMPTY;
                boolean isBesideGap = i > last - WIDE + 1 && motif.at(r, i - 1) == Row.EMPTY
                        || r > row && motif.at(r - 1, i) == Row.EMPTY;
                if (isGap && (isBesideGap || gaps == Wanted.Gaps.ANY)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int along(Motif motif, int row, int last) {
        int bits = 0;
        for (int i = last - WIDE + 2; i <= last; i++) {
            bits = bits << 1 | (motif.at(row, i) == motif.at(row, i - 1) ? 1 : 0);
        }
        return bits;
    }

    private static int across(Motif motif, int row, int last) {
        int bits = 0;
        for (int i = last - WIDE + 1; i <= last; i++) {
            bits = bits << 1 | (motif.at(row, i) == motif.at(row + 1, i) ? 1 : 0);
        }
        return bits;
    }
}
