package platekeep.client.plate.work;

import java.util.Optional;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.edit.MarkEdits;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Unknown;

/** What is worked or sewn on beside the cables of the picture: single stitches, geometric lines, notions. */
public final class ExtrasPresenter {
    /** Stacked rows to one gathering space where a plate does not say: common practice, no source. */
    private static final int STACKED_ROWS = 5;

    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private String stitch = MarkEdits.STITCHES.get(0);
    private Optional<Mark> held = Optional.empty();
    private Optional<Hold> line = Optional.empty();

    /** A line that was taken hold of, and where. */
    private record Hold(int at, Line line, double x, double y) {}

    ExtrasPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Which single stitch is put on. */
    public String stitch() {
        return stitch;
    }

    /** Takes another single stitch. */
    public void take(String newStitch) {
        stitch = newStitch;
    }

    /** A press with the single stitch in hand: takes hold of the one that lies there, or puts one on. */
    void press(OpenPlate opened, Spot spot) {
        held = MarkEdits.at(opened.now(), spot);
        if (held.isEmpty()) {
            plates.draw()
                    .colour()
                    .ifPresent(key -> plates.draw()
                            .facts("Put a " + stitch + " on", plate -> MarkEdits.add(plate, spot, stitch, key)));
        }
    }

    /** Moves the stitch that is held. */
    void drag(OpenPlate opened, Spot spot) {
        held.ifPresent(mark -> {
            opened.strokeAnew("Move a " + mark.stitch(), plate -> MarkEdits.move(plate, mark, spot));
            plates.drawn();
        });
    }

    /** Takes the single stitch at the cursor off; tells whether there was one. */
    boolean eraseAt(OpenPlate opened, Spot spot) {
        Optional<Mark> there = MarkEdits.at(opened.now(), spot);
        there.ifPresent(mark ->
                plates.draw().facts("Take a " + mark.stitch() + " off", plate -> MarkEdits.remove(plate, mark)));
        return there.isPresent();
    }

    /** Adds a geometric line: over what is chosen, or else the whole chart, on the gathering row asked for. */
    public void addLine() {
        plates.drawable()
                .ifPresent(opened -> plates.draw()
                        .colour()
                        .ifPresentOrElse(
                                key -> {
                                    Plate plate = opened.now();
                                    int from = plate.from()
                                            + opened.chosen().map(a -> a.left()).orElse(0);
                                    int to = plate.from()
                                            + opened.chosen()
                                                    .map(a -> a.right() + 1)
                                                    .orElse(plate.positions());
                                    Line line = new Line(
                                            "1",
                                            Optional.empty(),
                                            "cable",
                                            Optional.empty(),
                                            key,
                                            3,
                                            from,
                                            to,
                                            CableKind.DOWN,
                                            Unknown.NONE);
                                    askLine(plate, plate.lines().size(), line, "Add a line of ");
                                },
                                () -> room.front().say("Add a colour to the palette first.")));
    }

    /** Changes a geometric line, by its place in the plate's list. */
    public void changeLine(int at) {
        plates.drawable()
                .filter(o -> at < o.now().lines().size())
                .ifPresent(
                        opened -> askLine(opened.now(), at, opened.now().lines().get(at), "Change a line of "));
    }

    private void askLine(Plate plate, int at, Line before, String name) {
        view.askLine(plate, before)
                .ifPresent(line -> plates.draw().facts(name + line.stitch(), p -> ExtraEdits.putLine(p, at, line)));
    }

    /** Takes hold of the geometric line at a point, in pleats and rows, with the stitches in hand. */
    public boolean grab(double x, double y) {
        line = Optional.empty();
        if (plates.draw().tool() == Tool.STITCH) {
            plates.drawable()
                    .ifPresent(opened ->
                            plates.withDrawing(drawing -> drawing.lineAt(x, y).ifPresent(at -> {
                                plates.draw().endStroke();
                                line = Optional.of(
                                        new Hold(at, drawing.plate().lines().get(at), x, y));
                                room.front()
                                        .say("Line: "
                                                + ExtraEdits.words(
                                                        drawing.plate(),
                                                        line.get().line()));
                            })));
        }
        return line.isPresent();
    }

    /** Moves the line that is held to a point: by whole pleats, and by halves of a gathering space. */
    public void pull(double x, double y) {
        plates.drawable()
                .ifPresent(opened -> line.ifPresent(hold -> {
                    int space = opened.now()
                            .cloth()
                            .stackedRows()
                            .filter(n -> n > 0)
                            .orElse(STACKED_ROWS);
                    int pleats = (int) Math.round(x - hold.x());
                    int halves = (int) Math.round((y - hold.y()) * 2 / space);
                    opened.strokeAnew(
                            "Move a line of " + hold.line().stitch(),
                            plate -> ExtraEdits.putLine(
                                    plate, hold.at(), ExtraEdits.moved(hold.line(), pleats, halves)));
                    plates.drawn();
                }));
    }

    /** Moves a line to the right, and down by half spaces of the gathering rows; to the left and up where negative. */
    public void moveLine(int at, int pleats, int halfSpaces) {
        plates.drawable().filter(o -> at < o.now().lines().size()).ifPresent(opened -> {
            Line before = opened.now().lines().get(at);
            opened.stroke(
                    "Move a line of " + before.stitch(),
                    plate -> ExtraEdits.putLine(plate, at, ExtraEdits.moved(before, pleats, halfSpaces)));
            plates.drawn();
        });
    }

    /** Takes a line out. */
    public void removeLine(int at) {
        plates.draw().facts("Take a line out", plate -> ExtraEdits.removeLine(plate, at));
    }

    /** Adds something that is sewn on. */
    public void addNotion() {
        plates.current()
                .ifPresent(opened -> view.askNotion(new Notion("button", Optional.empty(), 1, Unknown.NONE))
                        .ifPresent(notion -> {
                            int at = opened.now().notions().size();
                            plates.draw()
                                    .facts("Add a " + notion.kind(), plate -> ExtraEdits.putNotion(plate, at, notion));
                        }));
    }

    /** Changes something that is sewn on. */
    public void changeNotion(int at) {
        plates.current()
                .filter(o -> at < o.now().notions().size())
                .ifPresent(opened -> view.askNotion(opened.now().notions().get(at))
                        .ifPresent(notion -> plates.draw()
                                .facts("Change a " + notion.kind(), plate -> ExtraEdits.putNotion(plate, at, notion))));
    }

    /** Takes something out that is sewn on. */
    public void removeNotion(int at) {
        plates.draw().facts("Take a notion out", plate -> ExtraEdits.removeNotion(plate, at));
    }
}
