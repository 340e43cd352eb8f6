package platekeep.model.find;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.plate.Age;

/**
 * What is looked for; everything that is not asked for is left open.
 *
 * @param words each must be in the plate somewhere, as a word or a part of one
 * @param themes all of them must be the plate's
 * @param ages one of them must be the plate's
 * @param series the plate must be in one of these, by title
 */
public record Query(String words, Set<String> themes, Set<Age> ages, Set<String> series) {

    /** Every plate. */
    public static final Query ALL = new Query("", Set.of(), Set.of(), Set.of());

    public Query {
        themes = Set.copyOf(themes);
        ages = Set.copyOf(ages);
        series = Set.copyOf(series);
    }

    /** Whether every plate is an answer. */
    public boolean isOpen() {
        return words.isBlank() && themes.isEmpty() && ages.isEmpty() && series.isEmpty();
    }

    public Query withWords(String newWords) {
        return new Query(newWords, themes, ages, series);
    }

    /** The same with a theme asked for, or no longer so. */
    public Query turnTheme(String theme) {
        return new Query(words, turned(themes, theme), ages, series);
    }

    /** The same with an age asked for, or no longer so. */
    public Query turnAge(Age age) {
        Set<Age> turned = ages.isEmpty() ? EnumSet.noneOf(Age.class) : EnumSet.copyOf(ages);
        if (!turned.remove(age)) {
            turned.add(age);
        }
        return new Query(words, themes, turned, series);
    }

    /** The same with a series asked for, or no longer so. */
    public Query turnSeries(String title) {
        return new Query(words, themes, ages, turned(series, title));
    }

    private static Set<String> turned(Set<String> set, String value) {
        Set<String> turned = new TreeSet<>(set);
        if (!turned.remove(value)) {
            turned.add(value);
        }
        return turned;
    }
}
