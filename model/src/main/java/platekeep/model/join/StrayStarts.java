package platekeep.model.join;

import java.util.Optional;
import platekeep.model.compare.Grid;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Figure;
import platekeep.model.stitch.Figures;
import platekeep.model.stitch.Kinds;

/**
 * Starts whose cable only the two edits together took away: one side put the start there or kept it, the other erased the
 * cable or took the row out. Such a start moves to the nearest cable that remains of its figure, with the kind that is
 * there; where nothing of the figure remains, it goes too.
 */
final class StrayStarts {
    private final Side[] sides;
    private final Placing placing;
    private final CellJoin cells;
    private final Kinds[] kinds = new Kinds[2];

    StrayStarts(Side[] sides, Placing placing, CellJoin cells) {
        this.sides = sides;
        this.placing = placing;
        this.cells = cells;
    }

    /** Whether a start stands on a cable of a side's own plate. */
    boolean standsOn(int s, Start start) {
        Plate plate = sides[s].plate();
        int row = plate.indexOf(start.row());
        return row >= 0 && sides[s].grid().at(row, index(start.pleat())) != '.';
    }

    /** Whether a cable of the joined plate lies at a source. */
    boolean hasCable(Placing.Spot spot) {
        Optional<Integer> row = placing.resultRow(spot);
        int k = index(placing.position(spot));
        return row.isPresent() && k >= 0 && k < grid(0).frame().width() && cells.picture()[row.get()][k] != '.';
    }

    private Grid grid(int s) {
        return sides[s].grid();
    }

    private int index(int position) {
        return grid(0).frame().index(position);
    }

    /**
     * Where the start stands in the joined plate: same row, then the rows above, then those below; least distance in pleats,
     * left first. Empty where its figure is gone.
     *
     * @param s the side that the start is from
     * @param start as that side has it
     */
    Optional<Start> moved(int s, Start start) {
        kinds[s] = kinds[s] == null ? Kinds.of(sides[s].plate()) : kinds[s];
        int row = sides[s].plate().indexOf(start.row());
        Figure figure = kinds[s].figures().figureAt(row, start.pleat()).orElseThrow();
        for (int r = row; r >= figure.top(); r--) {
            Optional<Start> near = nearest(s, start, figure, r);
            if (near.isPresent()) {
                return near;
            }
        }
        for (int r = row + 1; r <= figure.bottom(); r++) {
            Optional<Start> near = nearest(s, start, figure, r);
            if (near.isPresent()) {
                return near;
            }
        }
        return Optional.empty();
    }

    private Optional<Start> nearest(int s, Start start, Figure figure, int row) {
        Optional<RowId> id = sides[s].plate().rows().get(row).id();
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Figures figures = kinds[s].figures();
        int reach = Math.max(start.pleat() - figure.from(), figure.to() - start.pleat());
        for (int away = 0; away <= reach; away++) {
            for (int p = start.pleat() - away; p <= start.pleat() + away; p += Math.max(1, 2 * away)) {
                Placing.Spot spot = placing.position(s, id.get(), p);
                if (figures.at(row, p) == figure.number() && hasCable(spot)) {
                    CableKind kind = kinds[s].at(row, p).orElseThrow();
                    return Optional.of(start.at(
                            placing.row(spot), placing.position(spot), placing.turned(spot, s) ? kind.turned() : kind));
                }
            }
        }
        return Optional.empty();
    }
}
