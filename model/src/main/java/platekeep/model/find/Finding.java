package platekeep.model.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import platekeep.model.find.typed.AgeTyped;
import platekeep.model.find.typed.TimeTyped;
import platekeep.model.find.words.Likeness;
import platekeep.model.find.words.Stems;
import platekeep.model.find.words.Terms;
import platekeep.model.find.words.Words;

/**
 * One query under way.
 *
 * <p>A plate is the better an answer to a word the better the place where it has it; at one place, the nearer the word
 * is to the one typed. For several words these are added up.
 */
final class Finding {
    private static final int OUT = -1;
    private static final int KINDS = Likeness.values().length;
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final Index index;
    private final Query query;
    private final Map<String, List<String>> meant = new LinkedHashMap<>();
    private final Map<String, List<String>> ages = new LinkedHashMap<>();
    private final List<Found.When> times = new ArrayList<>();
    private final Map<Group, Bits> chosen = new EnumMap<>(Group.class);
    private int[] scores;
    private final Bits answering;

    Finding(Index index, Query query) {
        this.index = index;
        this.query = query;
        Set<String> words = asked(query.words());
        this.scores = words.isEmpty() ? new int[0] : scores(words);
        this.answering = answering();
        AgeTyped.among(query.words()).forEach(this::keepAge);
        TimeTyped.among(AgeTyped.without(query.words())).forEach(this::keepTime);
        query.choices().forEach((group, choice) -> chosen.put(group, plates(group, choice)));
    }

    /**
     * The words that count: all that were typed but for ages, times and the commonest, which count where nothing else was
     * typed.
     */
    static Set<String> asked(String typed) {
        return telling(TimeTyped.without(AgeTyped.without(typed)));
    }

    private static Set<String> telling(String typed) {
        List<String> words = Words.of(typed);
        Set<String> telling = new LinkedHashSet<>(words);
        if (telling.size() > 1) {
            telling.removeIf(Stems::isCommon);
        }
        return telling.isEmpty() ? new LinkedHashSet<>(words) : telling;
    }

    /** For each plate how well it answers all the words; {@link #OUT} where it does not. */
    private int[] scores(Set<String> words) {
        Terms terms = index.terms();
        int[] scores = new int[index.summaries().size()];
        byte[] one = new byte[scores.length];
        for (String word : words) {
            Arrays.fill(one, (byte) 0);
            List<String> slips = terms.find(word, (text, place, how) -> one[text] = better(one[text], place, how));
            if (!slips.isEmpty()) {
                meant.put(word, slips);
            }
            add(scores, one);
        }
        return scores;
    }

    private static byte better(byte before, int place, Likeness how) {
        return (byte) Math.max(before, place * KINDS + KINDS - how.ordinal());
    }

    /** Adds what plates are worth for one more word. */
    private static void add(int[] scores, byte[] one) {
        for (int i = 0; i < scores.length; i++) {
            scores[i] = one[i] == 0 || scores[i] == OUT ? OUT : scores[i] + one[i];
        }
    }

    private Bits answering() {
        Bits bits = index.live().copy();
        for (int i = 0; i < scores.length; i++) {
            if (scores[i] == OUT) {
                bits.remove(i);
            }
        }
        return bits;
    }

    private void keepAge(AgeTyped.Phrase age) {
        Bits fitting = new Bits(0);
        age.ages().forEach(word -> fitting.addAll(index.facets().plates(Group.AGE, word)));
        keep(fitting, age.text());
        ages.put(age.text(), age.ages());
    }

    private void keepTime(TimeTyped.Phrase time) {
        Bits fitting = index.facets().made(time.period());
        if (NUMBER.matcher(time.text()).matches()) {
            String asSize = time.text() + "-" + time.text();
            fitting.addAll(index.facets().plates(Group.PLEATS, asSize));
            fitting.addAll(index.facets().plates(Group.ROWS, asSize));
        }
        boolean isSaid = keep(fitting, time.text());
        times.add(new Found.When(time.text(), time.period(), isSaid));
    }

    /**
     * Keeps the plates that fit what was typed among the words, and those that have these very words; they come first.
     *
     * @return whether there are any of the latter
     */
    private boolean keep(Bits fitting, String typed) {
        int[] said = new int[index.summaries().size()];
        for (String word : telling(typed)) {
            byte[] one = new byte[said.length];
            index.terms().findKnown(word, (text, place, how) -> one[text] = better(one[text], place, how));
            add(said, one);
        }
        boolean isSaid = false;
        scores = scores.length == 0 ? new int[said.length] : scores;
        for (int i = 0; i < said.length; i++) {
            if (said[i] > 0 && answering.has(i)) {
                fitting.add(i);
                scores[i] += said[i];
                isSaid = true;
            }
        }
        answering.keep(fitting);
        return isSaid;
    }

    private Bits plates(Group group, Choice choice) {
        Bits plates = new Bits(0);
        boolean isFirst = true;
        for (String value : choice.values()) {
            Bits one = index.facets().plates(group, value);
            if (isFirst || choice.match() == Choice.Match.ANY) {
                plates.addAll(one);
            } else {
                plates.keep(one);
            }
            isFirst = false;
        }
        return plates;
    }

    Found found(Order order) {
        Bits all = answering.copy();
        chosen.values().forEach(all::keep);
        return new Found(inOrder(all, order), counts(all), meant, ages, times);
    }

    private int[] inOrder(Bits plates, Order order) {
        int[] at = new int[plates.count()];
        int n = 0;
        for (int place : index.inOrder(order)) {
            if (plates.has(place)) {
                at[n++] = place;
            }
        }
        return scores.length > 0 && order.by() == Order.By.BEST ? bestFirst(at, order.way()) : at;
    }

    /** Sorts by counting, which keeps the order among equals. */
    private int[] bestFirst(int[] at, Order.Way way) {
        int most = Arrays.stream(scores).max().orElse(0);
        int[] next = new int[most + 2];
        for (int place : at) {
            next[rank(place, most, way) + 1]++;
        }
        for (int i = 1; i < next.length; i++) {
            next[i] += next[i - 1];
        }
        int[] sorted = new int[at.length];
        for (int place : at) {
            sorted[next[rank(place, most, way)]++] = place;
        }
        return sorted;
    }

    private int rank(int place, int most, Order.Way way) {
        return way == Order.Way.UP ? most - scores[place] : scores[place];
    }

    private Map<Group, List<Found.Count>> counts(Bits all) {
        Map<Group, List<Found.Count>> counts = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            counts.put(group, counts(group, ignoringItself(group, all)));
        }
        return counts;
    }

    /** What the other groups and the words leave; where all that is chosen in a group must be there, that holds too. */
    private Bits ignoringItself(Group group, Bits all) {
        boolean isOpen = query.choice(group)
                .map(choice -> choice.match() == Choice.Match.ALL)
                .orElse(true);
        if (isOpen) {
            return all;
        }
        Bits others = answering.copy();
        chosen.forEach((other, plates) -> {
            if (other != group) {
                others.keep(plates);
            }
        });
        return others;
    }

    private List<Found.Count> counts(Group group, Bits among) {
        Set<String> asked = new LinkedHashSet<>(query.chosen(group));
        List<Found.Count> counts = new ArrayList<>();
        for (Facets.Value value : index.facets().values(group)) {
            counts.add(new Found.Count(
                    value.text(), value.plates().countBoth(among), value.count(), asked.remove(value.text())));
        }
        for (String value : asked) {
            Bits plates = index.facets().plates(group, value);
            counts.add(new Found.Count(value, plates.countBoth(among), plates.countBoth(index.live()), true));
        }
        return counts;
    }
}
