package platekeep.client.library;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/**
 * What a version changed beside the first of those that it was made from.
 *
 * @param version which
 * @param plates those that can be read before it and after it, in order of id
 * @param others how many more came, went or cannot be read
 * @param before what the library said about itself before; empty where it said nothing yet
 * @param after what it said afterwards
 */
public record Changed(
        Version version, List<Pair> plates, int others, Optional<LibraryFacts> before, Optional<LibraryFacts> after) {

    /** A plate as it was and as it became. */
    public record Pair(Plate before, Plate after) {}

    public Changed {
        plates = List.copyOf(plates);
    }
}
