package platekeep.client.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.PlateVersion;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Dates;
import platekeep.model.plate.Plate;

/** Lets one choose a plate of the open libraries, then one of its versions; both lists narrow down as one types. */
final class SidePicker {
    private static final String NOW = "As it is now";

    private final Workroom room;
    private final Latest<List<Found>> plateReading;
    private final Latest<List<PlateVersion>> versionReading;
    private final Optional<Place.Side> current;
    private Consumer<PickerState> view = state -> {};
    private List<Found> plates = List.of();
    private List<PlateVersion> versions = List.of();
    private String plateWords = "";
    private String versionWords = "";
    private Optional<Found> plate = Optional.empty();
    private Optional<String> version = Optional.empty();
    private boolean isReading;

    /** A plate of one of the libraries. */
    private record Found(Library library, Plate plate) {}

    /** Begins with what the side shows now. */
    SidePicker(Workroom room, Optional<Place.Side> current) {
        this.room = room;
        this.current = current;
        this.plateReading = new Latest<>(room);
        this.versionReading = new Latest<>(room);
    }

    /** Reads the plates and tells the view whatever there is to show, from now on. */
    void begin(Consumer<PickerState> newView) {
        view = newView;
        isReading = true;
        List<Library> open = room.open();
        plateReading.ask(
                progress -> {
                    List<Found> found = new ArrayList<>();
                    for (Library library : open) {
                        for (Entry entry : library.list(progress)) {
                            entry.plate().ifPresent(p -> found.add(new Found(library, p)));
                        }
                    }
                    found.sort(Comparator.comparing((Found f) -> f.plate().title(), String.CASE_INSENSITIVE_ORDER)
                            .thenComparing(f -> f.plate().id()));
                    return found;
                },
                found -> {
                    isReading = false;
                    plates = found;
                    plate = current.flatMap(this::find);
                    version = current.flatMap(Place.Side::versionId);
                    plate.ifPresent(this::readVersions);
                    show();
                });
        show();
    }

    private Optional<Found> find(Place.Side side) {
        return plates.stream()
                .filter(f -> f.library() == side.library() && f.plate().id().equals(side.plateId()))
                .findFirst();
    }

    private void readVersions(Found of) {
        versions = List.of();
        versionReading.ask(
                progress -> of.library().history(of.plate().id()).stream()
                        .filter(step -> step.entry().isPresent())
                        .toList(),
                history -> {
                    versions = history;
                    show();
                });
    }

    /** Narrows the plates down to those that have all words in title, number, themes or library. */
    void plateWords(String words) {
        plateWords = words;
        show();
    }

    /** Narrows the versions down to those that have all words in day, hand, reason or names. */
    void versionWords(String words) {
        versionWords = words;
        show();
    }

    /** Chooses a plate of those shown. */
    void choosePlate(int index) {
        Found chosen = foundPlates().get(index);
        if (plate.filter(chosen::equals).isEmpty()) {
            plate = Optional.of(chosen);
            version = Optional.empty();
            versionWords = "";
            readVersions(chosen);
            show();
        }
    }

    /** Chooses a version of those shown; the first without words is the plate as it is now. */
    void chooseVersion(int index) {
        version = foundVersions().get(index);
        show();
    }

    /** What is chosen; empty until a plate is. */
    Optional<Place.Side> answer() {
        return plate.map(p -> new Place.Side(
                p.library(),
                p.plate().id(),
                version,
                p.plate().title()
                        + version.flatMap(this::step)
                                .map(s -> ", " + ReadSide.words(s))
                                .orElse("")));
    }

    private Optional<PlateVersion> step(String id) {
        return versions.stream()
                .filter(s -> s.version().id().equals(id) || s.names().contains(id))
                .findFirst();
    }

    private List<Found> foundPlates() {
        boolean several = room.open().size() > 1;
        return plates.stream()
                .filter(f -> has(plateText(f, several) + " " + f.plate().themes(), plateWords))
                .toList();
    }

    private String plateText(Found found, boolean several) {
        return ReadSide.title(found.plate()) + (several ? " · " + room.nameOf(found.library()) : "");
    }

    private List<Optional<String>> foundVersions() {
        List<Optional<String>> found = new ArrayList<>();
        if (plate.isPresent() && has(NOW, versionWords)) {
            found.add(Optional.empty());
        }
        versions.stream()
                .filter(step ->
                        has(versionText(step) + " " + Dates.day(step.version().on()), versionWords))
                .forEach(step -> found.add(Optional.of(step.version().id())));
        return found;
    }

    private static String versionText(PlateVersion step) {
        String names = String.join(", ", step.names());
        boolean isDamaged = step.entry().flatMap(Entry::plate).isEmpty();
        return Dates.shortDay(step.version().on()) + ", "
                + step.version().inNameOf().name()
                + (names.isEmpty() ? "" : " · “" + names + "”") + (isDamaged ? " · damaged" : "") + "\n"
                + step.version().reason().lines().findFirst().orElse("");
    }

    private static boolean has(String text, String words) {
        String all = text.toLowerCase(Locale.ROOT);
        for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private void show() {
        boolean several = room.open().size() > 1;
        List<Found> found = foundPlates();
        List<Optional<String>> ids = foundVersions();
        List<String> texts = ids.stream()
                .map(id -> id.flatMap(this::step)
                        .map(SidePicker::versionText)
                        .orElse(NOW + "\nThe newest version, always"))
                .toList();
        view.accept(new PickerState(
                found.stream().map(f -> plateText(f, several)).toList(),
                plate.map(found::indexOf).orElse(-1),
                texts,
                ids.indexOf(version),
                isReading ? PickerState.Reading.ON : PickerState.Reading.OVER));
    }
}
