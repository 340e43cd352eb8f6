package platekeep.client.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.plate.Plate;

class ComparePresenterTest {
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final List<CompareState> shown = new ArrayList<>();
    private ComparePresenter presenter;

    @BeforeEach
    void openALibraryOfTwo() throws LibraryException {
        test = new TestRoom(folder);
        save(TestPlates.block(KITE, "Kite"));
        save(TestPlates.block(BOAT, "Boat").edit().themes(List.of("boats")).build());
        presenter = new ComparePresenter(test.room, shown::add);
        test.open();
    }

    private void save(Plate plate) throws LibraryException {
        test.library.save(new Saving(List.of(new Change.PutPlate(plate)), "Drawn", Optional.empty(), Optional.empty()));
    }

    private Place.Side side(String id, String words) {
        return new Place.Side(test.library, id, Optional.empty(), words);
    }

    private CompareState last() {
        return shown.get(shown.size() - 1);
    }

    @Test
    void twoPlatesAreShownWithTheFirstChangeChosen() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(BOAT, "Boat")));
        assertThat(last().before()).isEqualTo("Kite");
        assertThat(last().comparison().rows()).hasSize(3);
        assertThat(last().chosen()).isZero();
        assertThat(last().difference()).isPresent();
    }

    @Test
    void steppingPastTheLastChangeComesBackToTheFirst() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(BOAT, "Boat")));
        int all = last().comparison().differences().size();
        presenter.previous();
        assertThat(last().chosen()).isEqualTo(all - 1);
        presenter.next();
        assertThat(last().chosen()).isZero();
    }

    @Test
    void aPlateBesideItselfHasNoChangeToStepTo() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side(KITE, "Kite")));
        presenter.next();
        assertThat(last().chosen()).isEqualTo(-1);
        assertThat(last().counter()).isEqualTo("The two are the same.");
    }

    @Test
    void aPlateThatIsNotThereIsSaidInOneSentenceAndNothingIsShown() {
        presenter.compare(new Place.Compare(side(KITE, "Kite"), side("00000000-0000-4000-8000-000000000009", "Gone")));
        assertThat(shown).isEmpty();
        assertThat(test.front.troubles).singleElement().asString().startsWith("Gone cannot be compared");
    }
}
