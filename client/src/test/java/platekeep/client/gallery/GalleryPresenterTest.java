package platekeep.client.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.MemoryLibrary;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.LaterTasks;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.client.room.Workroom;
import platekeep.client.settings.Settings;
import platekeep.client.task.SameThreadTasks;
import platekeep.model.find.Group;
import platekeep.model.find.Order;
import platekeep.model.plate.Age;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.text.Problem;

class GalleryPresenterTest {
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final View view = new View();
    private GalleryPresenter gallery;

    @BeforeEach
    void openALibraryOfTwo() throws LibraryException {
        test = new TestRoom(folder);
        save(test.library, plate(KITE, "Kite", List.of("kites", "seaside"), Age.CHILD));
        save(test.library, plate(BOAT, "Boat", List.of("boats", "seaside"), Age.TODDLER));
        gallery = new GalleryPresenter(test.room, test.drafts, view);
        test.open();
    }

    @Test
    void aLibraryThatIsBeingOpenedIsNeitherMissingNorWholeYet() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        Workroom room =
                new Workroom(test.libraries, new LaterTasks(waiting), Settings.in(folder.resolve("later.properties")));
        room.frontIs(test.front);
        View seen = new View();
        GalleryPresenter later = new GalleryPresenter(room, test.drafts, seen);

        room.open(test.library.folder(), opened -> {});
        later.entered();
        assertThat(seen.state.isReading()).isTrue();
        assertThat(seen.state.isRoomEmpty()).isFalse();
        assertThat(later.isAllRead()).isFalse();

        while (!waiting.isEmpty()) {
            waiting.pop().run();
        }
        assertThat(seen.state.isReading()).isFalse();
        assertThat(seen.state.cards()).hasSize(2);
        assertThat(later.isAllRead()).isTrue();

