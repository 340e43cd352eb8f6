package platekeep.client.carry;

import java.util.List;
import java.util.Optional;

/** The questions before plates are carried. */
public interface CarryView {

    /** Asks into which library; empty when she gave it up. */
    Optional<Integer> askTarget(Way way, String from, List<Target> targets);

    /** Offers to compare a plate with what is in the other library under its id. */
    Answer askCompare(String sentence);

    /**
     * A library to carry to.
     *
     * @param name as it is shown
     * @param words what would happen there, a sentence each
     * @param does what saying yes would do
     */
    record Target(String name, List<String> words, Does does) {
        public Target {
            words = List.copyOf(words);
        }
    }

    /** What saying yes would do. */
    enum Does {
        CARRY,
        /** Nothing can be carried, but something is there already and different. */
        COMPARE,
        NOTHING
    }

    /** Whether to compare. */
    enum Answer {
        COMPARE,
        LEAVE
    }
}
