package platekeep.model.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import platekeep.model.plate.Age;

/** Goes through summaries and picks those that answer a query, with the counts that help to narrow it down. */
public final class Finder {

    private Finder() {}

    /** Linear in the summaries and their texts. */
    public static Found find(List<Summary> all, Query query) {
        List<String> words = Words.asked(query.words());
        List<Integer> at = new ArrayList<>();
        Map<String, Integer> themes = new TreeMap<>();
        Map<Age, Integer> ages = new EnumMap<>(Age.class);
        Map<String, Integer> series = new TreeMap<>();
        for (int i = 0; i < all.size(); i++) {
            Summary summary = all.get(i);
            if (!hasWords(summary, words) || !summary.themes().containsAll(query.themes())) {
                continue;
            }
            boolean age = query.ages().isEmpty() || !Collections.disjoint(summary.ages(), query.ages());
            boolean inSeries = query.series().isEmpty() || !Collections.disjoint(summary.series(), query.series());
            if (inSeries) {
                summary.ages().forEach(a -> ages.merge(a, 1, Integer::sum));
            }
            if (age) {
                summary.series().forEach(s -> series.merge(s, 1, Integer::sum));
            }
            if (age && inSeries) {
                at.add(i);
                summary.themes().forEach(t -> themes.merge(t, 1, Integer::sum));
            }
        }
        return new Found(at, new TreeMap<>(themes), ages, new TreeMap<>(series));
    }

    private static boolean hasWords(Summary summary, List<String> words) {
        for (String word : words) {
            if (!summary.text().contains(word)) {
                return false;
            }
        }
        return true;
    }
}
