package platekeep.model.find;

import java.time.LocalDate;

/**
 * Something that was said of a version.
 *
 * @param kind what it is
 * @param text as it was written
 * @param on the day of the version
 */
public record Saying(Kind kind, String text, LocalDate on) {

    /** What was said. */
    public enum Kind {
        /** Why the version was made. */
        REASON,
        /** A name that was given to it. */
        NAME,
        /** In whose name it was made. */
        HAND
    }
}
