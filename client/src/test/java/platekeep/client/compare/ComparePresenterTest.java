package platekeep.client.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.compare.chart.Way;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.compare.Difference;
import platekeep.model.compare.Difference.About;
import platekeep.model.compare.Side;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.text.Problem;

class ComparePresenterTest {
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";
    private static final Plate FIRST = TestPlates.block(KITE, "Kite");

    /** Middle row in chalk, a row on top, a theme more. */
    private static final Plate SECOND = FIRST.edit()
            .rows(List.of(
                    Row.of("r4r4", "...bb..."),
                    Row.of("r3r3", "..bbbb.."),
                    Row.of("r2r2", "..bccb.."),
                    Row.of("r1r1", "..bbbb..")))
            .themes(List.of("bricks", "kites"))
            .build();

    @TempDir
    private Path folder;

    private TestRoom test;
    private final Screen screen = new Screen();
    private ComparePresenter presenter;

    /** A screen that keeps what it is shown and chooses what the test says. */
    private static final class Screen implements CompareView {
        private final List<CompareState> shown = new ArrayList<>();
        private Optional<Place.Side> choice = Optional.empty();
        private Optional<SidePicker> picker = Optional.empty();

        @Override
        public void show(CompareState state) {
            shown.add(state);
        }

        @Override
        public Optional<Place.Side> askSide(Side side, SidePicker offered) {
            picker = Optional.of(offered);
            return choice;
        }
    }

    @BeforeEach
    void openALibraryOfTwo() throws LibraryException {
        test = new TestRoom(folder);
        save(FIRST);
        save(TestPlates.block(BOAT, "Boat").edit().themes(List.of("boats")).build());
        presenter = new ComparePresenter(test.room, screen);
        presenter.begin();
        test.open();
    }

    private String save(Plate plate) throws LibraryException {
        return test.library
                .save(new Saving(List.of(new Change.PutPlate(plate)), "Drawn", Optional.empty(), Optional.empty()))
                .id();
    }

    private Place.Side side(String id, String words) {
        return new Place.Side(test.library, id, Optional.empty(), words);
    }

    private Place.Side at(String versionId) {
        return new Place.Side(test.library, KITE, Optional.of(versionId), "Kite at " + versionId);
    }

    private CompareState last() {
        return screen.shown.get(screen.shown.size() - 1);
    }

    private List<String> words() {
        return last().compared().orElseThrow().changes().stream()
                .map(Difference::words)
                .toList();
    }

    private void compareFirstWithNow() throws LibraryException {
        String first = test.library.history(KITE).get(0).version().id();
        save(SECOND);
        presenter.compare(new Place.Compare(at(first), side(KITE, "Kite")));
    }

    @Test
    void atFirstItSaysHowToChoose() {
        assertThat(last().compared()).isEmpty();
        assertThat(last().sentence()).startsWith("Choose what to compare");
    }

