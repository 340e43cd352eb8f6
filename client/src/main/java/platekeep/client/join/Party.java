package platekeep.client.join;

import java.util.Optional;
import platekeep.client.library.Version;
import platekeep.client.ui.Dates;

/**
 * One of the two whose edits come together.
 *
 * @param name the hand of the version that changed the plate last on that side; empty when it is not known
 * @param when the day of that version; an empty text when it is not known
 */
record Party(Optional<String> name, String when) {
    static final Party UNKNOWN = new Party(Optional.empty(), "");

    /** Whether the two go by different names. */
    boolean tellsApart(Party other) {
        return name.isPresent() && other.name.isPresent() && !name.equals(other.name);
    }

    static Party of(Optional<Version> version) {
        return new Party(
                version.map(v -> v.inNameOf().name()),
                version.map(v -> Dates.shortDay(v.on())).orElse(""));
    }
}
