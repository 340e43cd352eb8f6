package platekeep.model.join;

import java.util.List;
import platekeep.model.compare.Place;

/**
 * A change that was taken over without a question.
 *
 * @param words the change in plain words
 * @param by whose change it is
 * @param places where it is; the later side is the side's own plate
 */
public record Settled(String words, By by, List<Place> places) {

    /** Who made the change. */
    public enum By {
        MINE,
        THEIRS,
        BOTH
    }

    public Settled {
        places = List.copyOf(places);
    }
}
