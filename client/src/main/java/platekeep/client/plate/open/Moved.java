package platekeep.client.plate.open;

import java.util.List;
import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.RowIds;

/**
 * What a library has of a plate after it moved on.
 *
 * @param plate as of the newest version, every row with its id; empty when it was put away
 * @param history its versions, newest first
 * @param newest the library's newest version
 */
public record Moved(Optional<Plate> plate, List<PlateVersion> history, Optional<String> newest) {

    /** Reads it; in the background. */
    public static Moved read(Library library, String plateId) throws LibraryException {
        return new Moved(
                library.plate(plateId).flatMap(Entry::plate).map(RowIds::given),
                library.history(plateId),
                library.newest().map(Version::id));
    }
}
