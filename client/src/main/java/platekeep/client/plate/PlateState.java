package platekeep.client.plate;

import java.util.List;
import java.util.Optional;
import platekeep.client.plate.edit.Tool;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Finding;

/**
 * What the Plate screen shows.
 *
 * @param drawing the plate that is shown; empty when none is open
 * @param library the name of its library
 * @param mode whether it can be drawn on
 * @param isDrawn whether it differs from its newest version
 * @param undo the step that can be taken back
 * @param redo the step that can be done again
 * @param tool what a press on the chart does
 * @param colour the colour that is painted with
 * @param cursor where the drawing cursor is
 * @param findings what the check says
 * @param history the plate's versions, newest first
 * @param lookingAt the version that is looked at instead of the plate as it is now
 * @param offer what is said of a draft from an earlier day that can be gone on with
 */
public record PlateState(
        Optional<Drawing> drawing,
        String library,
        Mode mode,
        boolean isDrawn,
        Optional<String> undo,
        Optional<String> redo,
        Tool tool,
        Optional<Character> colour,
        Spot cursor,
        List<Finding> findings,
        List<HistoryStep> history,
        Optional<String> lookingAt,
        Optional<String> offer) {

    /** Whether the plate can be drawn on. */
    public enum Mode {
        DRAW,
        LOOK
    }

    /** No plate is open. */
    public static final PlateState NOTHING = new PlateState(
            Optional.empty(),
            "",
            Mode.LOOK,
            false,
            Optional.empty(),
            Optional.empty(),
            Tool.PAINT,
            Optional.empty(),
            new Spot(0, 0),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty());

    public PlateState {
        findings = List.copyOf(findings);
        history = List.copyOf(history);
    }

    public boolean canDraw() {
        return mode == Mode.DRAW;
    }

    /** The plate that is shown. */
    public Optional<Plate> plate() {
        return drawing.map(Drawing::plate);
    }

    /** The step of the history that is looked at. */
    public Optional<HistoryStep> looked() {
        return lookingAt.flatMap(
                id -> history.stream().filter(s -> s.versionId().equals(id)).findFirst());
    }
}
