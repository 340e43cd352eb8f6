package platekeep.model.find;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.find.words.Words;

/** The words that a plate is found by, each with the best place where it stands. */
final class SummaryWords {
    private static final int TITLE = 3;
    private static final int THEME = 2;
    private static final int SERIES = 1;
    private static final int REST = 0;

    private final Map<String, Integer> best = new HashMap<>();

    private SummaryWords() {}

    /** Each word with its best place, greater is better: title and number, themes, series, all the rest. */
    static Map<String, Integer> of(Summary summary) {
        SummaryWords words = new SummaryWords();
        words.put(TITLE, summary.title());
        summary.number().ifPresent(number -> {
            words.put(TITLE, number);
            words.put(TITLE, Words.joined(number));
        });
        words.put(THEME, summary.themes());
        words.put(THEME, summary.also());
        words.put(SERIES, summary.series());
        words.put(REST, summary.designers());
        words.put(REST, summary.uses());
        summary.ages().forEach(age -> words.put(REST, age.word()));
        summary.state().ifPresent(state -> words.put(REST, state.word()));
        summary.origin().kind().ifPresent(kind -> words.put(REST, kind));
        summary.origin().by().ifPresent(by -> words.put(REST, by));
        summary.origin().place().ifPresent(place -> words.put(REST, place));
        words.put(REST, summary.texts());
        words.put(REST, summary.told().words());
        return words.best;
    }

    private void put(int place, List<String> texts) {
        texts.forEach(text -> put(place, text));
    }

    private void put(int place, String text) {
        Words.of(text).forEach(word -> best.merge(word, place, Math::max));
    }
}
