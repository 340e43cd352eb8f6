package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.plate.begin.Palettes;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.task.Tasks;
import platekeep.model.find.Group;
import platekeep.model.find.Query;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;

/**
 * What the gallery does: reads the open libraries, narrows their plates down, begins and opens plates, puts them away
 * and brings them back. A library is read anew when it has something new.
 */
public final class GalleryPresenter implements RoomListener {
    private final Workroom room;
    private final Drafts drafts;
    private final GalleryView view;
    private final Map<Library, Stock> stocks = new HashMap<>();
    private final Map<Library, Set<String>> unsent = new HashMap<>();
    private final Map<Library, List<KeptDraft>> drawn = new HashMap<>();
    private final Map<Library, Tasks.Running> reading = new HashMap<>();
    private final Set<Library> greeted = new HashSet<>();
    private final Set<String> chosenLibraries = new TreeSet<>();
    private Query query = Query.ALL;
    private Shown shown = new Shown(List.of(), Query.ALL, Set.of());

    public GalleryPresenter(Workroom room, Drafts drafts, GalleryView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        room.listen(this);
    }

    /** The gallery comes to the front; with no library open yet it says so. */
    public void entered() {
        show();
    }

    @Override
    public void librariesChanged() {
        List<Library> open = room.open();
        stocks.keySet().retainAll(open);
        greeted.retainAll(open);
        unsent.keySet().retainAll(open);
        drawn.keySet().retainAll(open);
        reading.keySet().retainAll(open);
        chosenLibraries.retainAll(open.stream().map(Library::name).toList());
        open.stream().filter(library -> !stocks.containsKey(library)).forEach(this::read);
        show();
    }

    @Override
    public void contentChanged(Library library) {
        read(library);
    }

    @Override
    public void draftsChanged() {
        room.open().forEach(this::readDrafts);
    }

    private void read(Library library) {
        Tasks.Running before = reading.get(library);
        if (before != null) {
            before.cancel();
        }
        reading.put(
                library,
                room.work(
                        progress -> Stock.read(library, progress),
                        stock -> {
                            reading.remove(library);
                            stocks.put(library, stock);
                            show();
                            readDrafts(library);
                            readUnsent(library);
                        },
                        this::show));
        show();
    }

    private void readDrafts(Library library) {
        room.work((Progress progress) -> drafts.all(library.folder()), found -> {
            drawn.put(library, found);
            show();
            if (greeted.add(library) && !found.isEmpty()) {
                room.front().say(drafts(found));
            }
        });
    }

    private static String drafts(List<KeptDraft> found) {
        String titles =
                found.stream().map(draft -> "\"" + draft.plate().title() + "\"").collect(Collectors.joining(", "));
        return found.size() == 1
                ? "A draft is not saved as a version yet: " + titles + "."
                : found.size() + " drafts are not saved as versions yet: " + titles + ".";
    }

    private void readUnsent(Library library) {
        room.work((Progress progress) -> library.unsent(), ids -> {
            unsent.put(library, ids);
            show();
        });
    }

    /** Looks for other words. */
    public void words(String words) {
        query = query.withWords(words);
        show();
    }

    /** Asks for a theme, or no longer. */
    public void turnTheme(String theme) {
        query = query.turn(Group.THEME, theme);
        show();
    }

    /** Asks for an age, or no longer. */
    public void turnAge(String word) {
        query = query.turn(Group.AGE, word);
        show();
    }

    /** Asks for a series, or no longer. */
    public void turnSeries(String title) {
        query = query.turn(Group.SERIES, title);
        show();
    }

    /** Asks for the plates of a library, or no longer. */
    public void turnLibrary(String name) {
        if (!chosenLibraries.remove(name)) {
            chosenLibraries.add(name);
        }
        show();
    }

    /** Asks for everything again. */
    public void clear() {
        query = Query.ALL;
        chosenLibraries.clear();
        show();
    }

    private void show() {
        List<Stock.Item> items = new ArrayList<>();
        for (Library library : room.open()) {
            Stock stock = stocks.get(library);
            if (stock != null) {
                items.addAll(Begun.withDrafts(stock, drawn.getOrDefault(library, List.of())));
            }
        }
        shown = new Shown(items, query, chosenLibraries);
        boolean isReading = reading.values().stream().anyMatch(running -> !running.over());
        view.show(shown.state(
                room.open(),
                this::marks,
                isReading && stocks.size() < room.open().size()));
    }

    private List<Card.Mark> marks(Stock.Item item) {
        List<Card.Mark> marks = new ArrayList<>();
        Optional<Plate> plate = item.plate();
        if (plate.isEmpty()) {
            marks.add(Card.Mark.DAMAGED);
        }
        plate.filter(Plate::hasClashes).ifPresent(p -> marks.add(Card.Mark.CLASH));
        plate.filter(p -> hasDraft(item.library(), p.id())).ifPresent(p -> marks.add(Card.Mark.DRAFT));
        plate.filter(p -> unsent.getOrDefault(item.library(), Set.of()).contains(p.id()))
                .ifPresent(p -> marks.add(Card.Mark.UNSENT));
        return marks;
    }

