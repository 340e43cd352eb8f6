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
        int missing = cell.length;
        int width = plate.positions();
        for (int r = plate.rows().size() - 1; r >= 0 && missing > 0; r--) {
            for (int i = 0; i < width; i++) {
                int position = plate.from() + i;
                int figure = kinds.figures().at(r, position);
                if (figure == Figures.NONE || cell[figure] != NONE) {
                    continue;
                }
                Optional<CableKind> had = old.at(r, position);
                if (had.isPresent()) {
                    cell[figure] = r * width + i;
                    phase[figure] = (byte) kinds.phase(r, position, had.get());
                    missing--;
                }
            }
        }
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
