package platekeep.client.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.compare.SideState.Step;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.room.Place;
import platekeep.client.ui.Dates;
import platekeep.model.plate.Plate;

/**
 * One side, read from its library.
 *
 * @param place what was asked for
 * @param plate the plate; empty where it is not there or cannot be read
 * @param sentence why it cannot be compared, empty text where it can
 * @param state the head of the side
 * @param older the version before it in the plate's history
 * @param newer the version after it
 */
record ReadSide(
        Place.Side place,
        Optional<Plate> plate,
        String sentence,
        SideState state,
        Optional<Place.Side> older,
        Optional<Place.Side> newer) {

    /** Reads a side; what goes wrong is its sentence. May take time. */
    static ReadSide of(Place.Side place) {
        try {
            return read(place);
        } catch (LibraryException e) {
            SideState state = new SideState(place.words(), "", Step.NONE, Step.NONE);
            return new ReadSide(place, Optional.empty(), e.getMessage(), state, Optional.empty(), Optional.empty());
        }
    }

    private static ReadSide read(Place.Side place) throws LibraryException {
        List<PlateVersion> history = place.library().history(place.plateId()).stream()
                .filter(step -> step.entry().isPresent())
                .toList();
        Optional<Entry> entry = place.versionId().isPresent()
                ? place.library().plateAt(place.plateId(), place.versionId().get())
                : place.library().plate(place.plateId());
        int at = indexOf(history, place);
        Optional<Place.Side> older =
                at >= 0 && at + 1 < history.size() ? Optional.of(side(place, history.get(at + 1))) : Optional.empty();
        Optional<Place.Side> newer = at >= 1 ? Optional.of(side(place, history.get(at - 1))) : Optional.empty();
        Optional<Plate> plate = entry.flatMap(Entry::plate);
        SideState state = new SideState(
                plate.or(() -> lastReadable(history)).map(ReadSide::title).orElse(place.words()),
                at < 0 ? place.words() : version(place, history.get(at)),
                older.isPresent() ? Step.THERE : Step.NONE,
                newer.isPresent() ? Step.THERE : Step.NONE);
        return new ReadSide(place, plate, sentence(place, entry), state, older, newer);
    }

    /** The newest version of a plate that can be read, for what it is called. */
    private static Optional<Plate> lastReadable(List<PlateVersion> history) {
        return history.stream()
                .flatMap(step -> step.entry().flatMap(Entry::plate).stream())
                .findFirst();
    }

    private static int indexOf(List<PlateVersion> history, Place.Side place) {
        for (int i = 0; i < history.size(); i++) {
            PlateVersion step = history.get(i);
            if (place.versionId().isEmpty()
                    || step.version().id().equals(place.versionId().get())
                    || step.names().contains(place.versionId().get())) {
                return i;
            }
        }
        return -1;
    }

    private static Place.Side side(Place.Side of, PlateVersion step) {
        return new Place.Side(
                of.library(), of.plateId(), Optional.of(step.version().id()), words(step));
    }

    /** A version in few words. */
    static String words(PlateVersion step) {
        return Dates.day(step.version().on()) + ", by "
                + step.version().inNameOf().name();
    }

    private static String version(Place.Side place, PlateVersion step) {
        String names = step.names().stream().map(n -> "“" + n + "” · ").collect(Collectors.joining());
        String now = place.versionId().isEmpty() ? "as it is now · " : "";
        String reason = step.version().reason().lines().findFirst().orElse("");
        return now + names + words(step) + ": " + reason;
    }

    static String title(Plate plate) {
        return plate.title() + plate.number().map(n -> " · " + n).orElse("");
    }

    private static String sentence(Place.Side place, Optional<Entry> entry) {
        if (entry.isEmpty()) {
            return "“" + place.words() + "” cannot be compared: the plate is not there in that version. "
                    + "Choose another version or another plate.";
        }
        return entry.get()
                .fold(
                        good -> "",
                        damaged -> "“" + place.words() + "” cannot be compared, since its text is damaged"
                                + damaged.problems().stream()
                                        .findFirst()
                                        .map(problem -> ": " + problem.sentence())
                                        .orElse(".")
                                + " Nothing was changed; choose another version.");
    }
}
