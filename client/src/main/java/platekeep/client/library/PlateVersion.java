package platekeep.client.library;

import java.util.List;
import java.util.Optional;

/**
 * One step in the history of a plate.
 *
 * @param version the version of the library
 * @param entry the plate there; empty where this version put it away
 * @param names the names that were given to it ("Spring class")
 */
public record PlateVersion(Version version, Optional<Entry> entry, List<String> names) {
    public PlateVersion {
        names = List.copyOf(names);
    }
}
