package platekeep.model.find.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * Which texts hold which word, and how well: a dictionary of all words in order, each with its hits. Unchangeable;
 * {@link #with} gives a changed one that shares what stayed.
 *
 * <p>A word that was typed takes in the very word, other forms of it and what begins so; only where the dictionary has
 * nothing of these, and four letters were typed, it takes in what one slip may have meant: first whole words, then
 * beginnings. So a slip never adds to what a word that is known finds.
 */
public final class Terms {
    /** Words of fewer letters are taken as they are. */
    public static final int SHORTEST_SLIP = 4;

    /** A word's best place in a text is kept with it, 0 for the least. */
    public static final int PLACES = 4;

    private static final int PLACE_BITS = 2;

    private final Stems stems;
    private final NavigableMap<String, Term> words;
    private final Map<String, List<String>> byStem;

    /**
     * A word of the dictionary.
     *
     * @param hits text and place in one number each, in order of the texts
     */
    private record Term(String word, String stem, long letters, long stemLetters, int[] hits) {
        Term with(int[] newHits) {
            return new Term(word, stem, letters, stemLetters, newHits);
        }
    }

    private Terms(Stems stems, NavigableMap<String, Term> words, Map<String, List<String>> byStem) {
        this.stems = stems;
        this.words = words;
        this.byStem = byStem;
    }

    /**
     * The dictionary of some texts.
     *
     * @param texts the words of each text with their best place, by the text's number, in order of these
     */
    public static Terms of(Map<Integer, Map<String, Integer>> texts) {
        return new Terms(new Stems(), Collections.emptyNavigableMap(), Map.of()).with(texts, Map.of());
    }

    /**
     * The same with some texts put in and some taken out.
     *
     * @param come words with their places by the number of the text
     * @param gone likewise as they stood before; a text that changed is in both
     */
    public Terms with(Map<Integer, Map<String, Integer>> come, Map<Integer, Map<String, Integer>> gone) {
        Map<String, List<Integer>> fresh = byWord(come);
        NavigableMap<String, Term> newWords = new TreeMap<>(words);
        Map<String, List<String>> newStems = new HashMap<>(byStem);
        Set<String> touched = new HashSet<>(fresh.keySet());
        gone.values().forEach(text -> touched.addAll(text.keySet()));
        BitSet out = new BitSet();
        gone.keySet().forEach(out::set);
        for (String word : touched) {
            Term before = words.get(word);
            int[] hits = merged(before == null ? new int[0] : before.hits(), out, fresh.get(word));
            if (hits.length == 0) {
                newWords.remove(word);
            } else if (before == null) {
                String stem = stems.of(word);
                Term term = new Term(word, stem, letters(word), letters(stem), hits);
                newWords.put(word, term);
                newStems.merge(term.stem(), List.of(word), Terms::both);
            } else {
                newWords.put(word, before.with(hits));
            }
        }
        return new Terms(stems, newWords, newStems);
    }

    private static Map<String, List<Integer>> byWord(Map<Integer, Map<String, Integer>> texts) {
        Map<String, List<Integer>> byWord = new HashMap<>();
        texts.forEach((number, text) -> text.forEach((word, place) ->
                byWord.computeIfAbsent(word, w -> new ArrayList<>(4)).add(number << PLACE_BITS | place)));
        return byWord;
    }

    private static List<String> both(List<String> some, List<String> more) {
        List<String> both = new ArrayList<>(some);
        more.stream().filter(word -> !both.contains(word)).forEach(both::add);
        return both;
    }

    private static int[] merged(int[] before, BitSet gone, List<Integer> fresh) {
        int[] hits = new int[before.length + (fresh == null ? 0 : fresh.size())];
        int n = 0;
        for (int hit : before) {
            if (!gone.get(hit >> PLACE_BITS)) {
                hits[n++] = hit;
            }
        }
        if (fresh != null) {
            for (int hit : fresh) {
                hits[n++] = hit;
            }
        }
        return Arrays.copyOf(hits, n);
    }

    /** How many words there are. */
    public int size() {
        return words.size();
    }

    /** Hears the texts that answer a word. */
    @FunctionalInterface
    public interface Hits {
        /** A text holds the word; the same text may be told again for another form of it. */
        void hit(int text, int place, Likeness how);
    }

    /**
     * Tells all texts that answer a word.
     *
     * @param typed a plain word
     * @return the words that were taken in for it where it may be a slip; empty where it is none
     */
    public List<String> find(String typed, Hits hits) {
        return findKnown(typed, hits) || typed.length() < SHORTEST_SLIP ? List.of() : slips(typed, hits);
    }

    /**
     * Tells all texts that answer a word as it was typed, whatever a slip may have meant.
     *
     * @return whether there are any
     */
    public boolean findKnown(String typed, Hits hits) {
        boolean[] any = {false};
        BiConsumer<Term, Likeness> tell = (term, how) -> {
            any[0] = true;
            tell(term, how, hits);
        };
        Term same = words.get(typed);
        if (same != null) {
            tell.accept(same, Likeness.EXACT);
        }
        for (String form : byStem.getOrDefault(stems.of(typed), List.of())) {
            Term term = words.get(form);
            if (term != null && !form.equals(typed)) {
                tell.accept(term, Likeness.STEM);
            }
        }
        for (Term term : words.tailMap(typed, false).values()) {
            if (!term.word().startsWith(typed)) {
                break;
            }
            tell.accept(term, Likeness.BEGINNING);
        }
        return any[0];
    }

    private List<String> slips(String typed, Hits hits) {
        List<Term> meant = new ArrayList<>();
        String stem = stems.of(typed);
        long letters = letters(typed);
        long stemLetters = letters(stem);
        for (Term term : words.values()) {
            if (differ(letters, term.letters()) <= 2 && Slips.atMostOne(typed, term.word())
                    || stem.length() >= SHORTEST_SLIP
                            && differ(stemLetters, term.stemLetters()) <= 2
                            && Slips.atMostOne(stem, term.stem())) {
                meant.add(term);
            }
        }
        if (meant.isEmpty()) {
            for (Term term : words.values()) {
                if (Slips.atMostOneInBeginning(typed, term.word())) {
                    meant.add(term);
                }
            }
        }
        meant.forEach(term -> tell(term, Likeness.SLIP, hits));
        return meant.stream().map(Term::word).toList();
    }

    private static void tell(Term term, Likeness how, Hits hits) {
        for (int hit : term.hits()) {
            hits.hit(hit >> PLACE_BITS, hit & (PLACES - 1), how);
        }
    }

    /** Which letters a word has, one bit each; two words one slip apart differ in at most two of them. */
    private static long letters(String word) {
        long letters = 0;
        for (int i = 0; i < word.length(); i++) {
            letters |= 1L << (word.charAt(i) & 63);
        }
        return letters;
    }

    private static int differ(long letters, long others) {
        return Long.bitCount(letters ^ others);
    }
}
