package platekeep.client.plate.work;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.edit.CableEdits;
import platekeep.client.plate.edit.PlaceWords;
import platekeep.client.plate.edit.Steps;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Draws on the plate that is open with the tool in hand, each stroke a step with a name that can be taken back. Presses
 * on a plate that cannot be drawn on only move the cursor.
 */
public final class DrawPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private Tool tool = Tool.PAINT;
    private Optional<Character> colour = Optional.empty();
    private Optional<Spot> first = Optional.empty();
    private Optional<Spot> last = Optional.empty();
    private Optional<Spot> firstEnd = Optional.empty();

    DrawPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Another plate is open. */
    void opened(OpenPlate opened) {
        Palette palette = opened.now().palette();
        plates.lines().letGo();
        firstEnd = Optional.empty();
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

    /** Where a line, run, block or region begins that waits for its other end. */
    Optional<Spot> firstEnd() {
        return firstEnd;
    }

    /** Where the press began that is under way. */
    Optional<Spot> firstPressed() {
        return first;
    }

    /** Takes a tool. */
    public void take(Tool newTool) {
        tool = newTool;
        plates.lines().letGo();
        firstEnd = Optional.empty();
        endStroke();
        plates.refresh();
    }

    /** Chooses a colour, and takes the brush when the tool in hand has no use for one. */
    public void choose(char key) {
        colour = Optional.of(key);
        if (!tool.paints() && !tool.chooses() && tool != Tool.STITCH && tool != Tool.GATHER) {
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
    public void press(Spot spot, Press how) {
        endStroke();
        firstEnd = Optional.empty();
        first = Optional.of(spot);
        last = Optional.empty();
        plates.drawable()
                .ifPresentOrElse(
                        opened -> {
                            opened.cursor(spot);
                            if (tool.chooses()) {
                                plates.choice().press(opened, spot, how);
                                last = Optional.of(spot);
                            } else if (tool == Tool.STITCH) {
                                plates.extras().press(opened, spot);
                                last = Optional.of(spot);
                                tellPlace(spot);
                            } else if (tool == Tool.GATHER) {
                                plates.lines().grab(spot.index() + 0.5, spot.row() + 0.5);
                                last = Optional.of(spot);
                                tellPlace(spot);
                            } else {
                                reach(opened, spot);
                            }
                        },
                        () -> moveCursorTo(spot));
    }

    /** The pointer is drawn on to a spot: the tool is put to use all the way. */
    public void drag(Spot spot) {
        if (last.filter(spot::equals).isPresent()) {
            return;
        }
        plates.drawable()
                .ifPresentOrElse(
                        opened -> {
                            opened.cursor(spot);
                            reach(opened, spot);
                        },
                        () -> moveCursorTo(spot));
    }

    private void reach(OpenPlate opened, Spot spot) {
        Spot from = last.orElse(spot);
        last = Optional.of(spot);
        if (tool.chooses()) {
            plates.choice().drag(opened, spot);
        } else if (tool == Tool.STITCH) {
            plates.extras().drag(opened, spot);
        } else if (tool == Tool.GATHER) {
            plates.lines().pull(spot.index() + 0.5, spot.row() + 0.5);
        } else if (tool.spans()) {
            span(opened, first.orElse(spot), spot);
        } else {
            use(opened, CableEdits.line(from, spot));
        }
        tellPlace(spot);
    }

    private void span(OpenPlate opened, Spot from, Spot to) {
        colour().ifPresent(key -> {
            String name = tool.word() + " in " + name(opened.now(), key);
            List<Spot> spots = faced(opened, shape(from, to));
            Plate before = opened.now();
            opened.strokeAnew(name, plate -> CableEdits.paint(plate, spots, key));
            shown(opened, before);
        });
    }

    private List<Spot> shape(Spot from, Spot to) {
        return switch (tool) {
            case RUN -> CableEdits.run(from, to);
            case BLOCK -> CableEdits.block(from, to);
            default -> CableEdits.line(from, to);
        };
    }

    private static List<Spot> faced(OpenPlate opened, List<Spot> spots) {
        return opened.axis().isPresent()
                ? CableEdits.mirrored(spots, opened.axis().getAsInt())
                : spots;
    }

    private void use(OpenPlate opened, List<Spot> way) {
        Plate plate = opened.now();
        Spot end = way.get(way.size() - 1);
        switch (tool) {
            case PAINT -> colour().ifPresent(key -> stroke(opened, "Paint " + name(plate, key), way, key));
            case ERASE -> stroke(opened, "Erase", way, Row.EMPTY);
            case FILL -> colour().ifPresent(key -> paint(opened, "Fill with ", alike(opened, end), key));
            case RIM ->
                colour().ifPresent(key -> paint(opened, "Rim in ", faced(opened, CableEdits.rim(plate, end)), key));
            case PICK -> pick(end);
            default -> plates.refresh();
        }
    }

    private static List<Spot> alike(OpenPlate opened, Spot spot) {
        return faced(opened, CableEdits.alike(opened.now(), spot));
    }

    private void stroke(OpenPlate opened, String name, List<Spot> way, char key) {
        Plate before = opened.now();
        List<Spot> spots = faced(opened, way);
        opened.stroke(name, plate -> CableEdits.paint(plate, spots, key));
        shown(opened, before);
    }

    private void paint(OpenPlate opened, String name, List<Spot> spots, char key) {
        step(name + name(opened.now(), key), plate -> CableEdits.paint(plate, spots, key));
    }

    private void shown(OpenPlate opened, Plate before) {
        if (opened.now() == before) {
            plates.refresh();
        } else {
            plates.drawn();
        }
    }

    /** The pointer lets go. */
    public void release() {
        plates.drawable().filter(o -> tool.chooses()).ifPresent(plates.choice()::release);
        first = Optional.empty();
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

    /**
     * Puts the tool to use at the cursor; pointing paints. A line, run, block or region begins there, and ends there the
     * next time.
     */
    public void useAtCursor() {
        plates.drawable().ifPresent(opened -> {
            Spot spot = opened.cursor();
            if (tool == Tool.POINT) {
                tool = Tool.PAINT;
            }
            if (tool.hasTwoEnds() && firstEnd.isEmpty()) {
                firstEnd = Optional.of(spot);
                room.front().say("Begins at " + where(opened, spot) + "; go to the other end and press Space again.");
                plates.refresh();
                return;
            }
            Spot from = firstEnd.orElse(spot);
            press(from, Press.PLAIN);
            drag(spot);
            release();
            plates.refresh();
        });
    }

    private static String where(OpenPlate opened, Spot spot) {
        return "row " + opened.now().numberFromBottom(spot.row()) + ", pleat "
                + (opened.now().from() + spot.index());
    }

    /** Takes away the line in hand, or else what is chosen, or else the cable at the cursor. */
    public void eraseAtCursor() {
        plates.drawable().ifPresent(opened -> {
            endStroke();
            if (eraseWithHand(opened)) {
                return;
            }
            if (opened.chosen().isPresent()) {
                plates.choice().erase();
            } else if (tool != Tool.GATHER) {
                stroke(opened, "Erase", List.of(opened.cursor()), Row.EMPTY);
                endStroke();
            }
        });
    }

    /** Takes away the single stitch at the cursor or the line in hand; whether there was one. */
    private boolean eraseWithHand(OpenPlate opened) {
        boolean isStitch = tool == Tool.STITCH && plates.extras().eraseAt(opened, opened.cursor());
        boolean mayBeLine = tool == Tool.STITCH || tool == Tool.GATHER;
        return isStitch || mayBeLine && plates.lines().removeHeld(opened);
    }

    /** Moves the line in hand, or else what is chosen, so many steps down and to the right. */
    public void moveInHand(int rows, int positions) {
        boolean mayBeLine = tool == Tool.STITCH || tool == Tool.GATHER;
        boolean isLine = mayBeLine
                && plates.drawable()
                        .filter(opened -> plates.lines().moveHeld(opened, rows, positions))
                        .isPresent();
        if (!isLine) {
            plates.choice().move(rows, positions);
        }
    }

    /** Moves the cursor so many rows down and positions to the right. */
    public void moveCursor(int rows, int positions) {
        plates.current().ifPresent(opened -> {
            if (first.isPresent()) {
                release();
            }
            moveCursorTo(opened.cursor().moved(rows, positions));
        });
    }

    /** Moves the cursor and puts the tool to use where it comes, as a drag of the pointer would. */
    public void drawCursor(int rows, int positions) {
        plates.drawable().ifPresent(opened -> {
            if (first.isEmpty()) {
                press(opened.cursor(), Press.PLAIN);
            }
            opened.cursor(opened.cursor().moved(rows, positions));
            drag(opened.cursor());
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

    /** Takes a step, if the plate can be drawn on. */
    public void step(String name, UnaryOperator<Plate> change) {
        plates.drawable().ifPresent(opened -> {
            Plate before = opened.now();
            opened.step(name, change);
            shown(opened, before);
        });
    }

    /** Changes facts, also of a plate that has no chart. */
    public void facts(String name, UnaryOperator<Plate> change) {
        plates.current()
                .filter(o -> o.lookingAt().isEmpty() && o.offer().isEmpty())
                .ifPresent(opened -> {
                    Plate before = opened.now();
                    opened.steps().take(name, change.apply(before));
                    if (!opened.now().equals(before)) {
                        plates.drawn();
                    }
                });
    }

    /** Takes the last step back. */
    public void undo() {
        plates.drawable().ifPresent(opened -> {
            endStroke();
            opened.steps().undoName().ifPresent(name -> room.front().say("Taken back: " + name));
            opened.chosen(Optional.empty());
            opened.steps().undo();
            plates.drawn();
        });
    }

    /** Does the step again that was taken back last. */
    public void redo() {
        plates.drawable().ifPresent(opened -> {
            opened.steps().redoName().ifPresent(name -> room.front().say("Done again: " + name));
            opened.chosen(Optional.empty());
            opened.steps().redo();
            plates.drawn();
        });
    }

    static String name(Plate plate, char key) {
        return plate.palette().get(key).map(Colour::name).orElse(String.valueOf(key));
    }
}
