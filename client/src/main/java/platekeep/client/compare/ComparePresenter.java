package platekeep.client.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import platekeep.client.compare.Blink.Going;
import platekeep.client.compare.chart.Way;
import platekeep.client.library.Library;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Difference;
import platekeep.model.compare.Side;

/**
 * Reads two plates, compares and lines them up away from the event thread, steps through what changed, and keeps how the
 * two are looked at. What the library changes beneath it is read again.
 */
final class ComparePresenter implements RoomListener {
    private static final String PACE = "compare.pace";
    private static final String EMPTY =
            "Choose what to compare: press a title above, mark two plates in the gallery, or"
                    + " mark two versions in a plate's history.";

    private final Workroom room;
    private final Latest<Read> reading;
    private final CompareView view;
    private Optional<Place.Side> before = Optional.empty();
    private Optional<Place.Side> after = Optional.empty();
    private Optional<ReadSide> readBefore = Optional.empty();
    private Optional<ReadSide> readAfter = Optional.empty();
    private CompareState state;

    /** Both sides, read and compared. */
    private record Read(Optional<ReadSide> before, Optional<ReadSide> after, Optional<Compared> compared) {}

    ComparePresenter(Workroom room, CompareView view) {
        this.room = room;
        this.reading = new Latest<>(room);
        this.view = view;
        Pace pace = room.settings().get(PACE).flatMap(Pace::of).orElse(Pace.STEADY);
        this.state = new CompareState(
                SideState.NONE,
                SideState.NONE,
                Optional.empty(),
                EMPTY,
                -1,
                Way.SIDE_BY_SIDE,
                new Blink(Side.BEFORE, pace, pace == Pace.BY_HAND ? Going.HELD : Going.ON));
        room.listen(this);
    }

    /** Shows what there is, at first that nothing is chosen. */
    void begin() {
        show(state);
    }

    /** Shows two sides. */
    void compare(Place.Compare place) {
        before = Optional.of(place.before());
        after = Optional.of(place.after());
        read(0, Optional.empty());
    }

    /**
     * Reads what is chosen and compares it.
     *
     * @param chosen the change to step to
     * @param words what the change said that is to be stepped to rather, where it is still there
     */
    private void read(int chosen, Optional<String> words) {
        Optional<Place.Side> left = before;
        Optional<Place.Side> right = after;
        room.front().busy("Comparing …");
        reading.ask(
                progress -> {
                    Optional<ReadSide> was = left.isPresent() ? Optional.of(ReadSide.of(left.get())) : Optional.empty();
                    Optional<ReadSide> is =
                            right.isPresent() ? Optional.of(ReadSide.of(right.get())) : Optional.empty();
                    Optional<Compared> compared = was.flatMap(ReadSide::plate)
                            .flatMap(a -> is.flatMap(ReadSide::plate).map(b -> Compared.of(Comparison.of(a, b))));
                    return new Read(was, is, compared);
                },
                read -> took(read, chosen, words));
    }

    private void took(Read read, int chosen, Optional<String> words) {
        room.front().busy("");
        readBefore = read.before();
        readAfter = read.after();
        List<Difference> changes = read.compared().map(Compared::changes).orElse(List.of());
        OptionalInt again = changes.stream()
                .filter(change -> words.filter(change.words()::equals).isPresent())
                .mapToInt(changes::indexOf)
                .findFirst();
        show(new CompareState(
                readBefore.map(ReadSide::state).orElse(SideState.NONE),
                readAfter.map(ReadSide::state).orElse(SideState.NONE),
                read.compared(),
                sentence(),
                again.orElse(Math.min(chosen, changes.size() - 1)),
                state.way(),
                state.blink()));
    }

    private String sentence() {
        String why = Stream.of(readBefore, readAfter)
                .flatMap(Optional::stream)
                .map(ReadSide::sentence)
                .filter(s -> !s.isEmpty())
                .distinct()
                .collect(Collectors.joining("\n\n"));
        return why.isEmpty() && (before.isEmpty() || after.isEmpty()) ? EMPTY : why;
    }

