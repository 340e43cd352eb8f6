package platekeep.model.draw;

import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;

/**
 * What a cable would be in an empty place: up and down run on from a plate's first start as on a checkerboard.
 *
 * @param row the start's row, top row 0
 * @param position its position
 * @param kind what the cable there is
 */
record Checkerboard(int row, int position, CableKind kind) {

    static Checkerboard of(Plate plate) {
        Optional<Start> start =
                plate.starts().stream().filter(s -> plate.indexOf(s.row()) >= 0).findFirst();
        return new Checkerboard(
                start.map(s -> plate.indexOf(s.row())).orElse(plate.rows().size() - 1),
                start.map(Start::pleat).orElse(plate.from()),
                start.map(Start::cable).orElse(CableKind.DOWN));
    }

    /** Whether a cable there would be up. */
    boolean at(int otherRow, int otherPosition) {
        return kind.turned(row - otherRow + otherPosition - position) == CableKind.UP;
    }
}
