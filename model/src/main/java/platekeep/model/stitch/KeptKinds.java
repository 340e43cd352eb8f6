package platekeep.model.stitch;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Kinds are kept: after an edit every cable has the kind that it had, turned once for each row put in or taken out
 * between it and a start in its own figure. So an edit far away never turns a stitch.
 *
 * <p>Rows are matched by id (see {@link RowIds#given}) and cables by position, so ask after each single edit rather than
 * once for many: of a picture moved, only a start that went along tells (see {@link MovedAlong}). Where new cables join
 * two figures that disagree, one of them must turn; the start that counts settles which, and the check reports it.
 */
public final class KeptKinds {

    private KeptKinds() {}

    /**
     * The edited plate with its starts moved, dropped, turned and added as far as the rule asks for it; the same plate
     * where nothing needs it.
     *
     * <p>A start whose cable is erased or whose row goes moves to the nearest remaining cable of its figure (same row,
     * then the rows above, then those below; least distance in pleats, left first) with the kind that is there; one whose
     * figure is gone goes. A figure for which the rule would not hold, because it was parted from its start or follows a
     * first start that turned, gets a start at the leftmost old cable of its lowest row that has one. A start that the
     * edit itself put in, moved or turned is taken as meant. A tool that moves or mirrors a figure puts
     * {@link #withOwnStart its own start} on it first and takes that along.
     *
     * @param before the plate before the edit, all rows with ids
     * @param edited the plate after it
     */
    public static Plate after(Plate before, Plate edited) {
        return after(before, Kinds.of(before), edited);
    }

    /**
     * As {@link #after(Plate, Plate)}, at less cost.
     *
     * @param was the kinds of the plate before the edit
     */
    public static Plate after(Plate before, Kinds was, Plate edited) {
        Plate moved = withStarts(edited, new LostStarts(before, was, edited).moved(Set.of()));
        OldKinds old = MovedAlong.of(before, was, edited);
        return withStarts(moved, new NeededStarts(moved, Kinds.of(moved, was), old).mended(meantOrObeyed(before, was)));
    }

    /**
     * The plate with the starts added that its old cables need to keep their kinds, as few as will do; a figure that has a
     * start on it holds by that. The same plate where none is needed.
     *
     * @param old the kinds to keep; cables for which it is empty may turn
     */
    public static Plate holding(Plate plate, OldKinds old) {
        return holding(plate, Kinds.of(plate), old);
    }

    /**
     * As {@link #holding(Plate, OldKinds)}, at less cost.
     *
     * @param kinds of the same plate
     */
    public static Plate holding(Plate plate, Kinds kinds, OldKinds old) {
        return withStarts(plate, new NeededStarts(plate, kinds, old).mended(start -> true));
    }

    /**
     * The figures, by their numbers, that have no start on them and whose leftmost old cable of the lowest row is not what
     * it was.
     *
     * @param old the kinds to keep
     */
    public static BitSet unheld(Plate plate, OldKinds old) {
        return new NeededStarts(plate, old).unheld();
    }

    /**
     * The plate with a start on the figure at this place that says what its cables are now, so that it no longer follows
     * another's; the same plate where it has one or no cable lies there.
     *
     * @param row top row 0; the figure's lowest row must have an id
     */
    public static Plate withOwnStart(Plate plate, int row, int position) {
        Kinds kinds = Kinds.of(plate);
        Optional<Figure> figure = kinds.figures().figureAt(row, position);
        if (figure.isEmpty() || kinds.startOf(figure.get()).isPresent()) {
            return plate;
        }
        CableKind kind = kinds.first(figure.get());
        Start start = new Start(
                plate.rows().get(figure.get().bottom()).id().orElseThrow(),
                figure.get().first(),
                kind);
        return holding(withStarts(plate, concat(plate.starts(), start)), OldKinds.of(kinds, plate, plate));
    }

    /** Starts that the edit put in, moved or turned, and those that said before what their cable was. */
    private static Predicate<Start> meantOrObeyed(Plate before, Kinds was) {
        Map<RowId, Integer> index = Kinds.indexOf(before.rows());
        Set<Start> ignored = new HashSet<>();
        for (Start start : before.starts()) {
            Integer row = index.get(start.row());
            Optional<CableKind> kind = row == null ? Optional.empty() : was.at(row, start.pleat());
            if (!kind.equals(Optional.of(start.cable()))) {
                ignored.add(bare(start));
            }
        }
        return start -> !ignored.contains(bare(start));
    }

    private static Start bare(Start start) {
        return new Start(start.row(), start.pleat(), start.cable());
    }

    private static List<Start> concat(List<Start> starts, Start one) {
        return Stream.concat(starts.stream(), Stream.of(one)).toList();
    }

    private static Plate withStarts(Plate plate, List<Start> starts) {
        Plate with = plate.edit().starts(starts).build();
        return with.starts().equals(plate.starts()) ? plate : with;
    }
}
