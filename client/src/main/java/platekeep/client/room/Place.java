package platekeep.client.room;

import java.util.List;
import java.util.Optional;
import platekeep.client.library.Library;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;

/** Somewhere to go: a screen and what it is to show. */
public sealed interface Place {

    /** All plates of the open libraries. */
    record Gallery() implements Place {}

    /** One plate as it is now, with its draft where there is one. */
    record OnePlate(Library library, String plateId) implements Place {}

    /**
     * Places in a plate, as where a motif was found.
     *
     * @param seen the plate as they were found in it; it may have changed since
     * @param parts at least one, each the spots of its cables
     */
    record InPlate(Library library, String plateId, Plate seen, List<List<Spot>> parts) implements Place {
        public InPlate {
            parts = parts.stream().map(List::copyOf).toList();
        }
    }

    /** Two versions, or two plates, side by side. */
    record Compare(Side before, Side after) implements Place {}

    /**
     * What waits for a decision: a plate's open clashes, or with no plate named what came from the partner and was not
     * brought in yet.
     */
    record Join(Library library, Optional<String> plateId) implements Place {}

    /** The library's shared copy. */
    record Partner(Library library) implements Place {}

    /**
     * Plates whose facts are filled in one after the other, with their pictures beside; none: those that are only a scan
     * yet.
     */
    record Paper(List<OnePlate> plates) implements Place {
        public Paper {
            plates = List.copyOf(plates);
        }
    }

    /** A series with its plates in order. */
    record OneSeries(Library library, String seriesId) implements Place {}

    /** A plate's place in the series that it is in. */
    record InSeries(Library library, String plateId) implements Place {}

    /** What looks alike, what contains a motif, what was once there. */
    record Search(Sought sought) implements Place {}

    /**
     * One side of a comparison.
     *
     * @param versionId the version; empty: as it is now
     * @param words what to call it, such as {@code 3 March 2026, by Isolde Marsh}
     */
    record Side(Library library, String plateId, Optional<String> versionId, String words) {}
}
