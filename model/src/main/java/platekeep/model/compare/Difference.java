package platekeep.model.compare;

import java.util.List;

/**
 * One change in words, with the places that it is about; a change of what lies nowhere on the chart has none.
 *
 * @param words one statement without a full stop
 * @param about what kind of change it is
 * @param places where, to step through; rows of the plate that each place names
 */
public record Difference(String words, About about, List<Place> places) {

    /** What a change is about, in the order in which changes are told. */
    public enum About {
        /** The picture, or a figure of it, was moved or mirrored. */
        MOTION,
        /** The chart covers more or fewer pleats. */
        WIDTH,
        ROWS_ADDED,
        ROWS_REMOVED,
        ROWS_MOVED,
        /** Cables were put in, taken out or worked in another colour. */
        CABLES,
        COLOURS,
        /** Title, themes, notes, cloth and whatever else is said about the plate. */
        FACTS,
        STARTS,
        LINES,
        MARKS,
        NOTIONS,
        REMARKS,
        CLASHES
    }

    public Difference {
        places = List.copyOf(places);
    }
}
