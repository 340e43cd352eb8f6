package platekeep.client.plate.work;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.Kin;
import platekeep.client.plate.piece.Area;
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
 * @param hand where the hand is on the chart
 * @param findings what the check says
 * @param history the plate's versions, newest first
 * @param kin the plates that it was started from, and those started from it
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
        Hand hand,
        List<Finding> findings,
        List<HistoryStep> history,
        Kin kin,
        Optional<String> lookingAt,
        Optional<String> offer) {

    /** Whether the plate can be drawn on. */
    public enum Mode {
        DRAW,
        LOOK
    }

    /**
     * Where the hand is on the chart.
     *
     * @param cursor where the drawing cursor is
     * @param firstEnd where a line or block begins that waits for its other end
     * @param chosen what is chosen
     * @param axis the sum of two places that face each other, when drawing is mirrored
     * @param line the geometric line in hand, by its place in the plate's list
     */
    public record Hand(
            Spot cursor, Optional<Spot> firstEnd, Optional<Area> chosen, OptionalInt axis, OptionalInt line) {}

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
            new Hand(new Spot(0, 0), Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty()),
            List.of(),
            List.of(),
            Kin.NONE,
            Optional.empty(),
            Optional.empty());

    public PlateState {
        findings = List.copyOf(findings);
        history = List.copyOf(history);
    }

    public boolean canDraw() {
        return mode == Mode.DRAW;
    }

    /** Where the drawing cursor is. */
    public Spot cursor() {
        return hand.cursor();
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
