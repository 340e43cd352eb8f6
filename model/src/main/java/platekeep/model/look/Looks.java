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

    private static final Mirror[] MIRRORS = Mirror.values();

    private final long[] words;
    private final int[] owners;
    private final int[] covers;
    private final int[] middles;
    private final int[] order;
    private final List<Signature> signatures;

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
        this.words = new long[readings * Signature.WORDS];
        this.owners = new int[readings];
        this.covers = new int[readings];
        this.middles = new int[readings];
        this.signatures = new ArrayList<>();
        int reading = 0;
        for (int i = 0; i < all.size(); i++) {
            long[] bits = all.get(i).map(Signature::bits).orElse(new long[0]);
            System.arraycopy(bits, 0, words, reading * Signature.WORDS, bits.length);
            for (int of = 0; of < bits.length; of += Signature.WORDS) {
                covers[reading] = Signature.count(bits, of, 0, Signature.COVER_WORDS);
                middles[reading] = Signature.count(bits, of, PLANE, 2 * PLANE);
                owners[reading++] = i;
                signatures.add(all.get(i).get());
            }
        }
        this.order = IntStream.range(0, readings)
                .boxed()
                .sorted(Comparator.comparingInt(r -> covers[r]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Those that look like a picture most, also mirrored, the likest first; of equals the earlier. */
    public List<Near> nearest(Signature asked, int most) {
        double[] likeness = new double[signatures.isEmpty() ? 0 : owners[owners.length - 1] + 1];
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
        return owners[order[reading]];
    }

    /**
     * Those after one reading that are at least so like it; asked for each reading in turn, this gives each pair of
     * plates, some more than once. Only those are compared whose proportions and size on the grid let them be so like.
     */
    public List<Near> after(int reading, double least) {
        List<Near> out = new ArrayList<>();
        int here = order[reading];
        long[][] turned = turned(here);
        int own = covers[here];
        long proportions = words[here * Signature.WORDS + Signature.BORDER_WORDS];
        // (1 + own / cover) / 2 is the most that they can be alike
        double largest = own / Math.max(1e-9, 2 * least - 1);
        for (int next = reading + 1; next < order.length && covers[order[next]] <= largest; next++) {
            int r = order[next];
            double most = Signature.most(proportions, words[r * Signature.WORDS + Signature.BORDER_WORDS]);
            double cover = own / (double) Math.max(1, covers[r]);
            if (most * (1 + cover) / 2 < least || owners[r] == owners[here]) {
                continue;
            }
            for (Mirror mirror : MIRRORS) {
                double like = likeness(turned[mirror.ordinal()], own, r, least / most);
                if (like * most >= least) {
                    out.add(new Near(owners[r], like * most, mirror));
                    break;
                }
            }
        }
        return out;
    }

    private long[][] turned(int reading) {
        int first = reading;
        while (first > 0 && owners[first - 1] == owners[reading]) {
            first--;
        }
        int from = (reading - first) * Signature.WORDS;
        long[][] turned = new long[Mirror.values().length][];
        for (Mirror mirror : Mirror.values()) {
            long[] bits = signatures.get(reading).mirrored(mirror).bits();
            turned[mirror.ordinal()] = Arrays.copyOfRange(bits, from, from + Signature.WORDS);
        }
        return turned;
    }

    /** As {@link Signature#likeness} without the proportions; where what is covered rules a likeness out, 0. */
    private double likeness(long[] turned, int own, int r, double least) {
        int from = r * Signature.WORDS;
        int both = 0;
        for (int i = PLANE; i < 2 * PLANE; i++) {
            both += Long.bitCount(turned[i] & words[from + i]);
        }
        // what the two other planes share is at most what either has there
        int mostBoth = both + Math.min(own - Signature.count(turned, 0, PLANE, 2 * PLANE), covers[r] - middles[r]);
        if ((mostBoth / (double) (own + covers[r] - mostBoth) + 1) / 2 < least) {
            return 0;
        }
        for (int i = 0; i < PLANE; i++) {
            both += Long.bitCount(turned[i] & words[from + i])
                    + Long.bitCount(turned[2 * PLANE + i] & words[from + 2 * PLANE + i]);
        }
        int either = own + covers[r] - both;
        double cover = either == 0 ? 1 : both / (double) either;
        return (cover + 1) / 2 < least
                ? 0
                : (cover + Signature.shared(turned, 0, words, from, Signature.COVER_WORDS, Signature.BORDER_WORDS)) / 2;
    }
}
