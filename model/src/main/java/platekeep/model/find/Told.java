package platekeep.model.find;

import java.util.List;
import java.util.TreeSet;

/**
 * What the versions of a plate tell.
 *
 * @param years in which they were made, sorted, no doubles
 * @param words their reasons and the names given to them
 */
public record Told(List<Integer> years, List<String> words) {

    /** Nothing is known of its versions. */
    public static final Told NOTHING = new Told(List.of(), List.of());

    public Told {
        years = List.copyOf(new TreeSet<>(years));
        words = List.copyOf(words);
    }
}
