package platekeep.client.plate.work;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.piece.Piece;
import platekeep.client.plate.piece.Putting;
import platekeep.client.plate.piece.Recolour;
import platekeep.client.plate.piece.Repeats;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;

/**
 * Chooses a part of the picture and does something with all of it: moves, copies, mirrors, recolours, repeats, takes it
 * away, or puts it in elsewhere. Starts, single stitches and remarks go along, and no stitch changes its kind unless it
 * comes to touch a figure that it cannot agree with; that is told.
 */
public final class ChoicePresenter {
    private static final String NOTHING_CHOSEN = "Nothing is chosen. Choose a region (G) or a figure (U) first.";

    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private Optional<Piece> copied = Optional.empty();
    private Optional<Grip> grip = Optional.empty();
    private Optional<Pending> pending = Optional.empty();
    private Optional<Area> added = Optional.empty();
    private int turned;

    /** A press on what is chosen, which is lifted once it is dragged. */
    private record Pending(Spot at, Press how) {}

    /** What is being moved: where it was taken, and how it lay then. */
    private record Grip(Spot at, OpenPlate.Lifted lifted) {
        /** Whether what is moved stays where it was, too. */
        boolean isCopy() {
            return lifted.home().filter(home -> home.plate() == lifted.ground()).isPresent();
        }
    }

    ChoicePresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    void press(OpenPlate opened, Spot spot, Press how) {
        grip = Optional.empty();
        added = how == Press.ADD ? opened.chosen() : Optional.empty();
        boolean isInside = opened.chosen().filter(a -> a.has(spot)).isPresent();
        if (plates.draw().tool() == Tool.FIGURE && (!isInside || how == Press.ADD)) {
            choose(opened, Area.figure(opened.now(), spot));
            isInside = opened.chosen().filter(a -> a.has(spot)).isPresent();
        } else if (!isInside && how != Press.ADD) {
            opened.chosen(Optional.empty());
        }
        pending = isInside && how != Press.ADD ? Optional.of(new Pending(spot, how)) : Optional.empty();
        plates.refresh();
    }

    private void choose(OpenPlate opened, Optional<Area> area) {
        opened.chosen(
                added.isPresent() && area.isPresent()
                        ? Optional.of(added.get().with(area.get()))
                        : area.or(() -> added));
        tell(opened);
    }

    private void tell(OpenPlate opened) {
        opened.chosen().ifPresent(area -> {
            Plate plate = opened.now();
            int cables = area.cables(plate).map(Area::size).orElse(0);
            room.front()
                    .say("Chosen: " + (cables == 1 ? "1 cable" : cables + " cables") + ", rows "
                            + plate.numberFromBottom(area.bottom()) + " to " + plate.numberFromBottom(area.top())
                            + ", pleats " + (plate.from() + area.left()) + " to "
                            + (plate.from() + area.right() + 1));
        });
    }

    /** Takes the chosen part in hand: lifted off, or a copy of it. */
    private Optional<OpenPlate.Lifted> take(OpenPlate opened, Press how) {
        if (how != Press.COPY && opened.lifted().isPresent()) {
            return opened.lifted();
        }
        Plate plate = opened.now();
        return opened.chosen().flatMap(area -> Putting.lift(plate, area)).map(lift -> {
            OpenPlate.Home home = new OpenPlate.Home(lift.corner(), plate);
            return how == Press.COPY
                    ? new OpenPlate.Lifted(plate, lift.piece().copy(), lift.corner(), plate, Optional.of(home))
                    : new OpenPlate.Lifted(lift.ground(), lift.piece(), lift.corner(), plate, Optional.of(home));
        });
    }

    void drag(OpenPlate opened, Spot spot) {
        pending.ifPresent(p -> take(opened, p.how()).ifPresent(lifted -> grip = Optional.of(new Grip(p.at(), lifted))));
        pending = Optional.empty();
        if (grip.isPresent()) {
            Spot by = new Spot(
                    spot.row() - grip.get().at().row(),
                    spot.index() - grip.get().at().index());
            moveTo(opened, grip.get().lifted(), by, grip.get().isCopy() ? "Copy " : "Move ");
        } else if (plates.draw().tool() == Tool.REGION) {
            opened.chosen(Optional.empty());
            choose(opened, Optional.of(Area.between(plates.draw().firstPressed().orElse(spot), spot)));
            plates.refresh();
        }
    }

