package platekeep.client.compare.chart;

import platekeep.model.compare.Side;

/**
 * One line of two charts that are lined up: a row of each side, or a row of one side and a gap.
 *
 * @param before the row of the earlier plate on this line, top row 0; {@link #NONE} for a gap
 * @param after the row of the later plate; {@link #NONE} for a gap
 * @param fate what happened to the row
 * @param edited whether cables of it changed
 * @param mate for a moved row the line of its other place, else {@link #NONE}
 */
public record Line(int before, int after, Fate fate, Edited edited, int mate) {
    /** No row, no line. */
    public static final int NONE = -1;

    /** What happened to the row of a line. */
    public enum Fate {
        STAYED,
        ADDED,
        REMOVED,
        /** The row stood here and was moved to its mate's line. */
        LEFT,
        /** The row was moved here from its mate's line. */
        CAME,
        /** Two rows that merely have the same number; they are not the same row. */
        BESIDE
    }

    /** Whether cables of a row changed. */
    public enum Edited {
        NO,
        YES
    }

    /** The row of a side; {@link #NONE} for a gap. */
    public int row(Side side) {
        return side == Side.BEFORE ? before : after;
    }

    /** Whether something happened that is marked beside the line. */
    public boolean isMarked() {
        return fate != Fate.STAYED && fate != Fate.BESIDE || edited == Edited.YES;
    }
}