        room.open(folder.resolve("no-library"), opened -> {});
        assertThat(later.isAllRead()).isFalse();
        while (!waiting.isEmpty()) {
            waiting.pop().run();
        }
        assertThat(later.isAllRead()).isTrue();
    }

    @Test
    void platesAreSeenAndFoundBeforeDraftsAreLookedForAndBeforeTheDictionaryIsMade() throws LibraryException {
        String begun = "00000000-0000-4000-8000-000000000003";
        test.drafts.keep(
                test.library.folder(), plate(begun, "Kite with a tail", List.of("kites"), Age.CHILD), Optional.empty());
        Deque<Runnable> waiting = new ArrayDeque<>();
        Workroom room =
                new Workroom(test.libraries, new LaterTasks(waiting), Settings.in(folder.resolve("seen.properties")));
        room.frontIs(test.front);
        View seen = new View();
        GalleryPresenter later = new GalleryPresenter(room, test.drafts, seen);
        room.open(test.library.folder(), opened -> {});
        while (seen.state == null || seen.state.isReading()) {
            waiting.pop().run();
        }
        assertThat(seen.state.cards()).extracting(Card::title).containsExactly("Boat", "Kite");
        assertThat(waiting).isNotEmpty();

        later.narrowing().words("kit");
        waiting.removeLast().run();
        assertThat(seen.state.cards()).extracting(Card::title).containsExactly("Kite");

        while (!waiting.isEmpty()) {
            waiting.pop().run();
        }
        assertThat(seen.state.cards()).extracting(Card::title).containsExactly("Kite", "Kite with a tail");
    }

    @Test
    void theFirstScreenfulIsSeenBeforeTheRestIsRead() throws LibraryException {
        int many = Library.SCREENFUL + 40;
        for (int i = 0; i < many; i++) {
            save(test.library, plate("00000000-0000-4000-8000-%012d".formatted(i), "Plate " + i, List.of(), Age.CHILD));
        }
        View seen = new View();
        seen.isSlow = true;
        Workroom room =
                new Workroom(test.libraries, new SameThreadTasks(), Settings.in(folder.resolve("first.properties")));
        room.frontIs(test.front);
        GalleryPresenter first = new GalleryPresenter(room, test.drafts, seen);

        room.open(test.library.folder(), opened -> {});
        assertThat(seen.state.cards()).hasSize(Library.SCREENFUL);
        assertThat(seen.state.isReading()).isTrue();
        assertThat(first.isAllRead()).isFalse();

        seen.whenSeen.run();
        assertThat(seen.state.cards()).hasSize(many);
        assertThat(seen.state.isReading()).isFalse();
        assertThat(first.isAllRead()).isTrue();
    }

    @Test
    void aLibraryThatIsClosedWhileItsFirstPlatesAreSeenIsNotReadOn() {
        View seen = new View();
        seen.isSlow = true;
        Workroom room =
                new Workroom(test.libraries, new SameThreadTasks(), Settings.in(folder.resolve("closed.properties")));
        room.frontIs(test.front);
        new GalleryPresenter(room, test.drafts, seen);
        room.open(test.library.folder(), opened -> {});
        Runnable readOn = seen.whenSeen;
        room.close(room.open().get(0));
        readOn.run();
        assertThat(seen.state.cards()).isEmpty();
        assertThat(seen.state.isRoomEmpty()).isTrue();
        assertThat(seen.state.isReading()).isFalse();
    }

    private static Plate plate(String id, String title, List<String> themes, Age age) {
        return TestPlates.block(id, title)
                .edit()
                .themes(themes)
                .ages(List.of(age))
                .build();
    }

    private static void save(MemoryLibrary library, Plate plate) throws LibraryException {
        library.save(new Saving(List.of(new Change.PutPlate(plate)), "Drawn", Optional.empty(), Optional.empty()));
    }

    private List<String> titles() {
        return view.state.cards().stream().map(Card::title).toList();
    }

    private Card card(String title) {
        return view.state.cards().stream()
                .filter(c -> c.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void platesAreShownByTitleWithTheirCounts() {
        assertThat(titles()).containsExactly("Boat", "Kite");
        assertThat(view.state.summary()).isEqualTo("2 plates");
        assertThat(counts(Group.THEME)).containsExactly("seaside 2", "boats 1", "kites 1");
        assertThat(counts(Group.LIBRARY)).isEmpty();
        assertThat(card("Kite").size()).isEqualTo("9 pleats, 3 rows");
    }

    private List<String> counts(Group group) {
        return view.state.sections().stream()
                .filter(section -> section.group() == group)
                .flatMap(section -> section.values().stream())
                .map(value -> value.word() + " " + value.count() + (value.chosen() ? " chosen" : ""))
                .toList();
    }

    @Test
    void wordsThemesAndAgesNarrowItDown() {
        gallery.narrowing().words("boat");
        assertThat(titles()).containsExactly("Boat");
        assertThat(view.state.summary()).isEqualTo("1 of 2 plates");
        gallery.narrowing().clear();
        gallery.narrowing().turn(Group.THEME, "kites");
        assertThat(titles()).containsExactly("Kite");
        assertThat(counts(Group.THEME)).containsExactly("seaside 2", "boats 1", "kites 1 chosen");
        gallery.narrowing().turn(Group.AGE, "toddler");
        assertThat(titles()).isEmpty();
        gallery.narrowing().turn(Group.THEME, "kites");
        assertThat(titles()).containsExactly("Boat");
        gallery.narrowing().turn(Group.THEME, "boats");
        gallery.narrowing().turn(Group.THEME, "kites");
        assertThat(titles()).containsExactly("Boat");
        gallery.narrowing().turnMatch(Group.THEME);
        assertThat(titles()).isEmpty();
    }

    @Test
    void anAgeIsTypedInMonthsOrYearsAndASizeAsARange() {
        assertThat(gallery.narrowing().typed(Group.AGE, "18 months")).isEmpty();
        assertThat(titles()).containsExactly("Boat");
        assertThat(gallery.narrowing().typed(Group.AGE, "4 years")).isEmpty();
        assertThat(titles()).containsExactly("Kite");
        assertThat(gallery.narrowing().typed(Group.AGE, "soon")).contains("Type an age as 18 months or 2 years.");
        assertThat(titles()).containsExactly("Kite");
        gallery.narrowing().clear();
        assertThat(gallery.narrowing().typed(Group.PLEATS, "up to 8")).isEmpty();
        assertThat(titles()).isEmpty();
        assertThat(gallery.narrowing().typed(Group.PLEATS, "5-9")).isEmpty();
        assertThat(titles()).containsExactly("Boat", "Kite");
        assertThat(gallery.narrowing().typed(Group.PLEATS, "wide"))
                .contains("Type a range as 60-90, up to 90, or from 60.");
    }

    @Test
    void twoLibrariesOfOneNameAreToldApartOnCardsAndInTheListToNarrowDown() throws LibraryException {
        MemoryLibrary other =
                new MemoryLibrary(Path.of("/elsewhere/attic").toAbsolutePath(), "Harbour", Optional.of(TestRoom.WENNA));
        save(other, plate(BOAT, "Boat", List.of("boats"), Age.TODDLER));
        test.libraries.put(other);

        test.room.open(other.folder(), opened -> {});

        assertThat(view.state.cards())
                .extracting(Card::library)
                .containsExactlyInAnyOrder("Harbour (Harbour)", "Harbour (Harbour)", "attic (Harbour)");
        gallery.narrowing().turn(Group.LIBRARY, "attic (Harbour)");
        assertThat(titles()).containsExactly("Boat");
        test.room.close(other);
        assertThat(view.state.cards()).extracting(Card::library).containsOnly("Harbour");
        assertThat(view.state.query().isOpen()).isTrue();
    }

    @Test
    void aNameOfAVersionIsFoundAndToldWithItsDay() throws LibraryException {
        String version = test.library.history(KITE).get(0).version().id();
        test.library.nameVersion(KITE, version, "Spring class 2026");
        test.room.changed(test.library);

        gallery.narrowing().words("class");

        assertThat(titles()).containsExactly("Kite");
        assertThat(view.state.cards().get(0).foundWords()).isEqualTo("\"Spring class 2026\", 2 Mar 2026");
        gallery.narrowing().words("kite");
        assertThat(view.state.cards().get(0).foundWords()).isEmpty();
    }

    @Test
    void aLongReasonIsToldFromShortlyBeforeTheWordOn() throws LibraryException {
        Plate kite = plate(KITE, "Kite", List.of("kites"), Age.CHILD);
        test.library.save(new Saving(
                List.of(new Change.PutPlate(kite)),
                "Tail in navy and brick, both sides, with bows for the regatta of the harbour",
                Optional.empty(),
                Optional.empty()));
        test.room.changed(test.library);

        gallery.narrowing().words("regattas");

        assertThat(view.state.cards().get(0).foundWords()).isEqualTo("4 Mar 2026: … for the regatta of the harbour");
    }

    @Test
    void aSlipOfTypingIsToldOf() {
        gallery.narrowing().words("kiet");
        assertThat(titles()).containsExactly("Kite");
        assertThat(view.state.hint()).isEqualTo("No plate says \"kiet\"; shown for kite, kites.");
        gallery.narrowing().words("kite");
        assertThat(view.state.hint()).isEmpty();
    }

    @Test
    void aTimeAmongTheWordsIsToldOf() {
        gallery.narrowing().words("kite since May 2025");
        assertThat(titles()).containsExactly("Kite");
        assertThat(view.state.hint()).isEqualTo("Since May 2025: plates with a version made then.");
        gallery.narrowing().words("kite before 2001");
        assertThat(titles()).isEmpty();
    }

    @Test
    void whatVersionsTellIsFoundTooAndTheYearTheyWereMadeIn() {
        gallery.narrowing().words("drawn");
        assertThat(titles()).containsExactly("Boat", "Kite");
        assertThat(counts(Group.YEAR)).containsExactly("2026 2");
    }

    @Test
    void columnsSortBothWays() {
        gallery.narrowing().sortBy(Order.By.TITLE);
        assertThat(titles()).containsExactly("Boat", "Kite");
        gallery.narrowing().sortBy(Order.By.TITLE);
        assertThat(titles()).containsExactly("Kite", "Boat");
        gallery.narrowing().sortBy(Order.By.AGES);
        assertThat(titles()).containsExactly("Boat", "Kite");
    }

    @Test
    void aSearchIsKeptUnderANameAskedAgainRenamedAndForgotten() {
        gallery.narrowing().words("boat");
        gallery.narrowing().turn(Group.AGE, "toddler");
        gallery.narrowing().save("Boats for toddlers");
        gallery.narrowing().clear();
        assertThat(titles()).hasSize(2);
        gallery.narrowing().reopen("Boats for toddlers");
        assertThat(titles()).containsExactly("Boat");
        assertThat(counts(Group.AGE)).contains("toddler 1 chosen");
        gallery.narrowing().rename("Boats for toddlers", "Boats, small");
        assertThat(view.state.saved()).containsExactly("Boats, small");
        assertThat(Settings.in(folder.resolve("settings.properties")).get("search.name.1"))
                .contains("Boats, small");
        gallery.narrowing().forget("Boats, small");
        assertThat(view.state.saved()).isEmpty();
    }

    @Test
    void agesThatFollowEachOtherAreToldInFewWords() {
        assertThat(Card.ages(List.of(Age.INFANT, Age.TODDLER, Age.CHILD))).isEqualTo("infant to child");
        assertThat(Card.ages(List.of(Age.INFANT, Age.TODDLER))).isEqualTo("infant, toddler");
        assertThat(Card.ages(List.of(Age.NEWBORN, Age.INFANT, Age.TODDLER, Age.GROWN_UP)))
                .isEqualTo("newborn to toddler, grown-up");
    }

    @Test
    void whatIsChosenStaysChosenWhateverChangesUnderneath() throws LibraryException {
        Chosen chosen = new Chosen();
        chosen.during(view.state.cards(), () -> {});
        chosen.model().setSelectionInterval(1, 1);
        assertThat(chosen.cards()).extracting(Card::title).containsExactly("Kite");
        save(test.library, plate("00000000-0000-4000-8000-000000000009", "Anchor", List.of(), Age.CHILD));
        test.room.changed(test.library);
        chosen.during(view.state.cards(), () -> {});
        assertThat(chosen.cards()).extracting(Card::title).containsExactly("Kite");
        gallery.narrowing().words("boat");
        chosen.during(view.state.cards(), () -> {});
        assertThat(chosen.cards()).isEmpty();
        gallery.narrowing().clear();
        chosen.during(view.state.cards(), () -> {});
        assertThat(chosen.cards()).extracting(Card::title).containsExactly("Kite");
    }

    @Test
    void aDamagedFileIsShownWithItsReasonAndStopsNothing() {
        test.library.damage(new Entry.Damaged(
                "plates/b/broken.json",
                "x",
                List.of(new Problem(
                        "broken.json", 31, 5, Optional.of(3), Optional.empty(), "row-length", "a place is missing"))));
        test.room.changed(test.library);
        assertThat(titles()).containsExactly("Boat", "Kite", "plates/b/broken.json");
        Card broken = card("plates/b/broken.json");
        assertThat(broken.marks()).containsExactly(Card.Mark.DAMAGED);
        assertThat(broken.size()).isEqualTo("broken.json, line 31, row 3: a place is missing");
        gallery.open(broken);
        assertThat(test.front.troubles).containsExactly("broken.json, line 31, row 3: a place is missing");
    }

    @Test
    void aPlateIsOpened() {
        gallery.open(card("Kite"));
        assertThat(test.front.places).containsExactly(new Place.OnePlate(test.library, KITE));
    }

    @Test
    void aNewPlateIsADraftUntilItIsSaved() {
        view.newPlate = Optional.of(new GalleryView.NewPlate(0, "Gull", 40, 20, Optional.empty()));
        gallery.begin();
        assertThat(titles()).contains("Gull");
        assertThat(card("Gull").marks()).containsExactly(Card.Mark.DRAFT);
        Plate begun = card("Gull").plate().orElseThrow();
        assertThat(begun.rows()).hasSize(20).allMatch(row -> row.cells().length() == 39);
        assertThat(begun.designers()).containsExactly("Wenna Tarrow");
        assertThat(test.front.places).containsExactly(new Place.OnePlate(test.library, begun.id()));
        assertThat(test.library.history(begun.id())).isEmpty();
    }

    @Test
    void aNewPlateCanTakeOverTheColoursOfAnother() {
        view.newPlate = Optional.of(new GalleryView.NewPlate(0, "Gull", 40, 20, Optional.of(0)));
        gallery.begin();
        assertThat(view.palettes).containsExactly("Boat", "Kite");
        assertThat(card("Gull").plate().orElseThrow().palette())
                .isEqualTo(card("Boat").plate().orElseThrow().palette());
    }

    @Test
    void aNewPlateCanTakeOverTheSharedColoursOfASeries() throws LibraryException {
        Palette shared = Palette.EMPTY.with('t', new Colour("tar", "#22262B", 4));
        Series days = new Series(
                "5c9e0c8e-3c62-4b0f-8f8e-8f2d0d6b7a11", "Days", List.of(KITE), shared, List.of(), Unknown.NONE);
        test.library.save(
                new Saving(List.of(new Change.PutSeries(days)), "Days begun", Optional.empty(), Optional.empty()));
        view.newPlate = Optional.of(new GalleryView.NewPlate(0, "Gull", 40, 20, Optional.of(0)));
        gallery.begin();
        assertThat(view.palettes).containsExactly("the series Days", "Boat", "Kite");
        assertThat(card("Gull").plate().orElseThrow().palette()).isEqualTo(shared);
    }

    @Test
    void aPlateStartedFromAnotherRemembersWhichVersionItCameFrom() {
        gallery.beginFrom(card("Kite"));
        Plate begun = card("Kite, new").plate().orElseThrow();
        assertThat(begun.id()).isNotEqualTo(KITE);
        assertThat(begun.fromPlate()).hasValueSatisfying(from -> {
            assertThat(from.id()).isEqualTo(KITE);
            assertThat(from.version())
                    .isEqualTo(test.library.history(KITE).get(0).version().id());
        });
    }

    @Test
    void aPlatePutAwayCanBeBroughtBack() {
        view.reason = Optional.of("Not ours");
        gallery.putAway(card("Kite"));
        assertThat(titles()).containsExactly("Boat");
        view.putAwayChoice = Optional.of(0);
        gallery.bringBack();
        assertThat(view.lines).singleElement().asString().startsWith("Kite, last changed on ");
        assertThat(titles()).containsExactly("Boat", "Kite");
    }

    @Test
    void severalLibrariesAreShownTogetherAndOneByOne() throws LibraryException {
        MemoryLibrary archive = new MemoryLibrary("Archive", Optional.of(TestRoom.WENNA));
        save(archive, plate("00000000-0000-4000-8000-000000000003", "Anchor", List.of(), Age.CHILD));
        test.libraries.put(archive);
        test.room.open(archive.folder(), opened -> {});
        assertThat(titles()).hasSize(3);
        assertThat(counts(Group.LIBRARY)).containsExactly("Harbour 2", "Archive 1");
        gallery.narrowing().turn(Group.LIBRARY, "Archive");
        assertThat(titles()).containsExactly("Anchor");
        test.room.close(archive);
        assertThat(titles()).containsExactly("Boat", "Kite");
        assertThat(counts(Group.LIBRARY)).isEmpty();
    }

    @Test
    void withoutALibraryANewPlateIsRefusedWithASentence() {
        test.room.close(test.library);
        assertThat(view.state.isRoomEmpty()).isTrue();
        gallery.begin();
        assertThat(test.front.troubles).singleElement().asString().contains("library");
    }

    /** Keeps what the gallery would show, and answers as it was told to. */
    private static final class View implements GalleryView {
        private GalleryState state;
        private Optional<NewPlate> newPlate = Optional.empty();
        private Optional<String> reason = Optional.empty();
        private Optional<Integer> putAwayChoice = Optional.empty();
        private List<String> lines = List.of();
        private List<String> palettes = List.of();
        private boolean isSlow;
        private Runnable whenSeen = () -> {};

        @Override
        public void show(GalleryState newState) {
            state = newState;
        }

        @Override
        public void whenSeen(Runnable then) {
            whenSeen = then;
            if (!isSlow) {
                then.run();
            }
        }

        @Override
        public Optional<NewPlate> askNewPlate(List<String> libraries, List<String> newPalettes) {
            palettes = newPalettes;
            return newPlate;
        }

        @Override
        public Optional<String> askPutAway(String title) {
            return reason;
        }

        @Override
        public Optional<Integer> askPutAwayPlate(List<String> newLines) {
            lines = newLines;
            return putAwayChoice;
        }
    }
}
