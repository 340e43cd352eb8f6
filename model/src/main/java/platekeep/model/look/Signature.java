package platekeep.model.look;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * What a picture looks like, in 152 bytes for each way to read it (one or two as a rule, three at most), made to be
 * compared by the thousand. It knows no colours, no place on the chart and no size.
 *
 * <p>The shape is brought to one place and size by its {@link Moments} and laid on a grid: how far each of 16 x 16 fields
 * is covered, and how many borders between colours, the outline among them, are crossed on the way across and down each
 * of 8 x 8 fields. Each number has four steps, written so that step n sets n bits; then the bits that two signatures
 * share, over those that either has, are the sum of the smaller numbers over the sum of the greater ones (the weighted
 * Jaccard likeness). A last word holds how wide the shape is for its height.
 */
public final class Signature {
    /** Words of 64 bits for one reading. */
    static final int WORDS = 19;

    /** The first words tell what is covered, the next where borders lie, the last the proportions. */
    static final int COVER_WORDS = 12;

    static final int BORDER_WORDS = 18;

    /** In the last word: a band above or below was left out in this reading. */
    static final long PART = 1L << Long.SIZE - 1;

    /** What two pictures that are alike without their bands are worth against two that are alike as they are. */
    private static final double PART_WORTH = 0.95;

    static final int FIELDS = 16;
    static final int BORDER_FIELDS = 8;
    static final int STEPS = 3;

    private final long[] bits;

    private Signature(long[] bits) {
        this.bits = bits;
    }

    /** The signature of a plate's picture; empty where it has no cable. Linear in the cells of the chart. */
    public static Optional<Signature> of(Plate plate) {
        List<Shape> readings = Shape.of(plate);
        long[] bits = new long[WORDS * readings.size()];
        for (int i = 0; i < readings.size(); i++) {
            new SignatureWriter(readings.get(i)).write(bits, i * WORDS);
        }
        return readings.isEmpty() ? Optional.empty() : Optional.of(new Signature(bits));
    }

    /** The signature of the picture in a mirror. */
    public Signature mirrored(Mirror mirror) {
        if (mirror == Mirror.NONE) {
            return this;
        }
        long[] turned = new long[bits.length];
        for (int from = 0; from < bits.length; from += WORDS) {
            mirror(bits, from, turned, from, mirror);
        }
        return new Signature(turned);
    }

    /** Writes one reading as it is in a mirror: four rows of 16 fields stand in a word, or eight rows of 8. */
    static void mirror(long[] bits, int from, long[] turned, int to, Mirror mirror) {
        int plane = COVER_WORDS / STEPS;
        for (int i = 0; i < COVER_WORDS; i++) {
            int source = mirror.turnsOver() ? i / plane * plane + plane - 1 - i % plane : i;
            turned[to + i] = fourRows(bits[from + source], mirror);
        }
        for (int i = COVER_WORDS; i < BORDER_WORDS; i++) {
            turned[to + i] = eightRows(bits[from + i], mirror);
        }
        turned[to + BORDER_WORDS] = bits[from + BORDER_WORDS];
    }

    private static long fourRows(long word, Mirror mirror) {
        long rows = mirror.turnsAcross() ? Long.reverse(word) : word;
        boolean isOver = mirror.turnsAcross() != mirror.turnsOver();
        return isOver ? rows >>> 48 | rows >>> 16 & 0xFFFF0000L | (rows & 0xFFFF0000L) << 16 | rows << 48 : rows;
    }

    private static long eightRows(long word, Mirror mirror) {
        long rows = mirror.turnsAcross() ? Long.reverse(word) : word;
        return mirror.turnsAcross() != mirror.turnsOver() ? Long.reverseBytes(rows) : rows;
    }

    /** How like the pictures are as they stand, from 0 to 1; of several readings those that are likest. */
    public double likeness(Signature other) {
        double best = 0;
        for (int a = 0; a < bits.length; a += WORDS) {
            for (int b = 0; b < other.bits.length; b += WORDS) {
                best = Math.max(best, likeness(bits, a, other.bits, b));
            }
        }
        return best;
    }

    /** How like two readings are; half of it goes by what is covered, half by where borders lie. */
    static double likeness(long[] one, int a, long[] other, int b) {
        double cover = shared(one, a, other, b, 0, COVER_WORDS);
        double border = shared(one, a, other, b, COVER_WORDS, BORDER_WORDS);
        return (cover + border) / 2 * most(one[a + BORDER_WORDS], other[b + BORDER_WORDS]);
    }

    /** How like two readings of these proportions can be at most. */
    static double most(long one, long other) {
        int apart = Long.bitCount((one ^ other) & ~PART);
        return (1 - apart / (double) Long.SIZE) * ((one | other) < 0 ? PART_WORTH : 1);
    }

    static double shared(long[] one, int a, long[] other, int b, int from, int to) {
        int both = 0;
        int either = 0;
        for (int i = from; i < to; i++) {
            both += Long.bitCount(one[a + i] & other[b + i]);
            either += Long.bitCount(one[a + i] | other[b + i]);
        }
        return either == 0 ? 1 : both / (double) either;
    }

    /** How many bits are set in some words of a reading. */
    static int count(long[] bits, int reading, int from, int to) {
        int count = 0;
        for (int i = reading + from; i < reading + to; i++) {
            count += Long.bitCount(bits[i]);
        }
        return count;
    }

    /** The words of all readings, one reading after the other. */
    long[] bits() {
        return bits.clone();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Signature s && Arrays.equals(bits, s.bits);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bits);
    }
}
