package platekeep.model.join;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Figures;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.Kinds;
import platekeep.model.stitch.OldKinds;

/**
 * Up and down in the joined plate, kept where neither side alone turned them: a figure that only the two edits together
 * parted from its start, or that followed a first start that is another one now, gets a start of its own.
 */
final class KindsKept {
    private final Plate joined;
    private final Kinds before;
    private final Side[] sides;
    private final Origins origins;
    private final Optional<Unheld>[] unheld;

    /** Follows cables between the joined plate, the sides and the earlier plate; rows top first, positions as in the text. */
    interface Origins {
        /** Where a cable of the joined plate lies on a side ({@code s} 0 or 1) or in the earlier plate (-1). */
        Optional<Cable> ofJoined(int s, int row, int position);

        /** Where a cable of a side lies in the earlier plate. */
        Optional<Cable> ofSide(int s, int row, int position);
    }

    /**
     * A place of a cable.
     *
     * @param row top row 0
     * @param turned whether the picture stands upside down there as against the place it was asked for
     */
    record Cable(int row, int position, boolean turned) {
        CableKind kind(CableKind there) {
            return turned ? there.turned() : there;
        }
    }

    /** The figures of a side that by that side's edit alone lost their kinds and were left so. */
    private record Unheld(Figures figures, BitSet numbers) {}

    @SuppressWarnings({"unchecked", "rawtypes"})
    KindsKept(Plate joined, Plate base, Side[] sides, Origins origins) {
        this.joined = joined;
        this.before = Kinds.of(base);
        this.sides = sides;
        this.origins = origins;
        this.unheld = new Optional[] {Optional.empty(), Optional.empty()};
    }

    /** All starts of the joined plate, with those that it lacked; rows without ids can have none. */
    List<Start> starts() {
        if (joined.rows().stream().map(Row::id).anyMatch(Optional::isEmpty)) {
            return joined.starts();
        }
        OldKinds old = (row, position) -> was(origins.ofJoined(-1, row, position));
        if (KeptKinds.holding(joined, old) == joined) {
            return joined.starts();
        }
        OldKinds ours = (row, position) -> turnedAlone(0, row, position) || turnedAlone(1, row, position)
                ? Optional.empty()
                : old.at(row, position);
        return KeptKinds.holding(joined, ours).starts();
    }

    private Optional<CableKind> was(Optional<Cable> origin) {
        return origin.flatMap(c -> before.at(c.row(), c.position()).map(c::kind));
    }

    private boolean turnedAlone(int s, int row, int position) {
        Optional<Cable> there = origins.ofJoined(s, row, position);
        if (there.isEmpty()) {
            return false;
        }
        if (unheld[s].isEmpty()) {
            Plate plate = sides[s].plate();
            unheld[s] = Optional.of(new Unheld(
                    Figures.of(plate), KeptKinds.unheld(plate, (r, p) -> was(origins.ofSide(s, r, p)))));
        }
        int figure = unheld[s].get().figures().at(there.get().row(), there.get().position());
        return figure != Figures.NONE && unheld[s].get().numbers().get(figure);
    }
}
