package platekeep.model.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;

/**
 * Starts and marks that left their places between two plates: whoever moves or mirrors a figure takes them along, so they
 * tell of a move where the cables alone leave doubt.
 */
final class Witnesses {
    private final RowPairing pairing;
    private final List<Thing> left = new ArrayList<>();
    private final Set<Thing> came = new HashSet<>();

    /**
     * A start or mark.
     *
     * @param row the row's index in its own plate
     * @param place pleat or position, counted from the frame's
     */
    private record Thing(String name, int row, double place, boolean isStart) {}

    Witnesses(Plate before, Plate after, RowPairing pairing, Grid.Frame frame) {
        this.pairing = pairing;
        came.addAll(things(after, frame));
        Set<Thing> stayed = new HashSet<>();
        for (Thing thing : things(before, frame)) {
            int row = thing.row() < 0 ? -1 : pairing.after(thing.row());
            if (row >= 0 && came.contains(at(thing, row))) {
                stayed.add(at(thing, row));
            } else if (row >= 0) {
                left.add(thing);
            }
        }
        came.removeAll(stayed);
    }

    private static Thing at(Thing thing, int row) {
        return new Thing(thing.name(), row, thing.place(), thing.isStart());
    }

    private static List<Thing> things(Plate plate, Grid.Frame frame) {
        List<Thing> things = new ArrayList<>();
        for (Start start : plate.starts()) {
            things.add(new Thing(start.cable().word(), plate.indexOf(start.row()), frame.index(start.pleat()), true));
        }
        for (Mark mark : plate.marks()) {
            things.add(new Thing(mark.stitch(), plate.indexOf(mark.row()), mark.place() - frame.from(), false));
        }
        return things;
    }

    /** Whether anything left its place and anything came. */
    boolean any() {
        return !left.isEmpty() && !came.isEmpty();
    }

    /**
     * Whether something that lay on these cables went this way, and all that left them did.
     *
     * @param on row of the earlier plate and index of a cable, to whether it is one of those that moved
     */
    boolean tellOf(Motion motion, BiPredicate<Integer, Integer> on) {
        int went = 0;
        for (Thing thing : left) {
            int k = (int) Math.floor(thing.place());
            if (on.test(thing.row(), k) || !thing.isStart() && on.test(thing.row(), k - 1)) {
                if (!came.contains(moved(thing, motion))) {
                    return false;
                }
                went++;
            }
        }
        return went > 0;
    }

    private Thing moved(Thing thing, Motion motion) {
        int row = motion.row(pairing.after(thing.row()));
        if (!thing.isStart()) {
            return new Thing(thing.name(), row, motion.pleat(thing.place()), false);
        }
        boolean down = thing.name().equals(CableKind.DOWN.word()) == motion.rowSign() > 0;
        return new Thing(
                (down ? CableKind.DOWN : CableKind.UP).word(), row, motion.position((int) thing.place()), true);
    }
}
