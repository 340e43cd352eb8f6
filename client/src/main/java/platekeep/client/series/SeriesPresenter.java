package platekeep.client.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

/** Shows series, changes them, and saves what was changed as one version. */
public final class SeriesPresenter implements RoomListener {
    private final Workroom room;
    private final SeriesDrafts drafts;
    private final SeriesView view;
    private final SeriesOnHand onHand;
    private final Map<String, Latest<OpenSeries>> keeping = new HashMap<>();
    private Optional<String> current = Optional.empty();
    private Optional<Place.OnePlate> wanted = Optional.empty();
    private List<SharedColours.Group> groups = List.of();
    /** Nothing is read before the screen was looked at once. */
    private boolean isWanted;

    public SeriesPresenter(Workroom room, SeriesDrafts drafts, SeriesView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        this.onHand = new SeriesOnHand(room, drafts, this::arrived);
        room.listen(this);
    }

    /** The screen comes to the front. */
    public void entered() {
        isWanted = true;
        librariesChanged();
    }

    /** Shows a series. */
    public void open(Library library, String seriesId) {
        current = Optional.of(library.folder() + "\n" + seriesId);
        entered();
    }

    /** Shows a plate's place in the series that it is in; in several, in the one that comes first. */
    public void openWith(Library library, String plateId) {
        wanted = Optional.of(new Place.OnePlate(library, plateId));
        entered();
    }

    private void showWanted() {
        if (wanted.isEmpty() || !onHand.hasBegun(wanted.get().library())) {
            return;
        }
        Place.OnePlate plate = wanted.get();
        wanted = Optional.empty();
        List<OpenSeries> with = onHand.of(plate.library()).stream()
                .filter(series -> series.now().plates().contains(plate.plateId()))
                .toList();
        if (with.isEmpty()) {
            room.front().trouble("This plate is in no series yet. Choose a series and put it there with Add plates.");
            return;
        }
        OpenSeries series = with.get(0);
        current = Optional.of(series.key());
        show();
        int at = series.now().plates().indexOf(plate.plateId());
        view.choose(List.of(at));
        String more = with.size() == 1 ? "" : "; it is in " + with.size() + " series";
        room.front()
                .say("Number " + (at + 1) + " of " + series.now().plates().size() + " in \""
                        + series.now().title() + "\"" + more + ".");
    }

    @Override
    public void librariesChanged() {
        onHand.retain();
        if (isWanted) {
            onHand.readNew();
            arrived();
        }
    }

    @Override
    public void contentChanged(Library library) {
        if (isWanted) {
            onHand.read(library);
        }
    }

    private void arrived() {
        show();
        showWanted();
    }

    /** Whether all plates of a series' library are known; where they are not, says that it has to wait. */
    private boolean isAllRead(OpenSeries series) {
        if (series.stock().extent() == OpenSeries.Extent.SOME) {
            room.front().say("The plates are still being read. Try again when all of them are there.");
            return false;
        }
        return true;
    }

