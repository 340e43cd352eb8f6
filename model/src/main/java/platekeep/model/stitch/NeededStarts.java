package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * The starts that an edited plate lacks for its old cables to keep their kinds.
 *
 * <p>Idea: a figure has one phase, so whether it holds shows at one cable, its anchor. A figure with a trusted start on
 * it holds by that start. All others are tried from the bottom against the first start of the plate; one that does not
 * hold gets a start at its anchor. Should that be the new first start and turn those that follow, they are tried again:
 * each round adds a start, and no figure gets two. Linear in the cells for ordinary plates.
 */
final class NeededStarts {

    private final Kinds kinds;
    private final Anchors anchors;
    private final Map<RowId, Integer> index;
    private final List<Start> starts;
    private final BitSet settled = new BitSet();

    NeededStarts(Plate plate, OldKinds old) {
        this(plate, Kinds.of(plate), old);
    }

    /**
     * @param kinds of the same plate
     */
    NeededStarts(Plate plate, Kinds kinds, OldKinds old) {
        this.kinds = kinds;
        this.anchors = new Anchors(plate, kinds, old);
        this.index = Kinds.indexOf(plate.rows());
        this.starts = new ArrayList<>(plate.starts());
    }

    /** All starts of the plate, with those that it lacked; in no order. */
    List<Start> mended(Predicate<Start> trusted) {
        settleOwn(trusted);
        Optional<Start> first =
                starts.stream().filter(s -> index.containsKey(s.row())).min(this::order);
        int followed = first.map(this::phase).orElseGet(this::phaseWithoutStarts);
        int figure = 0;
        while (figure < kinds.figures().count()) {
            if (settled.get(figure) || !anchors.has(figure) || anchors.phase(figure) == followed) {
                figure++;
                continue;
            }
            Start added = anchors.start(figure);
            starts.add(added);
            settled.set(figure++);
            if (first.isEmpty() || order(added, first.get()) < 0) {
                first = Optional.of(added);
                figure = phase(added) == followed ? figure : 0;
                followed = phase(added);
            }
        }
        return starts;
    }

    /** The figures that have no start on them and whose anchor is not what it was; by number. */
    BitSet unheld() {
        BitSet unheld = new BitSet();
        for (int f = 0; f < kinds.figures().count(); f++) {
            boolean follows = kinds.startOf(f).isEmpty();
            unheld.set(f, follows && anchors.has(f) && anchors.phase(f) != kinds.phaseOf(f));
        }
        return unheld;
    }

    Kinds kinds() {
        return kinds;
    }

    private void settleOwn(Predicate<Start> trusted) {
        for (int f = 0; f < kinds.figures().count(); f++) {
            Optional<Start> own = kinds.startOf(f);
            if (own.isPresent()) {
                settled.set(f);
                if (!trusted.test(own.get()) && anchors.has(f) && anchors.phase(f) != kinds.phaseOf(f)) {
                    overrule(f, own.get());
                }
            }
        }
    }

    /** A start that never had a say in the figure's kinds is turned with its doubles, or one that comes before it is put in. */
    private void overrule(int figure, Start own) {
        if (anchors.isReachedFrom(figure, index.get(own.row()), own.pleat())) {
            CableKind turned = own.cable().turned();
            starts.replaceAll(s -> isDouble(s, own) ? s.at(s.row(), s.pleat(), turned) : s);
        } else {
            starts.add(anchors.start(figure));
        }
    }

    private static boolean isDouble(Start start, Start own) {
        return start.row().equals(own.row()) && start.pleat() == own.pleat() && start.cable() == own.cable();
    }

    /** From the bottom, then from the left. */
    private int order(Start a, Start b) {
        int byRow = Integer.compare(index.get(b.row()), index.get(a.row()));
        return byRow != 0 ? byRow : Integer.compare(a.pleat(), b.pleat());
    }

    private int phase(Start start) {
        return kinds.phase(index.get(start.row()), start.pleat(), start.cable());
    }

    private int phaseWithoutStarts() {
        return kinds.figures().count() == 0 ? 0 : kinds.phaseOf(0);
    }
}
