package platekeep.client.compare;

import java.util.Optional;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Difference;

/**
 * What the comparison screen shows.
 *
 * @param before what the left side is, in words
 * @param after what the right side is, in words
 * @param chosen the change stepped to, counted from 0; -1 when there is none
 */
record CompareState(String before, String after, Comparison comparison, int chosen) {

    /** The change stepped to. */
    Optional<Difference> difference() {
        return chosen < 0
                ? Optional.empty()
                : Optional.of(comparison.differences().get(chosen));
    }

    /** How many changes there are and which one is chosen. */
    String counter() {
        int all = comparison.differences().size();
        return all == 0 ? "The two are the same." : "Change " + (chosen + 1) + " of " + all;
    }

    CompareState at(int other) {
        return new CompareState(before, after, comparison, other);
    }
}
