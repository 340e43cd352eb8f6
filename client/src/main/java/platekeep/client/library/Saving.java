package platekeep.client.library;

import java.util.List;
import java.util.Optional;

/**
 * What to save as one version.
 *
 * @param changes what changes, at least one
 * @param reason why, not blank
 * @param inNameOf whose change it is; empty: the library's own hand
 * @param seen the version that the changes were made from; if the library has moved on since and one of the same plates
 *     was changed there, saving is refused with a sentence and nothing is lost
 */
public record Saving(List<Change> changes, String reason, Optional<Hand> inNameOf, Optional<String> seen) {
    public Saving {
        changes = List.copyOf(changes);
    }
}