    private void moveTo(OpenPlate opened, OpenPlate.Lifted from, Spot by, String name) {
        Spot corner = held(opened.now(), from.piece(), from.corner().moved(by.row(), by.index()));
        Optional<Putting.Put> there = from.home()
                .filter(home -> home.corner().equals(corner))
                .map(home -> new Putting.Put(home.plate(), 0))
                .or(() -> Putting.down(from.piece(), from.ground(), corner));
        there.ifPresent(put -> {
            opened.steps().stroke(name + cables(from.piece()), put.plate());
            opened.putDown(new OpenPlate.Lifted(from.ground(), from.piece(), corner, opened.now(), from.home()));
            turned = put.turned();
            plates.drawn();
        });
    }

    /** The corner nearest to a wanted one at which the piece lies on the chart. */
    private static Spot held(Plate plate, Piece piece, Spot corner) {
        return new Spot(
                Math.max(0, Math.min(plate.rows().size() - piece.height(), corner.row())),
                Math.max(0, Math.min(plate.positions() - piece.width(), corner.index())));
    }

    private static String cables(Piece piece) {
        int count = piece.cables();
        return count == 1 ? "1 cable" : count + " cables";
    }

    void release(OpenPlate opened) {
        grip = Optional.empty();
        pending = Optional.empty();
        added = Optional.empty();
        tellTurned();
    }

    private void tellTurned() {
        if (turned > 0) {
            String cables = turned == 1 ? "1 cable" : turned + " cables";
            room.front().say(cables + " had to turn where figures touch that cannot agree on up and down.");
        }
        turned = 0;
    }

    /** Moves what is chosen so many rows down and positions to the right. */
    public void move(int rows, int positions) {
        withChoice(opened -> take(opened, Press.PLAIN).ifPresent(lifted -> {
            moveTo(opened, lifted, new Spot(rows, positions), "Move ");
            tellTurned();
        }));
    }

    /** Mirrors what is chosen left to right, in its place. */
    public void mirrorLeftRight() {
        turn("Mirror left to right: ", Piece::mirroredLeftRight);
    }

    /** Mirrors what is chosen top to bottom, in its place; every up becomes a down. */
    public void mirrorTopBottom() {
        turn("Mirror top to bottom: ", Piece::mirroredTopBottom);
    }

    private void turn(String name, UnaryOperator<Piece> how) {
        withChoice(opened -> take(opened, Press.PLAIN).ifPresent(lifted -> {
            plates.draw().endStroke();
            Piece piece = how.apply(lifted.piece());
            put(opened, lifted.ground(), piece, lifted.corner(), name + cables(piece));
        }));
    }

    private void put(OpenPlate opened, Plate ground, Piece piece, Spot corner, String name) {
        Putting.down(piece, ground, corner)
                .ifPresentOrElse(
                        put -> {
                            opened.stepAsMeant(name, put.plate());
                            opened.putDown(new OpenPlate.Lifted(ground, piece, corner, opened.now(), Optional.empty()));
                            turned = put.turned();
                            plates.drawn();
                            tellTurned();
                        },
                        () -> room.front()
                                .trouble("The palette has no room for its colours: it holds 62. Take some out that are"
                                        + " not used, or turn one into another; nothing was put in."));
    }

    /** Copies what is chosen, to be put in elsewhere, in another plate too. */
    public void copy() {
        withChoice(opened -> {
            copied = opened.chosen()
                    .flatMap(area -> Piece.of(opened.now(), area))
                    .map(Piece::copy);
            copied.ifPresent(piece -> room.front().say("Copied: " + cables(piece)));
        });
    }

    /** Copies what is chosen and takes it away. */
    public void cut() {
        copy();
        erase();
    }

    /** Takes away what is chosen. */
    public void erase() {
        withChoice(opened -> {
            Area area = opened.chosen().orElseThrow();
            int cables = area.cables(opened.now()).map(Area::size).orElse(0);
            plates.draw().endStroke();
            opened.stepAsMeant(
                    "Erase " + (cables == 1 ? "1 cable" : cables + " cables"), Putting.lifted(opened.now(), area));
            opened.chosen(Optional.empty());
            plates.drawn();
        });
    }

    /** Puts what was copied last in, with its lower left corner at the cursor where there is room. */
    public void paste() {
        copied.ifPresentOrElse(
                this::paste, () -> room.front().say("Nothing was copied yet. Choose something and copy it (Ctrl+C)."));
    }