    private Optional<OpenSeries> shown() {
        List<OpenSeries> all = onHand.all();
        return all.stream()
                .filter(series -> current.equals(Optional.of(series.key())))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private void show() {
        List<OpenSeries> all = onHand.all();
        Optional<OpenSeries> shown = shown();
        groups = shown.map(series -> SharedColours.of(series.plates())).orElse(List.of());
        view.show(new SeriesWords(room.open().size() > 1, room.names())
                .state(all, shown, groups, onHand.isReading() || room.isOpening()));
        shown.ifPresent(onHand::look);
    }

    /** Shows another series of the list. */
    public void choose(int at) {
        List<OpenSeries> all = onHand.all();
        if (at >= 0 && at < all.size()) {
            current = Optional.of(all.get(at).key());
            show();
        }
    }

    private void change(UnaryOperator<Series> edit) {
        shown().ifPresent(series -> {
            Series changed = edit.apply(series.now());
            if (!changed.equals(series.now())) {
                put(series.with(changed));
                keep(series.with(changed));
                show();
            }
        });
    }

    private void put(OpenSeries changed) {
        current = Optional.of(changed.key());
        onHand.put(changed);
    }

    private void keep(OpenSeries series) {
        keeping.computeIfAbsent(series.key(), key -> new Latest<>(room))
                .ask(
                        progress -> {
                            if (series.isChanged()) {
                                drafts.keep(
                                        series.library().folder(), new SeriesDrafts.Kept(series.saved(), series.now()));
                            } else {
                                drafts.drop(
                                        series.library().folder(),
                                        series.saved().id());
                            }
                            return series;
                        },
                        kept -> {});
    }

    /** Makes sure that all that was changed is on disk; waits for it. */
    public void makeSafe() {
        for (OpenSeries series : onHand.all()) {
            try {
                if (series.isChanged()) {
                    drafts.keep(series.library().folder(), new SeriesDrafts.Kept(series.saved(), series.now()));
                }
            } catch (LibraryException e) {
                room.trouble(e);
            }
        }
    }

    /** Moves plates to before a place of the order; the number of plates is its end. */
    public void move(List<Integer> places, int before) {
        if (!places.isEmpty()) {
            int taken = (int) places.stream().filter(place -> place < before).count();
            change(series -> SeriesEdits.moved(series, Set.copyOf(places), before));
            chooseFrom(before - taken, places.size());
        }
    }

    /** Moves plates one place on, or back with a number below 0. */
    public void shift(List<Integer> places, int by) {
        if (places.isEmpty()) {
            return;
        }
        int first = places.stream().min(Comparator.naturalOrder()).orElseThrow();
        int last = places.stream().max(Comparator.naturalOrder()).orElseThrow();
        Optional<Series> before = shown().map(OpenSeries::now);
        change(series -> SeriesEdits.shifted(series, Set.copyOf(places), by));
        if (!shown().map(OpenSeries::now).equals(before)) {
            chooseFrom(by < 0 ? first - 1 : last + 2 - places.size(), places.size());
        }
    }

    private void chooseFrom(int first, int count) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(first + i);
        }
        view.choose(places);
    }

    /** Takes plates out of the series; they stay in the library. */
    public void remove(List<Integer> places) {
        if (!places.isEmpty()) {
            change(series -> SeriesEdits.without(series, Set.copyOf(places)));
        }
    }

    /** Asks for plates of the library and puts them at the end. */
    public void add() {
        Optional<OpenSeries> series = shown();
        if (series.isEmpty()) {
            room.front().trouble("Make a series first, then put plates to it.");
            return;
        }
        if (!isAllRead(series.get())) {
            return;
        }
        List<Plate> others = series.get().stock().entries().values().stream()
                .flatMap(entry -> entry.plate().stream())
                .filter(plate -> !series.get().now().plates().contains(plate.id()))
                .sorted(Comparator.comparing((Plate plate) -> plate.title().toLowerCase(java.util.Locale.ROOT))
                        .thenComparing(Plate::id))
                .toList();
        List<String> titles = others.stream()
                .map(plate ->
                        plate.title() + plate.number().map(n -> "  ·  " + n).orElse(""))
                .toList();
        List<String> ids =
                view.askPlates(titles).stream().map(others::get).map(Plate::id).toList();
        change(now -> SeriesEdits.added(now, ids));
    }

    /** Gives it another title. */
    public void title(String title) {
        if (title.isBlank()) {
            room.front().trouble("A series needs a title; the old one stays.");
            show();
        } else {
            change(series -> SeriesEdits.titled(series, title.strip()));
        }
    }

    /** Changes its notes. */
    public void notes(List<String> lines) {
        change(series -> SeriesEdits.noted(series, lines));
    }

    /** Keeps the colours that several plates share as the colours of the series, to be chosen from when drawing. */
    public void keepSharedColours() {
        Palette palette = Palette.EMPTY;
        for (SharedColours.Group group : groups) {
            Optional<Character> free = palette.freeKey();
            if (group.kind() == SharedColours.Kind.SAME && free.isPresent()) {
                palette = palette.with(free.get(), group.uses().get(0).colour());
            }
        }
        Palette kept = palette;
        change(series -> SeriesEdits.coloured(series, kept));
        room.front().say(kept.entries().size() + " shared colours are now those of the series.");
    }

    /** Opens a plate. */
    public void openPlate(int place) {
        shown().filter(series -> place >= 0 && place < series.now().plates().size())
                .ifPresent(series -> {
                    String id = series.now().plates().get(place);
                    if (series.stock().plate(id).isPresent() || series.stock().isAwaited(id)) {
                        room.go(new Place.OnePlate(series.library(), id));
                    } else {
                        room.front()
                                .trouble("This plate is not in \""
                                        + room.nameOf(series.library())
                                        + "\": it was put away or moved. Bring it back, or take it out of the series.");
                    }
                });
    }

    /** Asks for a new series and makes it, as one version. */
    public void begin() {
        if (room.open().isEmpty()) {
            room.front().trouble("A series needs a library to lie in. Make a new library or open one first.");
            return;
        }
        List<Library> open = room.open();
        view.askNew(open.stream().map(room::nameOf).toList()).ifPresent(asked -> {
            Library library = open.get(asked.library());
            Series series = new Series(
                    UUID.randomUUID().toString(), asked.title(), List.of(), Palette.EMPTY, List.of(), Unknown.NONE);
            current = Optional.of(library.folder() + "\n" + series.id());
            String reason = "Series \"" + series.title() + "\" begun";
            save(library, List.of(new Change.PutSeries(series)), reason, Optional.empty(), () -> {});
        });
    }

    /** Puts the series away; its plates stay. */
    public void putAway() {
        shown().ifPresent(series -> {
            String title = series.saved().title();
            String question =
                    "The series \"" + title + "\" goes; its plates stay in the library, and the history keeps it.";
            if (view.askConsent(question, "Put away") == SeriesView.Consent.YES) {
                save(
                        series.library(),
                        List.of(new Change.PutSeriesAway(series.saved().id())),
                        "Series \"" + title + "\" put away",
                        series.stock().seen(),
                        () -> drafts.drop(
                                series.library().folder(), series.saved().id()));
            }
        });
    }

    /** Gives up what is not saved. */
    public void giveUp() {
        shown().filter(OpenSeries::isChanged).ifPresent(series -> {
            String question =
                    "What you changed in \"" + series.now().title() + "\" since the last version is given up.";
            if (view.askConsent(question, "Give it up") == SeriesView.Consent.YES) {
                change(now -> series.saved());
            }
        });
    }

    /** Saves what was changed as one version. */
    public void save() {
        Optional<OpenSeries> series = shown().filter(OpenSeries::isChanged);
        if (series.isEmpty()) {
            room.front().trouble("Nothing is changed in this series, so there is no version to save.");
            return;
        }
        OpenSeries changed = series.get();
        view.askReason(SeriesWords.changes(changed.saved(), changed.now()))
                .ifPresent(reason -> save(
                        changed.library(),
                        List.of(new Change.PutSeries(changed.now())),
                        reason,
                        changed.stock().seen(),
                        () -> drafts.drop(
                                changed.library().folder(), changed.saved().id())));
    }

    private interface Afterwards {
        void run() throws LibraryException;
    }

    private void save(
            Library library, List<Change> changes, String reason, Optional<String> seen, Afterwards afterwards) {
        room.withHand(
                library,
                () -> room.save(
                        progress -> {
                            library.save(new Saving(changes, reason, Optional.empty(), seen));
                            afterwards.run();
                            return reason;
                        },
                        saved -> {
                            room.front().say("Saved: " + reason + ".");
                            room.changed(library);
                        }));
    }

    /** Makes the colours of a group one thread in all plates, after showing what that changes; one version. */
    public void makeEqual(int at) {
        Optional<OpenSeries> series = shown();
        if (series.isEmpty()
                || at < 0
                || at >= groups.size()
                || groups.get(at).uses().size() < 2) {
            room.front().trouble("Choose colours that differ a little first; these are the same already.");
            return;
        }
        if (!isAllRead(series.get())) {
            return;
        }
        SharedColours.Group group = groups.get(at);
        List<List<SeriesView.Preview>> previews = group.uses().stream()
                .map(use -> SeriesWords.previews(series.get(), group, use.colour()))
                .toList();
        view.askThread(group.uses().stream().map(SharedColours.Use::colour).toList(), previews)
                .map(group.uses()::get)
                .ifPresent(use -> {
                    List<Change> changes = series.get().plates().stream()
                            .filter(plate -> !SharedColours.equal(plate, group, use.colour())
                                    .equals(plate))
                            .map(plate -> (Change) new Change.PutPlate(SharedColours.equal(plate, group, use.colour())))
                            .toList();
                    String reason = use.colour().name() + " made the same in " + changes.size()
                            + (changes.size() == 1 ? " plate" : " plates") + " of \""
                            + series.get().now().title() + "\"";
                    save(
                            series.get().library(),
                            changes,
                            reason,
                            series.get().stock().seen(),
                            () -> {});
                });
    }
}
