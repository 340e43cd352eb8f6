package platekeep.client.plate.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.plate.Charted;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;

class FoundPresenterTest {
    private static final Plate SEEN = Charted.of("aab...aab.", "a.b...a.b.", "..........");

    /** The two Us of cables, without the empty place in them. */
    private static final List<List<Spot>> PARTS = List.of(u(0), u(6));

    @TempDir
    private Path folder;

    private TestRoom test;
    private RecordingPlateView view;
    private PlatePresenter plates;

    private static List<Spot> u(int left) {
        return List.of(
                new Spot(0, left),
                new Spot(0, left + 1),
                new Spot(0, left + 2),
                new Spot(1, left),
                new Spot(1, left + 2));
    }

    @BeforeEach
    void openTheRoom() throws LibraryException {
        test = new TestRoom(folder.resolve("home"));
        test.library.save(new Saving(List.of(new Change.PutPlate(SEEN)), "First", Optional.empty(), Optional.empty()));
        test.open();
        view = new RecordingPlateView();
        plates = new PlatePresenter(test.room, test.drafts, new Motifs(folder.resolve("motifs")), view);
    }

    private Place.InPlate place() {
        return new Place.InPlate(test.library, SEEN.id(), SEEN, PARTS);
    }

    private List<Spot> chosen() {
        return view.state.hand().chosen().orElseThrow().spots();
    }

    private String said() {
        return test.front.said.get(test.front.said.size() - 1);
    }

    @Test
    void theCablesOfTheMotifAreChosenAndBroughtIntoView() {
        plates.open(place());
        assertThat(chosen()).containsExactlyElementsOf(PARTS.get(0));
        assertThat(view.seen).isEqualTo(view.state.hand().chosen());
        assertThat(view.state.cursor()).isEqualTo(new Spot(1, 0));
        assertThat(plates.draw().tool()).isEqualTo(Tool.REGION);
        assertThat(said())
                .isEqualTo(
                        "Place 1 of 2 is chosen: rows 2 to 3, pleats 1 to 4. Ctrl+C copies it; F3 goes to the next.");
        plates.found().next();
        assertThat(chosen()).containsExactlyElementsOf(PARTS.get(1));
        plates.found().next();
        assertThat(chosen()).containsExactlyElementsOf(PARTS.get(0));
        assertThat(view.state.isDrawn()).isFalse();
    }

    @Test
    void whatIsChosenIsLiftedWithoutWhatLiesInItsGaps() {
        plates.open(place());
        plates.choice().move(1, 0);
        assertThat(Charted.cells(view.state.plate().orElseThrow()))
                .containsExactly("......aab.", "aab...a.b.", "a.b.......");
    }

    @Test
    void placesFollowTheirRowsAndPleatsThroughTheDraft() {
        plates.open(test.library, SEEN.id());
        plates.draw().moveCursor(-9, -99);
        plates.chart().insertAbove();
        plates.chart().widen(1, 0);
        plates.open(place());
        assertThat(chosen())
                .containsExactlyElementsOf(
                        PARTS.get(0).stream().map(spot -> spot.moved(1, 1)).toList());
    }

    @Test
    void whatWasDrawnOverIsToldInPlaceOfAWrongChoice() {
        plates.open(test.library, SEEN.id());
        plates.draw().moveCursor(-9, -99);
        plates.draw().moveCursor(0, 1);
        plates.draw().eraseAtCursor();
        plates.open(place());
        assertThat(view.state.hand().chosen()).isEmpty();
        assertThat(said()).startsWith("The motif no longer lies in this plate as it was found");
        plates.found().next();
        assertThat(chosen()).containsExactlyElementsOf(PARTS.get(1));
    }

    @Test
    void withNothingFoundThereIsNoNextPlace() {
        plates.open(test.library, SEEN.id());
        plates.found().next();
        assertThat(said()).startsWith("No motif was found in this plate.");
    }
}
