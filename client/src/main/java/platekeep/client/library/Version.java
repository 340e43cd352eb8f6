package platekeep.client.library;

import java.time.ZonedDateTime;
import java.util.List;

/**
 * A version of the library, and so of each plate in it.
 *
 * @param id the version's id, forty hexadecimal digits
 * @param inNameOf whose change it is
 * @param enteredBy who entered it
 * @param on when it was made, with the zone of the one who made it
 * @param reason why, first line short
 * @param parents ids of the versions it was made from: none for the first, two for a join
 */
public record Version(String id, Hand inNameOf, Hand enteredBy, ZonedDateTime on, String reason, List<String> parents) {

    public Version {
        parents = List.copyOf(parents);
    }

    /** Whether it joins two lines of versions. */
    public boolean isJoin() {
        return parents.size() > 1;
    }
}
