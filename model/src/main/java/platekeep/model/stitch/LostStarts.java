package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Starts that an edit took the cable from: each moves to the nearest cable that remains of its figure, with the kind that
 * was there; where nothing of the figure remains, it goes too.
 */
final class LostStarts {

    private final Plate before;
    private final Plate edited;
    private final Kinds kinds;
    private final Map<RowId, Integer> was;
    private final Map<RowId, Integer> is;
    private final Set<Place> standing = new HashSet<>();

    private record Place(RowId row, int pleat) {
        static Place of(Start start) {
            return new Place(start.row(), start.pleat());
        }
    }

    LostStarts(Plate before, Kinds kinds, Plate edited) {
        this.before = before;
        this.edited = edited;
        this.kinds = kinds;
        this.was = Kinds.indexOf(before.rows());
        this.is = Kinds.indexOf(edited.rows());
    }

    /** The starts of the edited plate that have lost their cable. */
    List<Start> lost() {
        return edited.starts().stream().filter(start -> !stays(start)).toList();
    }

    /**
     * The starts of the edited plate, those without their cable moved or gone; in no order.
     *
     * @param left starts that stay although their cable is gone
     */
    List<Start> moved(Set<Start> left) {
        List<Start> starts = new ArrayList<>();
        for (Start start : edited.starts()) {
            if (left.contains(start) || stays(start)) {
                starts.add(start);
                standing.add(Place.of(start));
            }
        }
        for (Start start : edited.starts()) {
            if (!left.contains(start) && !stays(start)) {
                nearest(start).filter(near -> standing.add(Place.of(near))).ifPresent(starts::add);
            }
        }
        return starts;
    }

    /** A start stays on a cable, and where it had none before either, as long as its row is there or never was. */
    private boolean stays(Start start) {
        Integer now = is.get(start.row());
        if (now != null && edited.cellAt(now, start.pleat()) != Row.EMPTY) {
            return true;
        }
        Integer then = was.get(start.row());
        boolean hadCable = then != null && before.cellAt(then, start.pleat()) != Row.EMPTY;
        return !hadCable && (now != null || then == null);
    }

    /** Same row, then the rows above, then those below, the nearest first; in a row the least distance, left first. */
    private Optional<Start> nearest(Start start) {
        int row = was.get(start.row());
        Optional<Figure> figure = kinds.figures().figureAt(row, start.pleat());
        if (figure.isEmpty()) {
            return Optional.empty();
        }
        for (int r = row; r >= figure.get().top(); r--) {
            Optional<Start> near = nearestIn(r, start, figure.get());
            if (near.isPresent()) {
                return near;
            }
        }
        for (int r = row + 1; r <= figure.get().bottom(); r++) {
            Optional<Start> near = nearestIn(r, start, figure.get());
            if (near.isPresent()) {
                return near;
            }
        }
        return Optional.empty();
    }

    private Optional<Start> nearestIn(int row, Start start, Figure figure) {
        Optional<RowId> id = before.rows().get(row).id().filter(i -> was.get(i) == row && is.containsKey(i));
        if (id.isEmpty()) {
            return Optional.empty();
        }
        int reach = Math.max(start.pleat() - figure.from(), figure.to() - start.pleat());
        for (int away = 0; away <= reach; away++) {
            for (int p = start.pleat() - away; p <= start.pleat() + away; p += Math.max(1, 2 * away)) {
                if (kinds.figures().at(row, p) == figure.number() && edited.cellAt(is.get(id.get()), p) != Row.EMPTY) {
                    return Optional.of(start.at(id.get(), p, kinds.at(row, p).orElseThrow()));
                }
            }
        }
        return Optional.empty();
    }
}
