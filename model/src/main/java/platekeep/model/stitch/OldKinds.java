package platekeep.model.stitch;

import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** What the cables of an edited plate were before the edit. */
@FunctionalInterface
public interface OldKinds {

    /**
     * The kind that the cable here had; empty for a cable that is new, and for one whose kind need not be kept.
     *
     * @param row a row of the <em>edited</em> plate, top row 0
     * @param position a position at which the edited plate has a cable
     */
    Optional<CableKind> at(int row, int position);

    /**
     * The kinds of another plate, rows matched by id and cables by position.
     *
     * @param before the plate that the kinds are taken from
     * @param edited the plate that is asked about
     */
    static OldKinds of(Plate before, Plate edited) {
        return of(Kinds.of(before), before, edited);
    }

    /** As {@link #of(Plate, Plate)} where the kinds are known already. */
    static OldKinds of(Kinds kinds, Plate before, Plate edited) {
        int[] was = rows(before, edited);
        return (row, position) -> was[row] < 0 ? Optional.empty() : kinds.at(was[row], position);
    }

    /** For each row of the edited plate the row it was before; -1 for one that was not there. */
    static int[] rows(Plate before, Plate edited) {
        Map<RowId, Integer> index = Kinds.indexOf(before.rows());
        return edited.rows().stream()
                .map(Row::id)
                .mapToInt(id -> id.map(i -> index.getOrDefault(i, -1)).orElse(-1))
                .toArray();
    }
}