    /** Puts a piece in with its lower left corner at the cursor where there is room. */
    void paste(Piece piece) {
        plates.drawable().ifPresent(opened -> {
            Plate plate = opened.now();
            if (piece.height() > plate.rows().size() || piece.width() > plate.positions()) {
                room.front()
                        .trouble("It is " + (piece.width() + 1) + " pleats wide and " + piece.height()
                                + " rows high, more than this chart. Widen the chart or insert rows first; nothing"
                                + " was put in.");
                return;
            }
            plates.draw().endStroke();
            Spot at = opened.cursor().moved(1 - piece.height(), 0);
            put(opened, plate, piece.copy(), held(plate, piece, at), "Put in " + cables(piece));
            if (!plates.draw().tool().chooses()) {
                plates.draw().take(Tool.REGION);
            }
        });
    }

    /** What is chosen, as a copy; where nothing is, that is told. */
    Optional<Piece> chosen() {
        Optional<Piece> piece = plates.drawable()
                .flatMap(opened -> opened.chosen().flatMap(area -> Piece.of(opened.now(), area)))
                .map(Piece::copy);
        if (piece.isEmpty()) {
            room.front().say(NOTHING_CHOSEN);
        }
        return piece;
    }

    /** Gives what is chosen another colour, all of it or one colour of it. */
    public void recolour() {
        withChoice(opened -> {
            Plate plate = opened.now();
            Area area = opened.chosen().orElseThrow();
            view.askRecolour(
                            plate.palette(),
                            Recolour.there(plate, area),
                            plates.draw().colour())
                    .ifPresent(answer -> plates.draw()
                            .step(
                                    "Recolour to " + DrawPresenter.name(plate, answer.to()),
                                    p -> Recolour.of(p, area, answer.from(), answer.to())));
        });
    }

    /** Puts copies of what is chosen beside it, with a gap between them. */
    public void repeat() {
        withChoice(opened -> {
            Plate plate = opened.now();
            Area area = opened.chosen().orElseThrow().boxOfCables(plate);
            view.askRepeat(area.width() + 1, gap -> Repeats.room(plate, area, gap))
                    .filter(answer -> answer.times() > 1)
                    .flatMap(answer ->
                            Repeats.across(plate, opened.chosen().orElseThrow(), answer.gap(), answer.times()))
                    .ifPresent(put -> {
                        opened.stepAsMeant("Repeat across", put.plate());
                        turned = put.turned();
                        plates.drawn();
                        tellTurned();
                    });
        });
    }

    /** Chooses the whole chart. */
    public void chooseAll() {
        plates.drawable().ifPresent(opened -> {
            added = Optional.empty();
            choose(opened, Area.whole(opened.now()));
            if (!plates.draw().tool().chooses()) {
                plates.draw().take(Tool.REGION);
            }
            plates.refresh();
        });
    }

    /**
     * Lets go of what is chosen.
     *
     * @return whether anything was
     */
    public boolean letGo() {
        boolean was = plates.current().filter(o -> o.chosen().isPresent()).isPresent();
        plates.current().ifPresent(opened -> opened.chosen(Optional.empty()));
        plates.refresh();
        return was;
    }

    /** Draws on both sides of the centre of the chart from now on, or on one side again. */
    public void mirrorAboutCentre() {
        axis(opened -> OptionalInt.of(opened.now().positions() - 1));
    }

    /** Draws on both sides of the cable at the cursor from now on, or on one side again. */
    public void mirrorAboutCursor() {
        axis(opened -> OptionalInt.of(2 * opened.cursor().index()));
    }

    private void axis(java.util.function.Function<OpenPlate, OptionalInt> wanted) {
        plates.drawable().ifPresent(opened -> {
            OptionalInt axis = wanted.apply(opened);
            boolean isOn = opened.axis().equals(axis);
            opened.axis(isOn ? OptionalInt.empty() : axis);
            room.front().say(isOn ? "Drawing on one side again." : "What is drawn is drawn on both sides of the line.");
            plates.refresh();
        });
    }

    private void withChoice(java.util.function.Consumer<OpenPlate> then) {
        plates.drawable().ifPresent(opened -> {
            boolean isThere = opened.chosen()
                    .filter(area -> area.cables(opened.now()).isPresent())
                    .isPresent();
            if (isThere) {
                then.accept(opened);
            } else {
                room.front().say(NOTHING_CHOSEN);
            }
        });
    }
}
