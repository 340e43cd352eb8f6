package platekeep.model.find;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Age;

/**
 * The answer to a query.
 *
 * @param at where the plates found stand in the list that was gone through, in its order
 * @param themes each theme of the plates found with how many of them have it
 * @param ages each age with how many plates there would be if it alone were asked for among the ages
 * @param series likewise for series
 */
public record Found(
        List<Integer> at,
        SortedMap<String, Integer> themes,
        Map<Age, Integer> ages,
        SortedMap<String, Integer> series) {
    public Found {
        at = List.copyOf(at);
        themes = Collections.unmodifiableSortedMap(new TreeMap<>(themes));
        Map<Age, Integer> byAge = new EnumMap<>(Age.class);
        byAge.putAll(ages);
        ages = Collections.unmodifiableMap(byAge);
        series = Collections.unmodifiableSortedMap(new TreeMap<>(series));
    }
}
