package platekeep.model.stitch;

import java.util.Arrays;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;

/**
 * For each figure of an edited plate the cable by which its kinds are kept, the leftmost old cable of its lowest row
 * that has one, and the phase that the figure needs for it.
 */
final class Anchors {

    private static final int NONE = -1;

    private final Plate plate;
    private final Kinds kinds;
    private final int[] cell;
    private final byte[] phase;

    Anchors(Plate plate, Kinds kinds, OldKinds old) {
        this.plate = plate;
        this.kinds = kinds;
        this.cell = new int[kinds.figures().count()];
        this.phase = new byte[cell.length];
        Arrays.fill(cell, NONE);
        find(old);
    }

    private void find(OldKinds old) {
        Labels labels = kinds.figures().labels();
        int missing = cell.length;
        for (int r = plate.rows().size() - 1; r >= 0 && missing > 0; r--) {
            for (int n = 0; n < labels.runs(r).count(); n++) {
                int figure = labels.ofRun(r, n);
                if (cell[figure] == NONE && find(old, figure, r, labels.runs(r), n)) {
                    missing--;
                }
            }
        }
    }

    /** Takes the leftmost old cable of a run; whether there is one. */
    private boolean find(OldKinds old, int figure, int row, Runs runs, int run) {
        for (int i = runs.from(run); i < runs.end(run); i++) {
            int position = plate.from() + i;
            Optional<CableKind> had = old.at(row, position);
            if (had.isPresent()) {
                cell[figure] = row * plate.positions() + i;
                phase[figure] = (byte) kinds.phase(row, position, had.get());
                return true;
            }
        }
        return false;
    }

    /** Whether the figure has an old cable. */
    boolean has(int figure) {
        return cell[figure] != NONE;
    }

    /** The phase with which the anchor has the kind that it had. */
    int phase(int figure) {
        return phase[figure];
    }

    /** A start at the anchor with the kind that it had. */
    Start start(int figure) {
        int row = cell[figure] / plate.positions();
        int position = plate.from() + cell[figure] % plate.positions();
        return new Start(plate.rows().get(row).id().orElseThrow(), position, kinds.kind(row, position, phase[figure]));
    }

    /** Whether a place (row from the top, position) is the anchor or comes before it, from the bottom and the left. */
    boolean isReachedFrom(int figure, int row, int position) {
        int anchorRow = cell[figure] / plate.positions();
        int anchor = plate.from() + cell[figure] % plate.positions();
        return row > anchorRow || row == anchorRow && position <= anchor;
    }
}
