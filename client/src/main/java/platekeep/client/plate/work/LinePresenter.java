package platekeep.client.plate.work;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.edit.Gathering;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.room.Workroom;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Line;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Unknown;

/**
 * Geometric lines: placed on the chart from pleat to pleat, taken hold of there, moved and taken out; by hand, by keys,
 * and by their place in the plate's list. Places are in pleats from the chart's left edge and rows from its top edge.
 */
public final class LinePresenter {
    private static final int STRANDS = 3;

    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private String stitch = ExtraEdits.LINES.get(0);
    private Optional<Hold> hold = Optional.empty();
    private Optional<Begun> begun = Optional.empty();
    private OptionalInt inHand = OptionalInt.empty();

    /** A line that was taken hold of, and where. */
    private record Hold(int at, Line line, double x, double y) {}

    /** Where a line that is being placed begins. */
    private record Begun(int pleat, double y, String on) {}

    LinePresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Which stitch is placed. */
    public String stitch() {
        return stitch;
    }

    /** Places another stitch from now on. */
    public void take(String newStitch) {
        stitch = newStitch;
    }

    /** The line that keys move and take out, by its place in the plate's list. */
    OptionalInt inHand(Plate plate) {
        return inHand.isPresent() && inHand.getAsInt() < plate.lines().size() ? inHand : OptionalInt.empty();
    }

    /** Takes a line in hand, by its place in the plate's list. */
    public void hold(int at) {
        inHand = OptionalInt.of(at);
        plates.refresh();
    }

    /** Nothing is in hand any more. */
    void letGo() {
        inHand = OptionalInt.empty();
        hold = Optional.empty();
        begun = Optional.empty();
    }

    /**
     * Takes hold of the line at a point, or begins one there with the lines in hand.
     *
     * @return whether it did
     */
    public boolean grab(double x, double y) {
        hold = Optional.empty();
        begun = Optional.empty();
        Tool tool = plates.draw().tool();
        if (tool == Tool.STITCH || tool == Tool.GATHER) {
            plates.drawable().ifPresent(opened -> {
                plates.draw().endStroke();
                plates.withDrawing(drawing -> drawing.lineAt(x, y).ifPresent(at -> take(opened.now(), at, x, y)));
                if (hold.isEmpty() && tool == Tool.GATHER) {
                    begin(opened, x, y);
                }
            });
        }
        return hold.isPresent() || begun.isPresent();
    }

    private void take(Plate plate, int at, double x, double y) {
        Line line = plate.lines().get(at);
        hold = Optional.of(new Hold(at, line, x, y));
        room.front().say("Line: " + ExtraEdits.words(plate, line));
        hold(at);
    }

    private void begin(OpenPlate opened, double x, double y) {
        if (plates.draw().colour().isEmpty()) {
            room.front().say("Add a colour to the palette first.");
            return;
        }
        if (Gathering.isNameless(opened.now())) {
            opened.stepAsMeant("Number the gathering rows", Gathering.numbered(opened.now()));
            plates.drawn();
            room.front()
                    .say("The gathering rows were numbered so that the picture lies on the last ones; Cloth and"
                            + " gathering rows (menu Chart) changes that.");
        }
        int pleat = pleat(opened, x);
        plates.withDrawing(drawing ->
                drawing.gatheringRowAt(y).ifPresent(on -> begun = Optional.of(new Begun(pleat, y, on))));
    }

    /** The hand that holds a line, or places one, comes to a point: by whole pleats, and by halves of a gathering space. */
    public void pull(double x, double y) {
        plates.drawable().ifPresent(opened -> {
            hold.ifPresent(h -> move(opened, h, x, y));
            begun.ifPresent(b -> place(opened, b, pleat(opened, x), y));
        });
    }

    /** The pleat at a place, held on the chart. */
    private static int pleat(OpenPlate opened, double x) {
        return opened.now().from() + (int) Math.max(0, Math.min(opened.now().positions(), Math.floor(x)));
    }

