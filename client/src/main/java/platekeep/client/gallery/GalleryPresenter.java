package platekeep.client.gallery;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import platekeep.client.draft.Drafts;
import platekeep.client.gallery.tag.TagView;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.plate.begin.Palettes;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.model.find.Summary;
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
    private final Holdings holdings;
    private final Narrowing narrowing;

    public GalleryPresenter(Workroom room, Drafts drafts, GalleryView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        this.narrowing = new Narrowing(room, view, this::holdings);
        this.holdings = new Holdings(room, drafts, narrowing::again);
        room.listen(this);
    }

    private Holdings holdings() {
        return holdings;
    }

    /** What is looked for. */
    public Narrowing narrowing() {
        return narrowing;
    }

    /** The gallery comes to the front; with no library open yet it says so. */
    public void entered() {
        narrowing.show();
    }

    @Override
    public void librariesChanged() {
        narrowing.librariesAre(room.open().stream().map(room::nameOf).toList());
        holdings.librariesChanged();
    }

    @Override
    public void contentChanged(Library library) {
        holdings.read(library);
    }

    @Override
    public void draftsChanged() {
        room.open().forEach(holdings::readDrafts);
    }

    private Optional<Stock.Item> item(Card card) {
        return Optional.ofNullable(narrowing.held().items().get(card.key()));
    }

    /** Opens a plate; for a damaged file, says what is wrong with it. */
    public void open(Card card) {
        item(card)
                .ifPresent(item -> item.plate()
                        .ifPresentOrElse(
                                plate -> room.go(new Place.OnePlate(item.library(), plate.id())),
                                () -> room.front().trouble(Card.reasons(item.entry()))));
    }

    /** The plates of cards; damaged files are none. */
    List<Place.OnePlate> plates(List<Card> cards) {
        return cards.stream()
                .flatMap(card -> item(card).stream())
                .flatMap(item -> item.plate().map(plate -> new Place.OnePlate(item.library(), plate.id())).stream())
                .toList();
    }

    /** The plates of cards that are saved in a library, with what they are found by. */
    public List<TagView.Chosen> taggable(List<Card> cards) {
        return cards.stream()
                .filter(card -> item(card).isPresent() && card.summary().isPresent())
                .map(card -> new TagView.Chosen(
                        item(card).get().library(), card.summary().get()))
                .toList();
    }

    /** What all plates of the open libraries are found by. */
    public List<Summary> summaries() {
        return narrowing.held().index().all();
    }

    /**
     * Whether all plates of the open libraries are known; where they are not, says that it has to wait. What is done to
     * a whole library must not be done to its first plates only.
     */
    public boolean isAllRead() {
        if (holdings.isReading() || room.isOpening()) {
            room.front().say("The plates are still being read. Try again when all of them are there.");
            return false;
        }
        return true;
    }

    /** Shows what is like a plate. */
    public void likeThis(Card card) {
        item(card)
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
        return item(card)
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
        view.askNewPlate(libraries.stream().map(room::nameOf).toList(), names).ifPresent(asked -> {
            Palette palette =
                    asked.palette().map(i -> palettes.get(i).palette()).orElse(Begun.FIRST_COLOURS);
            Library library = libraries.get(asked.library());
            keep(library, Begun.blank(UUID.randomUUID().toString(), asked, palette, designers(library)));
        });
    }

    /** Begins a new plate from another, of which it is a copy at first. */
    public void beginFrom(Card card) {
        item(card)
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
        item(card)
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
