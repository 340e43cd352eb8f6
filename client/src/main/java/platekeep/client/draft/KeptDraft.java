package platekeep.client.draft;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * A plate as it was drawn, not saved as a version yet.
 *
 * @param library the folder of its library
 * @param plate as drawn
 * @param seen the version of the library that it was drawn from; empty for a plate that is in no version yet
 * @param on when it was last kept
 */
public record KeptDraft(Path library, Plate plate, Optional<String> seen, Instant on) {

    /** The same draft drawn otherwise. */
    public KeptDraft with(Plate drawn) {
        return new KeptDraft(library, drawn, seen, on);
    }
}
