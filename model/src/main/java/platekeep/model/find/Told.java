package platekeep.model.find;

import java.util.List;
import java.util.TreeSet;

/**
 * What the versions of a plate tell.
 *
 * @param years in which they were made, sorted, no doubles
 * @param sayings their names and reasons, of each kind the newest first
 */
public record Told(List<Integer> years, List<Saying> sayings) {

    /** Nothing is known of its versions. */
    public static final Told NOTHING = new Told(List.of(), List.of());

    public Told {
        years = List.copyOf(new TreeSet<>(years));
        sayings = List.copyOf(sayings);
    }

    /** What they say, as texts. */
    List<String> words() {
        return sayings.stream().map(Saying::text).toList();
    }
}