    private void move(OpenPlate opened, Hold from, double x, double y) {
        int pleats = (int) Math.round(x - from.x());
        int halves = (int) Math.round((y - from.y()) * 2 / Gathering.space(opened.now()));
        opened.strokeAnew(
                "Move a line of " + from.line().stitch(),
                plate -> ExtraEdits.putLine(plate, from.at(), ExtraEdits.moved(from.line(), pleats, halves)));
        plates.drawn();
    }

    private void place(OpenPlate opened, Begun from, int pleat, double y) {
        if (pleat == from.pleat()) {
            return;
        }
        Optional<String> other = other(from, y);
        char key = plates.draw().colour().orElseThrow();
        Line line = new Line(
                from.on(),
                Gathering.toRow(stitch, from.on(), other),
                stitch,
                Gathering.steps(stitch),
                key,
                STRANDS,
                Math.min(from.pleat(), pleat),
                Math.max(from.pleat(), pleat),
                CableKind.DOWN,
                Unknown.NONE);
        opened.strokeAnew(
                "Place a line of " + stitch,
                plate -> ExtraEdits.putLine(plate, plate.lines().size(), line));
        inHand = OptionalInt.of(opened.now().lines().size() - 1);
        plates.drawn();
    }

    private Optional<String> other(Begun from, double y) {
        return plates.drawing().flatMap(d -> d.gatheringRowAt(y)).filter(row -> !row.equals(from.on()));
    }

    /**
     * Moves the line in hand.
     *
     * @return whether there was one
     */
    boolean moveHeld(OpenPlate opened, int halfSpaces, int pleats) {
        OptionalInt held = inHand(opened.now());
        held.ifPresent(at -> moveLine(at, pleats, halfSpaces));
        return held.isPresent();
    }

    /**
     * Takes the line in hand out.
     *
     * @return whether there was one
     */
    boolean removeHeld(OpenPlate opened) {
        OptionalInt held = inHand(opened.now());
        held.ifPresent(this::removeLine);
        return held.isPresent();
    }

    /** Adds a geometric line: over what is chosen, or else the whole chart, on the gathering row asked for. */
    public void addLine() {
        plates.drawable()
                .ifPresent(opened -> plates.draw()
                        .colour()
                        .ifPresentOrElse(
                                key -> addLine(opened, key),
                                () -> room.front().say("Add a colour to the palette first.")));
    }

    private void addLine(OpenPlate opened, char key) {
        Plate plate = opened.now();
        int from = plate.from() + opened.chosen().map(a -> a.left()).orElse(0);
        int to = plate.from() + opened.chosen().map(a -> a.right() + 1).orElse(plate.positions());
        Line line = new Line(
                "1",
                Gathering.toRow(stitch, "1", Optional.empty()),
                stitch,
                Gathering.steps(stitch),
                key,
                STRANDS,
                from,
                to,
                CableKind.DOWN,
                Unknown.NONE);
        askLine(plate, plate.lines().size(), line, "Add a line of ");
    }

    /** Changes a geometric line, by its place in the plate's list. */
    public void changeLine(int at) {
        plates.drawable()
                .filter(o -> at < o.now().lines().size())
                .ifPresent(
                        opened -> askLine(opened.now(), at, opened.now().lines().get(at), "Change a line of "));
    }

    private void askLine(Plate plate, int at, Line before, String name) {
        view.askLine(plate, before).ifPresent(line -> {
            UnaryOperator<Plate> put = p -> ExtraEdits.putLine(Gathering.numbered(p), at, line);
            plates.draw().facts(name + line.stitch(), put);
            hold(at);
        });
    }

    /** Moves a line to the right, and down by half spaces of the gathering rows; to the left and up where negative. */
    public void moveLine(int at, int pleats, int halfSpaces) {
        plates.drawable().filter(o -> at < o.now().lines().size()).ifPresent(opened -> {
            Line before = opened.now().lines().get(at);
            inHand = OptionalInt.of(at);
            opened.stroke(
                    "Move a line of " + before.stitch(),
                    plate -> ExtraEdits.putLine(plate, at, ExtraEdits.moved(before, pleats, halfSpaces)));
            plates.drawn();
        });
    }

    /** Takes a line out. */
    public void removeLine(int at) {
        inHand = OptionalInt.empty();
        plates.draw().facts("Take a line out", plate -> ExtraEdits.removeLine(plate, at));
    }
}