    @Test
    void twoPlatesAreShownWithTheFirstChangeChosen() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(BOAT, "Boat")));
        assertThat(last().before().title()).isEqualTo("Kite");
        assertThat(last().after().title()).isEqualTo("Boat");
        assertThat(last().compared().orElseThrow().plates().lines().size()).isEqualTo(3);
        assertThat(last().chosen()).isZero();
        assertThat(last().difference()).isPresent();
    }

    @Test
    void twoVersionsAreShownWithDayHandAndReason() throws LibraryException {
        compareFirstWithNow();
        assertThat(last().before().version()).isEqualTo("2 March 2026, by Wenna Tarrow: Drawn");
        assertThat(last().after().version()).isEqualTo("as it is now · 4 March 2026, by Wenna Tarrow: Drawn");
        assertThat(words())
                .containsExactly(
                        "1 row added above row 3", "row 2: pleats 4 to 6 chalk instead of brick", "theme kites added");
    }

    @Test
    void steppingPastTheLastChangeComesBackToTheFirst() throws LibraryException {
        compareFirstWithNow();
        presenter.previous();
        assertThat(last().chosen()).isEqualTo(2);
        assertThat(last().counter()).isEqualTo("3 of 3");
        presenter.next();
        assertThat(last().chosen()).isZero();
    }

    @Test
    void cablesAreSteppedThroughAsTheyAreStacked() throws LibraryException {
        String first = test.library.history(KITE).get(0).version().id();
        save(FIRST.edit()
                .rows(List.of(Row.of("r3r3", "..cbbbbb"), Row.of("r2r2", "..bbbb.."), Row.of("r1r1", "..bbbc..")))
                .build());
        presenter.compare(new Place.Compare(at(first), side(KITE, "Kite")));
        assertThat(words())
                .containsExactly(
                        "row 1: pleats 6 to 7 chalk instead of brick",
                        "row 3: pleats 3 to 4 chalk instead of brick",
                        "row 3: pleats 7 to 9 brick put in");
    }

    @Test
    void aClickOnAChangeGoesToItOnEitherChart() throws LibraryException {
        compareFirstWithNow();
        presenter.chooseAt(Side.AFTER, 3.5, 2.5);
        assertThat(last().difference().orElseThrow().about()).isEqualTo(About.CABLES);
        presenter.chooseAt(Side.BEFORE, 0.5, 0.5);
        assertThat(last().difference().orElseThrow().about()).isEqualTo(About.ROWS_ADDED);
        presenter.chooseAt(Side.BEFORE, 3.5, 2.5);
        assertThat(last().difference().orElseThrow().about()).isEqualTo(About.CABLES);
        int chosen = last().chosen();
        presenter.chooseAt(Side.AFTER, 0.5, 3.5);
        assertThat(last().chosen()).as("nothing changed there").isEqualTo(chosen);
    }

    @Test
    void aPlateBesideItselfHasNoChangeToStepTo() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(KITE, "Kite")));
        presenter.next();
        assertThat(last().chosen()).isEqualTo(-1);
        assertThat(last().counter()).isEqualTo("No change");
    }

    @Test
    void aPlateThatIsNotThereIsSaidInOneSentenceInTheChartsPlace() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side("00000000-0000-4000-8000-000000000009", "Gone")));
        assertThat(last().compared()).isEmpty();
        assertThat(last().sentence()).startsWith("“Gone” cannot be compared: the plate is not there in that version.");
        assertThat(last().before().title()).isEqualTo("Kite");
    }

    @Test
    void aVersionWithDamagedTextIsSaidWithItsPlaceAndOneCanStepAway() throws LibraryException {
        String second = save(SECOND);
        String first = test.library.history(KITE).get(1).version().id();
        Problem problem = new Problem(
                "kite.json", 12, 3, Optional.empty(), Optional.empty(), "row-length", "A row is too short.");
        test.library.damageAt(KITE, second, new Entry.Damaged("plates/kite.json", "x", List.of(problem)));
        presenter.compare(new Place.Compare(at(first), at(second)));
        assertThat(last().compared()).isEmpty();
        assertThat(last().sentence())
                .isEqualTo(
                        "“Kite at " + second + "” cannot be compared, since its text is damaged: kite.json, line 12: A"
                                + " row is too short. Nothing was changed; choose another version.");
        presenter.older(Side.AFTER);
        assertThat(last().compared()).isPresent();
        assertThat(last().sentence()).isEmpty();
    }

    @Test
    void oneStepsThroughTheVersionsOfASide() throws LibraryException {
        compareFirstWithNow();
        assertThat(last().before().older()).isEqualTo(SideState.Step.NONE);
        assertThat(last().before().newer()).isEqualTo(SideState.Step.THERE);
        assertThat(last().after().newer()).isEqualTo(SideState.Step.NONE);
        presenter.newer(Side.BEFORE);
        assertThat(last().counter()).isEqualTo("No change");
        presenter.older(Side.BEFORE);
        assertThat(words()).hasSize(3);
    }

    @Test
    void theSidesAreExchanged() throws LibraryException {
        compareFirstWithNow();
        presenter.swap();
        assertThat(words())
                .containsExactly("row 4 removed", "row 2: pleats 4 to 6 brick instead of chalk", "theme kites removed");
    }

    @Test
    void whatIsSavedMeanwhileIsShownAndTheChosenChangeStaysChosen() throws LibraryException {
        compareFirstWithNow();
        presenter.choose(1);
        String chosen = last().difference().orElseThrow().words();
        save(SECOND.edit()
                .rows(List.of(
                        Row.of("r5r5", "...cc..."),
                        Row.of("r4r4", "...bb..."),
                        Row.of("r3r3", "..bbbb.."),
                        Row.of("r2r2", "..bccb.."),
                        Row.of("r1r1", ".bbbbb..")))
                .build());
        test.room.changed(test.library);
        assertThat(words()).hasSize(4);
        assertThat(last().difference().orElseThrow().words()).isEqualTo(chosen);
        assertThat(last().chosen()).isEqualTo(2);
    }

    @Test
    void aLibraryThatIsClosedTakesItsPlatesAlong() throws LibraryException {
        compareFirstWithNow();
        test.room.close(test.library);
        assertThat(last().compared()).isEmpty();
        assertThat(last().sentence()).startsWith("Choose what to compare");
    }

    @Test
    void theWaysOfLookingKeepTheChosenChange() throws LibraryException {
        compareFirstWithNow();
        presenter.choose(1);
        for (Way way : Way.values()) {
            presenter.way(way);
            assertThat(last().way()).isEqualTo(way);
            assertThat(last().chosen()).isEqualTo(1);
        }
    }

    @Test
    void theChartsTakeTurnsOnlyWhileTheyAreLookedAtSo() throws LibraryException {
        compareFirstWithNow();
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.BEFORE);
        presenter.way(Way.BLINK);
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.AFTER);
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.BEFORE);
    }

    @Test
    void theChartsThatTakeTurnsAreHeldAndTurnedByHand() throws LibraryException {
        compareFirstWithNow();
        presenter.way(Way.BLINK);
        presenter.hold();
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.BEFORE);
        presenter.turn();
        assertThat(last().blink().front()).isEqualTo(Side.AFTER);
        presenter.hold();
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.BEFORE);
    }

    @Test
    void turningByHandHoldsTheCharts() throws LibraryException {
        compareFirstWithNow();
        presenter.turn();
        assertThat(last().way()).isEqualTo(Way.BLINK);
        assertThat(last().blink().going()).isEqualTo(Blink.Going.HELD);
    }

    @Test
    void thePaceIsRememberedAndByHandNothingTurnsByItself() throws LibraryException {
        compareFirstWithNow();
        presenter.way(Way.BLINK);
        presenter.pace(Pace.BY_HAND);
        presenter.beat();
        presenter.hold();
        presenter.beat();
        assertThat(last().blink().front()).isEqualTo(Side.BEFORE);
        Screen later = new Screen();
        new ComparePresenter(test.room, later).begin();
        assertThat(later.shown.get(0).blink().pace()).isEqualTo(Pace.BY_HAND);
        assertThat(later.shown.get(0).blink().going()).isEqualTo(Blink.Going.HELD);
    }

    /** WCAG 2.2, success criterion 2.3.1: nothing flashes more than three times in any one second (from memory). */
    @Test
    void noPaceComesNearThreeFlashesASecond() {
        for (Pace pace : Pace.values()) {
            assertThat(pace == Pace.BY_HAND || pace.millis() > 2 * 1000 / 3).isTrue();
        }
    }

    @Test
    void aSideIsChosenFromWithinTheScreen() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(KITE, "Kite")));
        screen.choice = Optional.of(side(BOAT, "Boat"));
        presenter.pick(Side.AFTER);
        assertThat(screen.picker).isPresent();
        assertThat(last().before().title()).isEqualTo("Kite");
        assertThat(last().after().title()).isEqualTo("Boat");
        screen.choice = Optional.empty();
        presenter.pick(Side.BEFORE);
        assertThat(last().before().title()).as("given up").isEqualTo("Kite");
    }

    @Test
    void aShadeThatChangedIsShownAsItWasAndAsItIs() throws LibraryException {
        String first = test.library.history(KITE).get(0).version().id();
        save(FIRST.edit()
                .palette(FIRST.palette().with('b', new Colour("brick", "#B4492F", 4)))
                .build());
        presenter.compare(new Place.Compare(at(first), side(KITE, "Kite")));
        Compared compared = last().compared().orElseThrow();
        assertThat(words()).containsExactly("colour brick now #B4492F");
        assertThat(compared.shades(compared.changes().get(0))).containsExactly(0xA63C2B, 0xB4492F);
    }
}
