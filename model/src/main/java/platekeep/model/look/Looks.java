package platekeep.model.look;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * The signatures of many plates side by side, to find those that look like one, or like each other. Comparing takes a
 * tenth of a microsecond for each plate, reading of its ground and mirroring; nothing is left out to be quicker.
 */
public final class Looks {
    /** Words of one step of what is covered. */
    private static final int PLANE = Signature.COVER_WORDS / Signature.STEPS;

    /** Planes of what is covered, then planes of borders; a mirror leaves each with as many bits. */
    private static final int COVER_PLANES = Signature.STEPS;

    private static final int PLANES = COVER_PLANES + Signature.BORDER_WORDS - Signature.COVER_WORDS;

    private static final Mirror[] MIRRORS = Mirror.values();

    private final long[] words;
    private final int plates;
    private final int[] owners;
    private final int[] covers;
    private final int[] middles;
    private final int[] counts;
    private final long[] proportions;

    /** The readings by how wide they are for their height, each in order. */
    private final int[][] byWide = new int[Long.SIZE][];

    /**
     * One that looks like another.
     *
     * @param at where it stands in the list that was given
     * @param likeness from 0 to 1
     * @param mirror how it has to be mirrored to look so
     */
    public record Near(int at, double likeness, Mirror mirror) {}

    /**
     * @param all a signature for each plate, none for one without a chart; answers count in this order
     */
    public Looks(List<Optional<Signature>> all) {
        int readings = 0;
        for (Optional<Signature> one : all) {
            readings += one.map(s -> s.bits().length / Signature.WORDS).orElse(0);
        }
        this.plates = all.size();
        this.words = new long[readings * Signature.WORDS];
        this.owners = new int[readings];
        this.covers = new int[readings];
        this.middles = new int[readings];
        this.counts = new int[readings * PLANES];
        this.proportions = new long[readings];
        long[] given = new long[readings * Signature.WORDS];
        int[] givenOwners = new int[readings];
        int reading = 0;
        for (int i = 0; i < all.size(); i++) {
            long[] bits = all.get(i).map(Signature::bits).orElse(new long[0]);
            System.arraycopy(bits, 0, given, reading * Signature.WORDS, bits.length);
            for (int of = 0; of < bits.length; of += Signature.WORDS) {
                givenOwners[reading++] = i;
            }
        }
        lay(given, givenOwners);
        for (int w = 0; w < byWide.length; w++) {
            int here = w;
            byWide[w] = IntStream.range(0, owners.length)
                    .filter(r -> wide(proportions[r]) == here)
                    .toArray();
        }
    }

