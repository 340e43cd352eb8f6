package platekeep.client.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.MemoryLibrary;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
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
        assertThat(view.state.themes())
                .containsExactly(
                        new Facet("seaside", 2, false), new Facet("boats", 1, false), new Facet("kites", 1, false));
        assertThat(view.state.libraries()).isEmpty();
        assertThat(card("Kite").size()).isEqualTo("9 pleats, 3 rows");
    }

    @Test
    void wordsThemesAndAgesNarrowItDown() {
        gallery.words("boat");
        assertThat(titles()).containsExactly("Boat");
        assertThat(view.state.summary()).isEqualTo("1 of 2 plates");
        gallery.clear();
        gallery.turnTheme("kites");
        assertThat(titles()).containsExactly("Kite");
        assertThat(view.state.themes()).contains(new Facet("kites", 1, true));
        gallery.turnAge("toddler");
        assertThat(titles()).isEmpty();
        gallery.turnTheme("kites");
        assertThat(titles()).containsExactly("Boat");
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
        assertThat(view.state.libraries()).contains(new Facet("Archive", 1, false), new Facet("Harbour", 2, false));
        gallery.turnLibrary("Archive");
        assertThat(titles()).containsExactly("Anchor");
        test.room.close(archive);
        assertThat(titles()).containsExactly("Boat", "Kite");
        assertThat(view.state.libraries()).isEmpty();
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

        @Override
        public void show(GalleryState newState) {
            state = newState;
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