    private boolean hasDraft(Library library, String id) {
        return drawn.getOrDefault(library, List.of()).stream()
                .anyMatch(draft -> draft.plate().id().equals(id));
    }

    /** Opens a plate; for a damaged file, says what is wrong with it. */
    public void open(Card card) {
        shown.item(card)
                .ifPresent(item -> item.plate()
                        .ifPresentOrElse(
                                plate -> room.go(new Place.OnePlate(item.library(), plate.id())),
                                () -> room.front().trouble(Shown.reasons(item.entry()))));
    }

    /** The plates of cards; damaged files are none. */
    List<Place.OnePlate> plates(List<Card> cards) {
        return cards.stream()
                .flatMap(card -> shown.item(card).stream())
                .flatMap(item -> item.plate().map(plate -> new Place.OnePlate(item.library(), plate.id())).stream())
                .toList();
    }

    /** Shows what is like a plate. */
    public void likeThis(Card card) {
        shown.item(card)
                .ifPresent(item ->
                        item.plate().ifPresent(plate -> search(new Sought.LikePlate(item.library(), plate))));
    }

    /** Goes to the search by look. */
    public void search(Sought sought) {
        room.go(new Place.Search(sought));
    }

    /** Shows two plates side by side. */
    public void compare(Card before, Card after) {
        side(before).ifPresent(b -> side(after).ifPresent(a -> room.go(new Place.Compare(b, a))));
    }

    private Optional<Place.Side> side(Card card) {
        return shown.item(card)
                .flatMap(item -> item.plate()
                        .map(plate -> new Place.Side(item.library(), plate.id(), Optional.empty(), plate.title())));
    }

    /** Begins a new plate. */
    public void begin() {
        if (room.open().isEmpty()) {
            room.front().trouble("A plate needs a library to lie in. Make a new library or open one first.");
            return;
        }
        List<Library> libraries = room.open();
        room.work(progress -> Palettes.of(libraries, progress), palettes -> begin(libraries, palettes));
    }

    private void begin(List<Library> libraries, List<Palettes.Known> palettes) {
        List<String> names = palettes.stream().map(Palettes.Known::name).toList();
        view.askNewPlate(libraries.stream().map(Library::name).toList(), names).ifPresent(asked -> {
            Palette palette =
                    asked.palette().map(i -> palettes.get(i).palette()).orElse(Begun.FIRST_COLOURS);
            Library library = libraries.get(asked.library());
            keep(library, Begun.blank(UUID.randomUUID().toString(), asked, palette, designers(library)));
        });
    }

    /** Begins a new plate from another, of which it is a copy at first. */
    public void beginFrom(Card card) {
        shown.item(card)
                .ifPresent(item -> item.plate()
                        .ifPresent(plate -> room.work(
                                (Progress progress) -> item.library().history(plate.id()),
                                history -> keep(
                                        item.library(),
                                        Begun.from(
                                                UUID.randomUUID().toString(),
                                                plate,
                                                history.stream()
                                                        .findFirst()
                                                        .map(v -> v.version().id()))))));
    }

    private static List<String> designers(Library library) {
        return library.hand().map(hand -> List.of(hand.name())).orElse(List.of());
    }

    private void keep(Library library, Plate plate) {
        room.work(
                progress -> {
                    drafts.keep(library.folder(), plate, Optional.empty());
                    return plate;
                },
                kept -> {
                    room.draftsChanged();
                    room.go(new Place.OnePlate(library, kept.id()));
                });
    }

    /** Puts a plate away, with a reason. */
    public void putAway(Card card) {
        shown.item(card)
                .ifPresent(item -> item.plate()
                        .ifPresent(plate -> view.askPutAway(plate.title())
                                .ifPresent(reason -> room.withHand(
                                        item.library(),
                                        () -> save(
                                                item.library(),
                                                new Change.PutAway(plate.id()),
                                                reason,
                                                "\"" + plate.title()
                                                        + "\" was put away; it can be brought back at any time.")))));
    }

    /** Shows what was put away, and brings one of them back. */
    public void bringBack() {
        if (room.open().isEmpty()) {
            room.front().trouble("No library is open.");
            return;
        }
        List<Library> open = room.open();
        room.work((Progress progress) -> PutAway.read(open), this::offer);
    }

    private void offer(List<PutAway> all) {
        List<String> lines = all.stream().map(PutAway::words).toList();
        view.askPutAwayPlate(lines)
                .map(all::get)
                .ifPresent(one -> one.plate()
                        .ifPresent(plate -> room.withHand(
                                one.library(),
                                () -> save(
                                        one.library(),
                                        new Change.PutPlate(plate),
                                        "\"" + plate.title() + "\" brought back",
                                        "\"" + plate.title() + "\" is back."))));
    }

    private void save(Library library, Change change, String reason, String done) {
        room.work(
                (Progress progress) ->
                        library.save(new Saving(List.of(change), reason, Optional.empty(), Optional.empty())),
                version -> {
                    room.front().say(done);
                    room.changed(library);
                });
    }
}
