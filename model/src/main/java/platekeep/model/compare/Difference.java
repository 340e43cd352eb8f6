package platekeep.model.compare;

import java.util.List;

/**
 * One change in words, with the places that it is about; a change of a fact has none.
 *
 * @param words one statement without a full stop
 * @param places where, to step through
 */
public record Difference(String words, List<Place> places) {
    public Difference {
        places = List.copyOf(places);
    }

    Difference(String words) {
        this(words, List.of());
    }
}
