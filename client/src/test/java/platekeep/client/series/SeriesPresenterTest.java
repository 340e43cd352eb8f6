package platekeep.client.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.room.LaterTasks;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.client.room.Workroom;
import platekeep.client.settings.Settings;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

class SeriesPresenterTest {
    private static final String SERIES = "00000000-0000-4000-8000-0000000000aa";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final View view = new View();
    private SeriesPresenter presenter;

    @BeforeEach
    void aSeriesOfFour() throws LibraryException {
        test = new TestRoom(folder);
        save(
                "Begun",
                new Change.PutPlate(plate(1, "Kite", new Colour("brick", "#A63C2B", 4))),
                new Change.PutPlate(plate(2, "Boat", new Colour("brick", "#A63C2B", 3))),
                new Change.PutPlate(plate(3, "Crab", new Colour("red", "#A83D2C", 4))),
                new Change.PutPlate(plate(4, "Gull", new Colour("chalk", "#F4F1E8", 4))),
                new Change.PutPlate(plate(5, "Snail", new Colour("brick", "#2C5F86", 4))),
                new Change.PutSeries(series(1, 2, 3, 4)));
        presenter = presenter(view);
        test.open();
        presenter.entered();
    }

    @Test
    void thePlatesThatAreLookedAtAreThereBeforeAllAreRead() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        Workroom slow =
                new Workroom(test.libraries, new LaterTasks(waiting), Settings.in(folder.resolve("slow.properties")));
        slow.frontIs(test.front);
        View seen = new View();
        SeriesPresenter later = new SeriesPresenter(slow, new SeriesDrafts(folder.resolve("slow")), seen);
        later.entered();
        slow.open(test.library.folder(), opened -> {});
        while (seen.state.all().isEmpty()) {
            waiting.removeFirst().run();
        }
        assertThat(seen.state.all()).hasSize(1);
        assertThat(seen.state.plates()).extracting(SeriesState.Card::words).containsOnly("is being read");
        later.add();
        assertThat(test.front.said).contains("The plates are still being read. Try again when all of them are there.");
        // all plates wait behind those of the series in front
        waiting.removeLast().run();
        assertThat(seen.state.plates())
                .extracting(SeriesState.Card::title)
                .containsExactly("Kite", "Boat", "Crab", "Gull");
        assertThat(seen.state.isReading()).isTrue();
        while (!waiting.isEmpty()) {
            waiting.removeFirst().run();
        }
        assertThat(seen.state.isReading()).isFalse();
        assertThat(seen.state.plates()).hasSize(4);
    }

    private SeriesPresenter presenter(View of) {
        return new SeriesPresenter(test.room, new SeriesDrafts(folder.resolve("series")), of);
    }

    private static String id(int number) {
        return "00000000-0000-4000-8000-00000000000" + number;
    }

    private static Plate plate(int number, String title, Colour colour) {
        return new Draft(id(number), title)
                .palette(Palette.EMPTY.with('b', colour))
                .pleats(Optional.of(new Pleats(1, 4)))
                .rows(List.of(Row.of("aaaa", "bbb")))
                .build();
    }

    private static Series series(int... plates) {
        List<String> ids = new ArrayList<>();
        for (int plate : plates) {
            ids.add(id(plate));
        }
        return new Series(SERIES, "Harbour Days", ids, Palette.EMPTY, List.of(), Unknown.NONE);
    }

    private void save(String reason, Change... changes) throws LibraryException {
        test.library.save(new Saving(List.of(changes), reason, Optional.empty(), Optional.empty()));
    }

    private List<String> titles() {
        return view.state.plates().stream().map(SeriesState.Card::title).toList();
    }

    private Series saved() {
        return test.library.series().get(0);
    }

    @Test
    void platesAreShownInTheirPlaces() {
        assertThat(view.state.all()).extracting(SeriesState.Line::title).containsExactly("Harbour Days");
        assertThat(titles()).containsExactly("Kite", "Boat", "Crab", "Gull");
        assertThat(view.state.plates()).extracting(SeriesState.Card::number).containsExactly(1, 2, 3, 4);
        presenter.openPlate(2);
        assertThat(test.front.places).containsExactly(new Place.OnePlate(test.library, id(3)));
    }

    @Test
    void platesAreMovedByKeysAndByDraggingAndStayChosen() {
        presenter.shift(List.of(0), 1);
        assertThat(titles()).containsExactly("Boat", "Kite", "Crab", "Gull");
        assertThat(view.chosen).containsExactly(1);
        presenter.shift(List.of(1), -1);
        presenter.shift(List.of(0), -1);
        assertThat(titles()).containsExactly("Kite", "Boat", "Crab", "Gull");
        presenter.move(List.of(0, 2), 4);
        assertThat(titles()).containsExactly("Boat", "Gull", "Kite", "Crab");
        assertThat(view.chosen).containsExactly(2, 3);
        presenter.move(List.of(3), 0);
        assertThat(titles()).containsExactly("Crab", "Boat", "Gull", "Kite");
        assertThat(view.state.isChanged()).isTrue();
        assertThat(test.library.versions(10)).hasSize(1);

        presenter.add();
        presenter.remove(List.of(0));
        presenter.title("Harbour Weeks");
        presenter.notes(List.of("For the spring class"));
        presenter.save();
        assertThat(view.suggested)
                .isEqualTo("Series \"Harbour Weeks\": renamed, 1 plate more, 1 plate less, another order, notes");
        assertThat(test.library.versions(10)).hasSize(2);
        assertThat(saved().plates()).containsExactly(id(2), id(4), id(1), id(5));
        assertThat(saved().notes()).containsExactly("For the spring class");
        assertThat(view.state.isChanged()).isFalse();
    }

    @Test
    void whatWasChangedIsThereAgainAndJoinsWhatCameMeanwhile() throws LibraryException {
        presenter.move(List.of(3), 0);
        presenter.remove(List.of(2));
        assertThat(titles()).containsExactly("Gull", "Kite", "Crab");
        save("Hers", new Change.PutSeries(series(1, 2, 3, 4, 5)));
        View later = new View();
        presenter(later).entered();
        assertThat(later.state.plates())
                .extracting(SeriesState.Card::title)
                .containsExactly("Gull", "Kite", "Crab", "Snail");
        assertThat(later.state.isChanged()).isTrue();
    }

    @Test
    void aPlateThatIsNotHereKeepsItsPlace() throws LibraryException {
        save("Away", new Change.PutAway(id(2)));
        test.room.changed(test.library);
        assertThat(view.state.plates().get(1).isHere()).isFalse();
        presenter.openPlate(1);
        assertThat(test.front.troubles.get(0)).contains("was put away or moved");
        presenter.shift(List.of(0), 1);
        presenter.save();
        assertThat(saved().plates()).containsExactly(id(2), id(1), id(3), id(4));
    }

    /** CIEDE2000 itself is held to its authors' test data where it is defined; here only what is made of it. */
    @Test
    void coloursThatAreSharedNearlySharedOrOnlyNamedAlikeAreFound() {
        presenter.add();
        assertThat(view.state.colours())
                .extracting(SeriesState.Shared::words)
                .satisfiesExactly(
                        words -> assertThat(words)
                                .matches("brick, red: almost the same in 3 plates, difference up to 0\\.\\d"),
                        words -> assertThat(words).isEqualTo("brick: one name for 2 colours in 3 plates"),
                        words -> assertThat(words).isEqualTo("brick: the same in 2 plates"));
    }

    @Test
    void almostEqualColoursAreMadeEqualInOneVersionAfterAPreview() {
        view.thread = Optional.of(0);
        presenter.makeEqual(0);
        assertThat(view.previews.get(0)).extracting(SeriesView.Preview::title).containsExactly("Crab");
        assertThat(view.previews.get(1)).extracting(SeriesView.Preview::title).containsExactly("Kite", "Boat");
        assertThat(test.library.versions(10)).hasSize(2);
        assertThat(test.library.versions(1).get(0).reason())
                .isEqualTo("brick made the same in 1 plate of \"Harbour Days\"");
        Plate crab = test.library.plate(id(3)).flatMap(Entry::plate).orElseThrow();
        assertThat(crab.palette().get('b')).hasValue(new Colour("brick", "#A63C2B", 4));
        assertThat(crab.rows())
                .isEqualTo(plate(3, "Crab", new Colour("red", "#A83D2C", 4)).rows());
        assertThat(view.state.colours())
                .extracting(SeriesState.Shared::words)
                .containsExactly("brick: the same in 3 plates");
        // strands are what each plate needs
        Plate boat = test.library.plate(id(2)).flatMap(Entry::plate).orElseThrow();
        assertThat(boat.palette().get('b').map(Colour::strands)).hasValue(3);

        presenter.makeEqual(0);
        assertThat(test.front.troubles.get(0)).contains("the same already");
    }

    @Test
    void sharedColoursBecomeTheSeriesOwn() {
        presenter.keepSharedColours();
        presenter.save();
        assertThat(saved().colours().entries().values())
                .extracting(Colour::srgb)
                .containsExactly("#A63C2B");
    }

    @Test
    void aSeriesIsBegunAndPutAway() {
        view.begins = Optional.of(new SeriesView.NewSeries(0, "Orchard Year"));
        presenter.begin();
        assertThat(view.state.title()).isEqualTo("Orchard Year");
        presenter.putAway();
        assertThat(test.library.series()).extracting(Series::title).containsExactly("Harbour Days");
        assertThat(test.library.plate(id(1))).isPresent();
        assertThat(test.library.versions(1).get(0).reason()).isEqualTo("Series \"Orchard Year\" put away");
    }

    @Test
    void aPlateIsShownInItsPlace() {
        presenter.openWith(test.library, id(3));
        assertThat(view.chosen).containsExactly(2);
        assertThat(test.front.said).containsExactly("Number 3 of 4 in \"Harbour Days\".");
        presenter.openWith(test.library, id(5));
        assertThat(test.front.troubles.get(0)).startsWith("This plate is in no series yet.");
    }

    @Test
    void giveUpGoesBackToTheLibrarys() {
        presenter.shift(List.of(0), 1);
        presenter.giveUp();
        assertThat(titles()).containsExactly("Kite", "Boat", "Crab", "Gull");
        assertThat(view.state.isChanged()).isFalse();
    }

    private static final class View implements SeriesView {
        private SeriesState state = SeriesState.NOTHING;
        private List<Integer> chosen = List.of();
        private String suggested = "";
        private Optional<NewSeries> begins = Optional.empty();
        private Optional<Integer> thread = Optional.empty();
        private List<List<Preview>> previews = List.of();

        @Override
        public void show(SeriesState newState) {
            state = newState;
        }

        @Override
        public void choose(List<Integer> places) {
            chosen = places;
        }

        @Override
        public Optional<NewSeries> askNew(List<String> libraries) {
            return begins;
        }

        @Override
        public List<Integer> askPlates(List<String> titles) {
            return titles.isEmpty() ? List.of() : List.of(0);
        }

        @Override
        public Optional<String> askReason(String suggestion) {
            suggested = suggestion;
            return Optional.of(suggestion);
        }

        @Override
        public Consent askConsent(String question, String yes) {
            return Consent.YES;
        }

        @Override
        public Optional<Integer> askThread(List<Colour> threads, List<List<Preview>> changes) {
            previews = changes;
            return thread;
        }
    }
}
