package platekeep.model.find;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.find.words.Likeness;
import platekeep.model.find.words.Terms;
import platekeep.model.find.words.Words;

/** Finds out where in a plate that was found the words stand that were typed. */
public final class Spots {
    private Spots() {}

    /**
     * Where each word that was typed stands, each spot once, in the order of the words: the place where it stands as it
     * was typed, else where another form of it does; in the plate itself rather than in what versions tell. To be asked
     * of plates that are shown, since it reads the whole plate.
     *
     * @param typed as it was typed; a plate that does not answer it gives the spots of the words that it has
     */
    public static List<Spot> of(Summary summary, String typed) {
        List<Spot> all = all(summary);
        Map<Integer, Map<String, Integer>> texts = new TreeMap<>();
        for (int i = 0; i < all.size(); i++) {
            texts.put(i, words(all.get(i)));
        }
        Terms terms = Terms.of(texts);
        Set<Spot> spots = new LinkedHashSet<>();
        for (String word : Finding.asked(typed)) {
            Best best = new Best(all);
            terms.find(word, (text, place, how) -> best.hear(text, how));
            spots.addAll(best.spot());
        }
        return List.copyOf(spots);
    }

    /** What was said of versions with words in it that the plate itself has nowhere; empty where it has them all. */
    public static List<Saying> inVersions(Summary summary, String typed) {
        Set<String> asked = Finding.asked(typed);
        boolean mayBeTold = !asked.isEmpty() && !summary.told().sayings().isEmpty();
        return mayBeTold && !hasAll(summary, asked)
                ? of(summary, typed).stream()
                        .flatMap(spot -> spot.saying().stream())
                        .toList()
                : List.of();
    }

    /** Whether the plate itself has words that begin so: the quick answer for most plates. */
    private static boolean hasAll(Summary summary, Set<String> asked) {
        Collection<String> own = SummaryWords.of(summary.withTold(Told.NOTHING)).keySet();
        return asked.stream().allMatch(word -> own.stream().anyMatch(one -> one.startsWith(word)));
    }

    private static Map<String, Integer> words(Spot spot) {
        Map<String, Integer> words = new TreeMap<>();
        Words.of(spot.text()).forEach(word -> words.put(word, 0));
        if (spot.place() == Spot.Place.NUMBER) {
            words.put(Words.joined(spot.text()), 0);
        }
        return words;
    }

    private static List<Spot> all(Summary summary) {
        List<Spot> all = new ArrayList<>();
        all.add(Spot.of(Spot.Place.TITLE, summary.title()));
        summary.number().ifPresent(number -> all.add(Spot.of(Spot.Place.NUMBER, number)));
        add(all, Spot.Place.THEME, summary.themes());
        add(all, Spot.Place.ALSO, summary.also());
        add(all, Spot.Place.SERIES, summary.series());
        add(all, Spot.Place.DESIGNER, summary.designers());
        add(all, Spot.Place.USE, summary.uses());
        summary.ages().forEach(age -> all.add(Spot.of(Spot.Place.AGE, age.word())));
        summary.state().ifPresent(state -> all.add(Spot.of(Spot.Place.STATE, state.word())));
        summary.origin().kind().ifPresent(kind -> all.add(Spot.of(Spot.Place.ORIGIN, kind)));
        summary.origin().by().ifPresent(by -> all.add(Spot.of(Spot.Place.ORIGIN, by)));
        summary.origin().place().ifPresent(place -> all.add(Spot.of(Spot.Place.ORIGIN, place)));
        add(all, Spot.Place.TEXT, summary.texts());
        summary.told().sayings().forEach(saying -> all.add(Spot.of(saying)));
        return all;
    }

    private static void add(List<Spot> all, Spot.Place place, List<String> texts) {
        texts.forEach(text -> all.add(Spot.of(place, text)));
    }

    /** The best spot of one word so far. */
    private static final class Best {
        private final List<Spot> all;
        private int at = -1;
        private Likeness likeness = Likeness.SLIP;

        Best(List<Spot> all) {
            this.all = all;
        }

        void hear(int text, Likeness how) {
            if (at < 0 || rank(text, how) < rank(at, likeness)) {
                at = text;
                likeness = how;
            }
        }

        private int rank(int text, Likeness how) {
            int told = all.get(text).saying().isPresent() ? 1 : 0;
            return (told * Likeness.values().length + how.ordinal()) * all.size() + text;
        }

        List<Spot> spot() {
            return at < 0 ? List.of() : List.of(all.get(at));
        }
    }
}
