package platekeep.client.plate.work;

import java.security.SecureRandom;
import java.util.Optional;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import platekeep.client.plate.edit.PleatEdits;
import platekeep.client.plate.edit.RowEdits;
import platekeep.client.plate.piece.Repeats;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;

/** Changes the chart itself: its rows, its pleats, where the picture lies on them, and of what strip it is a repeat. */
public final class ChartPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private final RandomGenerator random = new SecureRandom();

    ChartPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Puts an empty row in above the cursor's row. */
    public void insertAbove() {
        atCursor("Insert a row", (plate, spot) -> RowEdits.insert(plate, spot.row(), random));
    }

    /** Puts an empty row in below the cursor's row. */
    public void insertBelow() {
        atCursor("Insert a row", (plate, spot) -> RowEdits.insert(plate, spot.row() + 1, random));
        plates.draw().moveCursor(1, 0);
    }

    /** Puts a copy of the cursor's row above it. */
    public void duplicateRow() {
        atCursor("Duplicate a row", (plate, spot) -> RowEdits.duplicate(plate, spot.row(), random));
    }

    /** Takes the cursor's row out. */
    public void deleteRow() {
        atCursor("Delete a row", (plate, spot) -> RowEdits.delete(plate, spot.row()));
        plates.draw().moveCursor(0, 0);
    }

    /** Moves the cursor's row up (by -1) or down (by 1). */
    public void moveRow(int by) {
        atCursor("Move a row", (plate, spot) -> RowEdits.move(plate, spot.row(), by));
        plates.draw().moveCursor(by, 0);
    }

    /** Moves the cables of the cursor's row to the right, or to the left where negative. */
    public void shiftRow(int by) {
        plates.drawable()
                .ifPresent(opened -> wide(
                        by < 0 ? "Shift the row to the left" : "Shift the row to the right",
                        plate -> RowEdits.shift(plate, opened.cursor().row(), by),
                        "The row reaches the edge of the chart there. Widen the chart first."));
    }

    private void atCursor(String name, AtSpot change) {
        plates.drawable().ifPresent(opened -> {
            opened.chosen(Optional.empty());
            plates.draw().step(name, plate -> change.of(plate, opened.cursor()));
        });
    }

    private interface AtSpot {
        Plate of(Plate plate, Spot spot);
    }

    /** Moves the whole picture to the right, or to the left where negative. */
    public void shift(int by) {
        wide(
                by < 0 ? "Shift to the left" : "Shift to the right",
                plate -> PleatEdits.shift(plate, by),
                "The picture reaches the edge of the chart there. Widen the chart first.");
    }

    /** Widens the chart at its ends, or narrows it where negative. */
    public void widen(int left, int right) {
        wide(
                left + right > 0 ? "Widen the chart" : "Narrow the chart",
                plate -> PleatEdits.widen(plate, left, right),
                left + right > 0
                        ? "A chart covers at most 2001 pleats."
                        : "There are cables at that end, or too few pleats. Erase or shift them first; nothing was cut off.");
    }

    private void wide(String name, Function<Plate, Optional<Plate>> change, String refused) {
        plates.drawable()
                .ifPresent(opened -> change.apply(opened.now())
                        .ifPresentOrElse(
                                after -> {
                                    opened.chosen(Optional.empty());
                                    plates.draw().step(name, plate -> after);
                                },
                                () -> room.front().trouble(refused)));
        plates.draw().moveCursor(0, 0);
    }

    /** Says whether the chart is one repeat of a strip, and of which; its copies are then shown faintly beside it. */
    public void repeat() {
        plates.drawable().ifPresent(opened -> {
            Plate plate = opened.now();
            view.askStrip(plate.pleats().orElseThrow().count(), plate.repeat())
                    .ifPresent(answer -> answer.repeat()
                            .ifPresentOrElse(
                                    said -> plates.draw()
                                            .step(
                                                    "Repeat every " + said.every() + " pleats",
                                                    p -> Repeats.said(p, said.every(), said.times())),
                                    () -> plates.draw()
                                            .step(
                                                    "Repeat no longer",
                                                    p -> p.edit()
                                                            .repeat(Optional.empty())
                                                            .build())));
        });
    }

    /** Turns the repeats into cables. */
    public void workOutRepeats() {
        plates.drawable().ifPresent(opened -> {
            if (opened.now().repeat().isEmpty()) {
                room.front().say("This chart is not a repeat of a strip; say so first (Repeats of the chart).");
                return;
            }
            Repeats.workedOut(opened.now())
                    .ifPresentOrElse(
                            after -> {
                                opened.chosen(Optional.empty());
                                opened.stepAsMeant("Turn the repeats into cables", after);
                                plates.drawn();
                            },
                            () -> room.front()
                                    .trouble("All repeats together are wider than a chart can be, which is "
                                            + (Pleats.MOST_POSITIONS + 1)
                                            + " pleats. Take fewer repeats; nothing was changed."));
        });
    }
}
