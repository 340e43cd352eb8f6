package platekeep.sample;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One version in the story: who changed what, when and why.
 *
 * @param on when, with the zone of the one who made it
 * @param enteredBy who entered it
 * @param inNameOf whose change it is; mostly the same
 * @param side in whose library alone it stands
 * @param reason why, one line
 * @param put what is put there, by its place in the library: the resource that holds its text
 * @param away what is put away, by place
 * @param names names given to this version of a plate, by the plate's id
 */
public record Happening(
        ZonedDateTime on,
        Who enteredBy,
        Who inNameOf,
        Side side,
        String reason,
        Map<String, String> put,
        List<String> away,
        Map<String, String> names) {

    public Happening {
        put = Map.copyOf(put);
        away = List.copyOf(away);
        names = Map.copyOf(names);
    }

    /** In whose library a version stands before the two exchange theirs. */
    public enum Side {
        /** In both: exchanged long ago. */
        BOTH,
        /** Made in the workshop's library, not sent yet. */
        YOURS,
        /** Made and sent by the partner, not brought in yet. */
        PARTNER
    }

    /** The two designers. */
    public enum Who {
        WENNA("Wenna Tarrow", "wenna@workshop.example"),
        ISOLDE("Isolde Marsh", "isolde@workshop.example");

        private final String fullName;
        private final String address;

        Who(String fullName, String address) {
            this.fullName = fullName;
            this.address = address;
        }

        public String fullName() {
            return fullName;
        }

        public String address() {
            return address;
        }

        static Optional<Who> of(String word) {
            return List.of(values()).stream()
                    .filter(who -> who.name().equalsIgnoreCase(word))
                    .findFirst();
        }
    }
}
