package platekeep.model.find;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;

/**
 * What the versions of a plate tell.
 *
 * @param days on which they were made, sorted, no doubles
 * @param sayings their names and reasons, of each kind the newest first
 */
public record Told(List<LocalDate> days, List<Saying> sayings) {

    /** Nothing is known of its versions. */
    public static final Told NOTHING = new Told(List.of(), List.of());

    public Told {
        days = List.copyOf(new TreeSet<>(days));
        sayings = List.copyOf(sayings);
    }

    /** In which they were made, sorted, no doubles. */
    public List<Integer> years() {
        return days.stream().map(LocalDate::getYear).distinct().toList();
    }

    /** What they say, as texts. */
    List<String> words() {
        return sayings.stream().map(Saying::text).toList();
    }
}
