package platekeep.model.join;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Figures;
import platekeep.model.stitch.Kinds;

/**
 * Up and down in the joined plate, kept where neither side alone turned them: a figure that only the two edits together
 * parted from its start, or that followed a first start that is another one now, gets a start of its own.
 */
final class KindsKept {
    private final Plate joined;
    private final Plate base;
    private final Side[] sides;
    private final Origin origin;
    private final Kinds[] sideKinds = new Kinds[2];

    /** Where a cable of the joined plate lies in the earlier plate ({@code s} -1) or on a side, if it is there. */
    @FunctionalInterface
    interface Origin {
        /** @param row top row 0 */
        Optional<Cable> of(int s, int row, int position);
    }

    /** A place of a cable: a row, top row 0, and a position. */
    record Cable(int row, int position) {}

    KindsKept(Plate joined, Plate base, Side[] sides, Origin origin) {
        this.joined = joined;
        this.base = base;
        this.sides = sides;
        this.origin = origin;
    }

    /** The starts that have to be added so that no cable is turned that neither side alone turned. */
    List<Start> missing() {
        Kinds now = Kinds.of(joined);
        Kinds before = Kinds.of(base);
        Figures figures = now.figures();
        BitSet seen = new BitSet();
        List<Start> out = new ArrayList<>();
        for (int f = 0; f < figures.count(); f++) {
            seen.set(f, now.startOf(f).isPresent());
        }
        for (int row = joined.rows().size() - 1; row >= 0 && seen.cardinality() < figures.count(); row--) {
            for (int p = joined.from(); p < joined.from() + joined.positions(); p++) {
                int figure = figures.at(row, p);
                if (figure == Figures.NONE || seen.get(figure)) {
                    continue;
                }
                Optional<CableKind> was = origin.of(-1, row, p).flatMap(c -> before.at(c.row(), c.position()));
                if (was.isPresent()) {
                    seen.set(figure);
                    Optional<RowId> id = joined.rows().get(row).id();
                    if (!now.at(row, p).equals(was) && !turnedAlone(row, p, was.get()) && id.isPresent()) {
                        out.add(new Start(id.get(), p, was.get()));
                    }
                }
            }
        }
        return out;
    }

    /** Whether a side by itself left the cable turned, in a figure without a start of its own: that is not for a join to mend. */
    private boolean turnedAlone(int row, int position, CableKind kind) {
        return turnedBy(0, row, position, kind) || turnedBy(1, row, position, kind);
    }

    private boolean turnedBy(int s, int row, int position, CableKind kind) {
        Optional<Cable> there = origin.of(s, row, position);
        if (there.isEmpty()) {
            return false;
        }
        sideKinds[s] = sideKinds[s] == null ? Kinds.of(sides[s].plate()) : sideKinds[s];
        Kinds kinds = sideKinds[s];
        int figure = kinds.figures().at(there.get().row(), there.get().position());
        return figure != Figures.NONE
                && kinds.startOf(figure).isEmpty()
                && !kinds.at(there.get().row(), there.get().position()).equals(Optional.of(kind));
    }
}
