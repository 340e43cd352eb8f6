package platekeep.client.paper;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/**
 * What many chosen plates have of themes and ages.
 *
 * @param count how many plates are chosen; 0 where fewer than two are
 * @param themes how many of them have each theme, in order of the alphabet
 * @param ages how many of them have each age
 */
public record Shared(int count, SortedMap<String, Integer> themes, Map<Age, Integer> ages) {

    /** Not many are chosen. */
    static final Shared NONE = new Shared(0, Collections.emptySortedMap(), Map.of());

    public Shared {
        themes = Collections.unmodifiableSortedMap(new TreeMap<>(themes));
        ages = Map.copyOf(ages);
    }

    static Shared of(List<Plate> plates) {
        SortedMap<String, Integer> themes = new TreeMap<>();
        Map<Age, Integer> ages = new TreeMap<>();
        for (Plate plate : plates) {
            plate.themes().stream().distinct().forEach(theme -> themes.merge(theme, 1, Integer::sum));
            plate.ages().stream().distinct().forEach(age -> ages.merge(age, 1, Integer::sum));
        }
        return new Shared(plates.size(), themes, ages);
    }
}
