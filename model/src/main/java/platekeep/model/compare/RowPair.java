package platekeep.model.compare;

import java.util.List;
import java.util.Optional;

/**
 * A line of the comparison: a row as it was beside the same row as it is.
 *
 * @param before the row's index in the earlier plate, top row 0; empty for an added row
 * @param after the row's index in the later plate; empty for a removed row
 * @param kind what happened to the row
 * @param edited whether cables of it changed; widening the chart or renaming a key changes none
 * @param runs the cables that changed, from the left
 */
public record RowPair(
        Optional<Integer> before, Optional<Integer> after, Kind kind, boolean edited, List<CableRun> runs) {

    /** What happened to a row. */
    public enum Kind {
        SAME,
        EDITED,
        ADDED,
        REMOVED,
        MOVED
    }

    public RowPair {
        runs = List.copyOf(runs);
    }
}
