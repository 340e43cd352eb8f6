package platekeep.client.plate;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import platekeep.client.plate.edit.CableEdits;
import platekeep.client.plate.edit.ColourEdits;
import platekeep.client.plate.edit.PlaceWords;
import platekeep.client.plate.edit.PleatEdits;
import platekeep.client.plate.edit.RowEdits;
import platekeep.client.plate.edit.Steps;
import platekeep.client.plate.edit.Tool;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Draws on the plate that is open: tools, colours, rows, pleats and facts, each change a step with a name that can be
 * taken back. Presses on a plate that cannot be drawn on only move the cursor.
 */
public final class DrawPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private final RandomGenerator random = new SecureRandom();
    private Tool tool = Tool.PAINT;
    private Optional<Character> colour = Optional.empty();
    private Optional<Spot> last = Optional.empty();

    DrawPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Another plate is open. */
    void opened(OpenPlate opened) {
        Palette palette = opened.now().palette();
        if (colour.isEmpty() || !palette.has(colour.get())) {
            colour = palette.entries().keySet().stream().findFirst();
        }
    }

    /** The tool in hand. */
    public Tool tool() {
        return tool;
    }

    /** The colour that is painted with; empty when the palette is. */
    public Optional<Character> colour() {
        return colour.filter(
                key -> plates.current().filter(o -> o.now().palette().has(key)).isPresent());
    }

    /** Takes a tool. */
    public void take(Tool newTool) {
        tool = newTool;
        plates.refresh();
    }

    /** Chooses a colour, and takes the brush when the tool in hand does not paint. */
    public void choose(char key) {
        colour = Optional.of(key);
        if (tool != Tool.PAINT && tool != Tool.FILL) {
            tool = Tool.PAINT;
        }
        plates.refresh();
    }

    /** Chooses the n-th colour, from 0. */
    public void chooseNth(int n) {
        plates.current().ifPresent(opened -> {
            Iterator<Character> keys = opened.now().palette().entries().keySet().iterator();
            for (int i = 0; i < n && keys.hasNext(); i++) {
                keys.next();
            }
            if (keys.hasNext()) {
                choose(keys.next());
            }
        });
    }

    /** The pointer presses on a spot: the tool is put to use there. */
    public void press(Spot spot) {
        last = Optional.empty();
        drag(spot);
    }

    /** The pointer is drawn on to a spot: the tool is put to use all the way. */
    public void drag(Spot spot) {
        drawable()
                .ifPresentOrElse(
                        opened -> {
                            List<Spot> way = CableEdits.between(last.orElse(spot), spot);
                            last = Optional.of(spot);
                            opened.cursor(spot);
                            use(opened, way);
                        },
                        () -> moveCursorTo(spot));
    }

    private void use(OpenPlate opened, List<Spot> way) {
        Plate plate = opened.steps().now();
        Spot end = way.get(way.size() - 1);
        switch (tool) {
            case PAINT -> colour().ifPresent(key -> stroke(opened, "Paint " + name(plate, key), way, key));
            case ERASE -> stroke(opened, "Erase", way, Row.EMPTY);
            case FILL -> colour().ifPresent(key -> fill(opened, end, key));
            case PICK -> pick(end);
            default -> plates.refresh();
        }
        tellPlace(end);
    }

    private void stroke(OpenPlate opened, String name, List<Spot> way, char key) {
        Plate before = opened.steps().now();
        opened.steps().stroke(name, CableEdits.paint(before, way, key));
        if (opened.steps().now() == before) {
            plates.refresh();
        } else {
            plates.drawn();
        }
    }

    private void fill(OpenPlate opened, Spot spot, char key) {
        Plate plate = opened.steps().now();
        step("Fill with " + name(plate, key), p -> CableEdits.paint(p, CableEdits.alike(p, spot), key));
    }

    /** The pointer lets go. */
    public void release() {
        last = Optional.empty();
        endStroke();
    }

    void endStroke() {
        plates.current().map(OpenPlate::steps).ifPresent(Steps::endStroke);
    }

    /** Chooses the colour that lies at a spot. */
    public void pick(Spot spot) {
        plates.current().ifPresent(opened -> {
            Plate plate = opened.now();
            char cell = plate.cellAt(spot.row(), plate.from() + spot.index());
            if (plate.palette().has(cell)) {
                choose(cell);
            }
        });
    }

    /** Puts the tool to use at the cursor; pointing paints. */
    public void useAtCursor() {
        drawable().ifPresent(opened -> {
            if (tool == Tool.POINT) {
                tool = Tool.PAINT;
            }
            endStroke();
            use(opened, List.of(opened.cursor()));
            endStroke();
        });
    }

    /** Takes the cable at the cursor away. */
    public void eraseAtCursor() {
        drawable().ifPresent(opened -> {
            endStroke();
            stroke(opened, "Erase", List.of(opened.cursor()), Row.EMPTY);
            endStroke();
        });
    }

    /** Moves the cursor so many rows down and positions to the right. */
    public void moveCursor(int rows, int positions) {
        plates.current().ifPresent(opened -> moveCursorTo(opened.cursor().moved(rows, positions)));
    }

    /** Moves the cursor and puts the tool to use where it comes. */
    public void drawCursor(int rows, int positions) {
        drawable().ifPresent(opened -> {
            Spot from = opened.cursor();
            opened.cursor(from.moved(rows, positions));
            use(opened, List.of(from, opened.cursor()));
        });
    }

    private void moveCursorTo(Spot spot) {
        plates.current().ifPresent(opened -> {
            opened.cursor(spot);
            plates.refresh();
            tellPlace(opened.cursor());
        });
    }

    /** The pointer is over a spot, or over none. */
    public void hover(Optional<Spot> spot) {
        spot.ifPresentOrElse(this::tellPlace, () -> view.place(""));
    }

    private void tellPlace(Spot spot) {
        plates.withDrawing(drawing -> view.place(drawing.has(spot) ? PlaceWords.of(drawing, spot) : ""));
    }

    private Optional<OpenPlate> drawable() {
        return plates.current()
                .filter(o -> o.lookingAt().isEmpty()
                        && o.offer().isEmpty()
                        && !o.steps().now().rows().isEmpty());
    }

    /** Takes a step, if the plate can be drawn on. */
    public void step(String name, UnaryOperator<Plate> change) {
        drawable().ifPresent(opened -> {
            Plate before = opened.steps().now();
            opened.steps().take(name, change.apply(before));
            if (opened.steps().now() != before) {
                plates.drawn();
            }
        });
    }

    /** Changes facts, also of a plate that has no chart. */
    public void facts(String name, UnaryOperator<Plate> change) {
        plates.current()
                .filter(o -> o.lookingAt().isEmpty() && o.offer().isEmpty())
                .ifPresent(opened -> {
                    Plate before = opened.steps().now();
                    opened.steps().take(name, change.apply(before));
                    if (!opened.steps().now().equals(before)) {
                        plates.drawn();
                    }
                });
    }

    /** Takes the last step back. */
    public void undo() {
        drawable().ifPresent(opened -> {
            opened.steps().undoName().ifPresent(name -> room.front().say("Taken back: " + name));
            opened.steps().undo();
            plates.drawn();
        });
    }

    /** Does the step again that was taken back last. */
    public void redo() {
        drawable().ifPresent(opened -> {
            opened.steps().redoName().ifPresent(name -> room.front().say("Done again: " + name));
            opened.steps().redo();
            plates.drawn();
        });
    }

    /** Puts an empty row in above the cursor's row. */
    public void insertAbove() {
        atCursor("Insert a row", (plate, spot) -> RowEdits.insert(plate, spot.row(), random));
    }

    /** Puts an empty row in below the cursor's row. */
    public void insertBelow() {
        atCursor("Insert a row", (plate, spot) -> RowEdits.insert(plate, spot.row() + 1, random));
        moveCursor(1, 0);
    }

    /** Puts a copy of the cursor's row above it. */
    public void duplicateRow() {
        atCursor("Duplicate a row", (plate, spot) -> RowEdits.duplicate(plate, spot.row(), random));
    }

    /** Takes the cursor's row out. */
    public void deleteRow() {
        atCursor("Delete a row", (plate, spot) -> RowEdits.delete(plate, spot.row()));
        moveCursor(0, 0);
    }

    /** Moves the cursor's row up (by -1) or down (by 1). */
    public void moveRow(int by) {
        atCursor("Move a row", (plate, spot) -> RowEdits.move(plate, spot.row(), by));
        moveCursor(by, 0);
    }

    private void atCursor(String name, AtSpot change) {
        drawable().ifPresent(opened -> step(name, plate -> change.of(plate, opened.cursor())));
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

    private void wide(String name, java.util.function.Function<Plate, Optional<Plate>> change, String refused) {
        drawable()
                .ifPresent(opened -> change.apply(opened.steps().now())
                        .ifPresentOrElse(
                                after -> step(name, plate -> after),
                                () -> room.front().trouble(refused)));
        moveCursor(0, 0);
    }

    /** Adds a colour to the palette, and paints with it. */
    public void addColour() {
        drawable()
                .ifPresent(opened -> opened.steps()
                        .now()
                        .palette()
                        .freeKey()
                        .ifPresentOrElse(
                                key -> view.askColour("New colour", new Colour("", "#7A8B99", 4))
                                        .ifPresent(added -> {
                                            step("Add " + added.name(), plate -> ColourEdits.put(plate, key, added));
                                            choose(key);
                                        }),
                                () -> room.front()
                                        .trouble("A palette holds 62 colours. Take one out that is not used first.")));
    }

    /** Changes the name, shade or strands of a colour. */
    public void changeColour(char key) {
        drawable()
                .ifPresent(opened -> opened.steps()
                        .now()
                        .palette()
                        .get(key)
                        .ifPresent(before -> view.askColour("Change " + before.name(), before)
                                .ifPresent(after ->
                                        step(colourStep(before, after), plate -> ColourEdits.put(plate, key, after)))));
    }

    private static String colourStep(Colour before, Colour after) {
        if (before.withName(after.name()).equals(after)) {
            return "Rename " + before.name() + " to " + after.name();
        }
        return before.srgb().equals(after.srgb()) ? "Change " + before.name() : "Recolour " + before.name();
    }

    /** Takes a colour out of the palette, if nothing uses it. */
    public void removeColour(char key) {
        drawable().ifPresent(opened -> {
            Plate plate = opened.steps().now();
            String name = name(plate, key);
            if (ColourEdits.isUsed(plate, key)) {
                room.front().trouble("\"" + name + "\" is still used. Paint its cables in another colour first.");
            } else {
                step("Take " + name + " out", p -> ColourEdits.remove(p, key));
            }
        });
    }

    private static String name(Plate plate, char key) {
        return plate.palette().get(key).map(Colour::name).orElse(String.valueOf(key));
    }

    /** The keys of the palette in order. */
    List<Character> keys() {
        return plates.current()
                .map(o ->
                        List.copyOf(new ArrayList<>(o.now().palette().entries().keySet())))
                .orElse(List.of());
    }
}