    /** Lays the readings side by side in the order in which they are compared: by how much they cover. */
    private void lay(long[] given, int[] givenOwners) {
        int[] order = IntStream.range(0, owners.length)
                .boxed()
                .sorted(Comparator.comparingInt(
                        r -> Signature.count(given, r * Signature.WORDS, 0, Signature.COVER_WORDS)))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int r = 0; r < order.length; r++) {
            int at = r * Signature.WORDS;
            System.arraycopy(given, order[r] * Signature.WORDS, words, at, Signature.WORDS);
            owners[r] = givenOwners[order[r]];
            covers[r] = Signature.count(words, at, 0, Signature.COVER_WORDS);
            middles[r] = Signature.count(words, at, PLANE, 2 * PLANE);
            proportions[r] = words[at + Signature.BORDER_WORDS];
            for (int plane = 0; plane < PLANES; plane++) {
                counts[r * PLANES + plane] = plane < COVER_PLANES
                        ? Signature.count(words, at, plane * PLANE, (plane + 1) * PLANE)
                        : Signature.count(
                                words,
                                at,
                                Signature.COVER_WORDS + plane - COVER_PLANES,
                                Signature.COVER_WORDS + plane - COVER_PLANES + 1);
            }
        }
    }

    /** The most that two readings can share in some planes, however one is mirrored, by how many bits each has there. */
    private double mostShared(int one, int other, int from, int to) {
        int both = 0;
        int either = 0;
        for (int plane = from; plane < to; plane++) {
            int a = counts[one * PLANES + plane];
            int b = counts[other * PLANES + plane];
            both += Math.min(a, b);
            either += Math.max(a, b);
        }
        return either == 0 ? 1 : both / (double) either;
    }

    /** Those that look like a picture most, also mirrored, the likest first; of equals the earlier. */
    public List<Near> nearest(Signature asked, int most) {
        double[] likeness = new double[plates];
        Mirror[] mirrors = new Mirror[likeness.length];
        for (Mirror mirror : Mirror.values()) {
            long[] turned = asked.mirrored(mirror).bits();
            for (int from = 0; from < turned.length; from += Signature.WORDS) {
                for (int r = 0; r < owners.length; r++) {
                    double like = Signature.likeness(turned, from, words, r * Signature.WORDS);
                    if (like > likeness[owners[r]]) {
                        likeness[owners[r]] = like;
                        mirrors[owners[r]] = mirror;
                    }
                }
            }
        }
        return best(likeness, mirrors, most);
    }

    private static List<Near> best(double[] likeness, Mirror[] mirrors, int most) {
        Comparator<Near> order =
                Comparator.comparingDouble(Near::likeness).reversed().thenComparingInt(Near::at);
        PriorityQueue<Near> kept = new PriorityQueue<>(order.reversed());
        for (int i = 0; i < likeness.length; i++) {
            if (likeness[i] > 0
                    && (kept.size() < most || likeness[i] > kept.peek().likeness())) {
                kept.add(new Near(i, likeness[i], mirrors[i]));
                if (kept.size() > most) {
                    kept.remove();
                }
            }
        }
        List<Near> out = new ArrayList<>(kept);
        out.sort(order);
        return out;
    }

    /** How many readings there are to go through for all pairs. */
    public int readings() {
        return owners.length;
    }

    /** Which of the plates a reading belongs to; readings are numbered by how much they cover, the least first. */
    public int owner(int reading) {
        return owners[reading];
    }

    /**
     * Those after one reading that are at least so like it; asked for each reading in turn, this gives each pair of
     * plates, some more than once. Only those are compared whose proportions and size on the grid let them be so like.
     */
    public List<Near> after(int reading, double least) {
        List<Near> out = new ArrayList<>();
        long[][] turned = turned(reading);
        int own = covers[reading];
        for (int r : candidates(reading, least)) {
            double most = Signature.most(proportions[reading], proportions[r]);
            double border = mostShared(reading, r, COVER_PLANES, PLANES);
            for (Mirror mirror : MIRRORS) {
                double like = likeness(turned[mirror.ordinal()], own, r, border, least / most);
                if (like * most >= least) {
                    out.add(new Near(owners[r], like * most, mirror));
                    break;
                }
            }
        }
        return out;
    }

    /** Those after a reading, in order, that may be so like it by proportions and by how many bits each has where. */
    private int[] candidates(int reading, double least) {
        int own = covers[reading];
        // (1 + own / cover) / 2 is the most that they can be alike
        double largest = own / Math.max(1e-9, 2 * least - 1);
        // of two readings whose proportions are further apart, none is looked at: nearly all pairs end here
        int farthest = (int) (Long.SIZE * (1 - least) + 1e-9);
        int wide = wide(proportions[reading]);
        int[] found = new int[16];
        int count = 0;
        for (int w = Math.max(0, wide - farthest); w <= Math.min(Long.SIZE - 1, wide + farthest); w++) {
            int[] alike = byWide[w];
            int at = Arrays.binarySearch(alike, reading + 1);
            for (int i = at < 0 ? -at - 1 : at; i < alike.length && covers[alike[i]] <= largest; i++) {
                if (maybe(reading, alike[i], least)) {
                    found = count < found.length ? found : Arrays.copyOf(found, 2 * count);
                    found[count++] = alike[i];
                }
            }
        }
        int[] inOrder = Arrays.copyOf(found, count);
        Arrays.sort(inOrder);
        return inOrder;
    }

    private boolean maybe(int reading, int r, double least) {
        double most = Signature.most(proportions[reading], proportions[r]);
        double cover = covers[reading] / (double) Math.max(1, covers[r]);
        return most * (1 + cover) / 2 >= least
                && owners[r] != owners[reading]
                && (mostShared(reading, r, 0, COVER_PLANES) + mostShared(reading, r, COVER_PLANES, PLANES)) / 2 * most
                        >= least;
    }

    /** How many bits of the proportions are set; two readings' differ by as many as lie between these. */
    private static int wide(long proportions) {
        return Long.bitCount(proportions & ~Signature.PART);
    }

    private long[][] turned(int reading) {
        long[][] turned = new long[MIRRORS.length][Signature.WORDS];
        for (Mirror mirror : MIRRORS) {
            Signature.mirror(words, reading * Signature.WORDS, turned[mirror.ordinal()], 0, mirror);
        }
        return turned;
    }

    /** As {@link Signature#likeness} without the proportions; where what is covered rules a likeness out, 0. */
    private double likeness(long[] turned, int own, int r, double border, double least) {
        int from = r * Signature.WORDS;
        int both = 0;
        for (int i = PLANE; i < 2 * PLANE; i++) {
            both += Long.bitCount(turned[i] & words[from + i]);
        }
        // what the two other planes share is at most what either has there
        int mostBoth = both + Math.min(own - Signature.count(turned, 0, PLANE, 2 * PLANE), covers[r] - middles[r]);
        if ((mostBoth / (double) (own + covers[r] - mostBoth) + border) / 2 < least) {
            return 0;
        }
        for (int i = 0; i < PLANE; i++) {
            both += Long.bitCount(turned[i] & words[from + i])
                    + Long.bitCount(turned[2 * PLANE + i] & words[from + 2 * PLANE + i]);
        }
        int either = own + covers[r] - both;
        double cover = either == 0 ? 1 : both / (double) either;
        return (cover + border) / 2 < least
                ? 0
                : (cover + Signature.shared(turned, 0, words, from, Signature.COVER_WORDS, Signature.BORDER_WORDS)) / 2;
    }
}
