package platekeep.model.join;

import platekeep.model.compare.Grid;
import platekeep.model.compare.Motion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Tells where the picture as a whole would carry off a newly drawn cable: one side moved the picture, and by that move the
 * cable that the other side drew would come to lie outside all three charts.
 */
final class Apart {
    private final Grid base;
    private final Side[] sides;
    private final int first;
    private final int end;

    Apart(Plate before, Grid base, Side[] sides) {
        this.base = base;
        this.sides = sides;
        int from = before.from();
        int to = from + before.positions();
        for (Side side : sides) {
            from = Math.min(from, side.plate().from());
            to = Math.max(to, side.plate().from() + side.plate().positions());
        }
        first = from - base.frame().from();
        end = to - base.frame().from();
    }

    /** Whether a side drew anything new for which the other one's move leaves no room. */
    boolean any() {
        for (Side side : sides) {
            for (int r = 0; !motion(side).isNone() && r < side.grid().height(); r++) {
                int before = side.edit().pairing().before(r);
                for (int k = 0; k < base.frame().width(); k++) {
                    boolean drawn =
                            side.grid().at(r, k) != Row.EMPTY && (before < 0 || base.at(before, k) == Row.EMPTY);
                    if (drawn && stays(side, r, k)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Whether the other side's move would bring what this side has at a row and index out of the chart. */
    boolean stays(Side side, int row, int k) {
        Motion motion = motion(side);
        int to = motion.position(k);
        return !motion.isNone() && (to < first || to >= end);
    }

    /** The move of the picture that a side did not make itself. */
    private Motion motion(Side side) {
        return side.picture().isNone() ? sides[1 - side.index()].picture() : Motion.NONE;
    }
}
