package platekeep.client.compare;

import java.util.Optional;
import platekeep.client.compare.chart.Way;
import platekeep.model.compare.Difference;

/**
 * What the comparison screen shows.
 *
 * @param before the head of the left side
 * @param after the head of the right side
 * @param compared the two; empty where there is nothing to compare yet, or no way to
 * @param sentence what stands in the charts' place where there are none
 * @param chosen the change stepped to, counted from 0; -1 when there is none
 * @param way how the two are looked at
 * @param blink how they take turns
 */
record CompareState(
        SideState before,
        SideState after,
        Optional<Compared> compared,
        String sentence,
        int chosen,
        Way way,
        Blink blink) {

    /** The change stepped to. */
    Optional<Difference> difference() {
        return compared.filter(c -> chosen >= 0).map(c -> c.changes().get(chosen));
    }

    /** How many changes there are and which one is chosen. */
    String counter() {
        if (compared.isEmpty()) {
            return "";
        }
        int all = compared.get().changes().size();
        return all == 0 ? "No change" : (chosen + 1) + " of " + all;
    }

    CompareState at(int other) {
        return new CompareState(before, after, compared, sentence, other, way, blink);
    }

    CompareState in(Way other) {
        return new CompareState(before, after, compared, sentence, chosen, other, blink);
    }

    CompareState with(Blink other) {
        return new CompareState(before, after, compared, sentence, chosen, way, other);
    }
}
