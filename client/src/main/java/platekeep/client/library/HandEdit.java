package platekeep.client.library;

import java.util.Optional;

/**
 * A file that differs from the newest version without the client having changed it.
 *
 * @param path where it lies
 * @param before as the newest version has it; empty when the file is new
 * @param now as it lies in the folder; empty when the file is gone
 */
public record HandEdit(String path, Optional<Entry> before, Optional<Entry> now) {

    /** Whether the file is a plate; for a series, a picture and the like {@code before} and {@code now} are empty. */
    public boolean isPlate() {
        return before.isPresent() || now.isPresent();
    }
}
