package platekeep.client.compare;

import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.Plate;

/** Reads two plates, compares them away from the event thread, and steps through what changed. */
final class ComparePresenter {
    private final Latest<CompareState> reading;
    private final CompareView view;
    private Optional<CompareState> state = Optional.empty();

    ComparePresenter(Workroom room, CompareView view) {
        this.reading = new Latest<>(room);
        this.view = view;
    }

    /** Shows two sides; when one cannot be read, says so and leaves what was shown. */
    void compare(Place.Compare place) {
        reading.ask(
                progress -> {
                    Comparison comparison = Comparison.of(read(place.before()), read(place.after()));
                    int first = comparison.differences().isEmpty() ? -1 : 0;
                    return new CompareState(
                            place.before().words(), place.after().words(), comparison, first);
                },
                this::show);
    }

    private static Plate read(Place.Side side) throws LibraryException {
        Optional<Entry> entry = side.versionId().isPresent()
                ? side.library().plateAt(side.plateId(), side.versionId().get())
                : side.library().plate(side.plateId());
        return entry.flatMap(Entry::plate)
                .orElseThrow(() -> new LibraryException(
                        side.words() + " cannot be compared: the plate is not there, or its file cannot be read. "
                                + "Choose another version."));
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
        state.ifPresent(s -> {
            int all = s.comparison().differences().size();
            if (all > 0) {
                show(s.at(Math.floorMod(s.chosen() + by, all)));
            }
        });
    }

    /** Goes to a change, counted from 0. */
    void choose(int difference) {
        state.filter(s -> s.chosen() != difference).ifPresent(s -> show(s.at(difference)));
    }

    private void show(CompareState shown) {
        state = Optional.of(shown);
        view.show(shown);
    }
}