    /** Steps to the next change; after the last one comes the first. */
    void next() {
        step(1);
    }

    /** Steps to the change before; before the first one comes the last. */
    void previous() {
        step(-1);
    }

    private void step(int by) {
        state.compared().ifPresent(c -> {
            int all = c.changes().size();
            if (all > 0) {
                show(state.at(Math.floorMod(state.chosen() + by, all)));
            }
        });
    }

    /** Goes to a change, counted from 0. */
    void choose(int difference) {
        if (state.chosen() != difference) {
            show(state.at(difference));
        }
    }

    /** Goes to the change that lies at a place of the charts, in pleats of the frame and lines. */
    void chooseAt(Side side, double pleat, double line) {
        state.compared().ifPresent(c -> c.at(side, pleat, line).ifPresent(this::choose));
    }

    /** Looks in another way. */
    void way(Way way) {
        show(state.in(way));
    }

    /** Puts the other chart in front; looks at both in turns from then on if it did not. */
    void turn() {
        Blink blink = state.way() == Way.BLINK ? state.blink().turned() : state.blink();
        show(state.in(Way.BLINK).with(blink.held()));
    }

    /** The charts take turns by themselves: now is the time. */
    void beat() {
        if (state.way() == Way.BLINK && state.blink().going() == Going.ON) {
            show(state.with(state.blink().turned()));
        }
    }

    /** Holds the charts that take turns, or lets them go on. */
    void hold() {
        show(state.with(state.blink().heldOrOn()));
    }

    /** Lets the charts take turns more slowly, more quickly, or by hand only; remembered. */
    void pace(Pace pace) {
        room.settings().put(PACE, pace.word());
        room.remember();
        show(state.with(state.blink().at(pace)));
    }

    /** Exchanges the two sides. */
    void swap() {
        Optional<Place.Side> left = before;
        before = after;
        after = left;
        if (before.isPresent() || after.isPresent()) {
            read(0, Optional.empty());
        }
    }

    /** Steps a side to the version before the one that it shows. */
    void older(Side side) {
        (side == Side.BEFORE ? readBefore : readAfter).flatMap(ReadSide::older).ifPresent(to -> put(side, to));
    }

    /** Steps a side to the version after the one that it shows. */
    void newer(Side side) {
        (side == Side.BEFORE ? readBefore : readAfter).flatMap(ReadSide::newer).ifPresent(to -> put(side, to));
    }

    /** Asks for the plate and version of a side. */
    void pick(Side side) {
        if (room.open().isEmpty()) {
            room.front().trouble("There is nothing to compare yet. Make a new library or open one first.");
            return;
        }
        Optional<Place.Side> current = side == Side.BEFORE ? before.or(() -> after) : after.or(() -> before);
        view.askSide(side, new SidePicker(room, current)).ifPresent(to -> put(side, to));
    }

    private void put(Side side, Place.Side to) {
        if (side == Side.BEFORE) {
            before = Optional.of(to);
        } else {
            after = Optional.of(to);
        }
        read(0, Optional.empty());
    }

    @Override
    public void contentChanged(Library library) {
        if (Stream.of(before, after).flatMap(Optional::stream).anyMatch(side -> side.library() == library)) {
            read(Math.max(0, state.chosen()), state.difference().map(Difference::words));
        }
    }

    @Override
    public void librariesChanged() {
        Optional<Place.Side> left = before.filter(side -> room.open().contains(side.library()));
        Optional<Place.Side> right = after.filter(side -> room.open().contains(side.library()));
        if (!left.equals(before) || !right.equals(after)) {
            before = left;
            after = right;
            read(0, Optional.empty());
        }
    }

    private void show(CompareState shown) {
        state = shown;
        view.show(shown);
    }
}
