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

class SidePickerTest {
    private static final String KITE = "00000000-0000-4000-8000-000000000001";
    private static final String BOAT = "00000000-0000-4000-8000-000000000002";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final List<PickerState> shown = new ArrayList<>();

    @BeforeEach
    void aPlateWithAHundredVersions() throws LibraryException {
        test = new TestRoom(folder);
        save(TestPlates.block(BOAT, "Boat"), "Boat drawn");
        for (int i = 1; i <= 100; i++) {
            Plate plate = TestPlates.block(KITE, "Kite")
                    .edit()
                    .notes(List.of("step " + i))
                    .build();
            save(plate, "Step " + i);
        }
        test.open();
    }

    private void save(Plate plate, String reason) throws LibraryException {
        test.library.save(new Saving(List.of(new Change.PutPlate(plate)), reason, Optional.empty(), Optional.empty()));
    }

    private SidePicker picker(Optional<Place.Side> current) {
        SidePicker picker = new SidePicker(test.room, current);
        picker.begin(shown::add);
        return picker;
    }

    private PickerState last() {
        return shown.get(shown.size() - 1);
    }

    @Test
    void itBeginsWithWhatTheSideShows() throws LibraryException {
        String id = test.library.history(KITE).get(40).version().id();
        SidePicker picker = picker(Optional.of(new Place.Side(test.library, KITE, Optional.of(id), "Kite")));
        assertThat(last().plates()).containsExactly("Boat", "Kite");
        assertThat(last().plate()).isEqualTo(1);
        assertThat(last().versions()).hasSize(101);
        assertThat(last().versions().get(last().version())).endsWith("\nStep 60");
        assertThat(picker.answer().orElseThrow().versionId()).contains(id);
    }

    @Test
    void typingNarrowsAHundredVersionsDown() {
        SidePicker picker = picker(Optional.empty());
        picker.choosePlate(1);
        picker.versionWords("step 77");
        assertThat(last().versions()).hasSize(1);
        picker.chooseVersion(0);
        assertThat(picker.answer().orElseThrow().words()).startsWith("Kite, ");
        picker.versionWords("june");
        assertThat(last().versions()).isNotEmpty().allMatch(v -> v.contains("Jun 2026"));
        assertThat(last().version()).as("the choice is none of those shown").isEqualTo(-1);
    }

    @Test
    void aVersionIsFoundByTheNameGivenToIt() throws LibraryException {
        String id = test.library.history(KITE).get(9).version().id();
        test.library.nameVersion(KITE, id, "Spring class 2026");
        SidePicker picker = picker(Optional.empty());
        picker.choosePlate(1);
        picker.versionWords("spring class");
        picker.chooseVersion(0);
        assertThat(picker.answer().orElseThrow().versionId()).contains(id);
    }

    @Test
    void withoutAVersionThePlateIsTakenAsItIsNow() {
        SidePicker picker = picker(Optional.empty());
        assertThat(picker.answer()).isEmpty();
        picker.plateWords("boa");
        assertThat(last().plates()).containsExactly("Boat");
        picker.choosePlate(0);
        assertThat(last().versions().get(0)).startsWith("As it is now");
        assertThat(picker.answer().orElseThrow())
                .isEqualTo(new Place.Side(test.library, BOAT, Optional.empty(), "Boat"));
    }

    @Test
    void anotherPlateForgetsTheVersionThatWasChosen() {
        SidePicker picker = picker(Optional.empty());
        picker.choosePlate(1);
        picker.chooseVersion(5);
        picker.choosePlate(0);
        assertThat(picker.answer().orElseThrow().versionId()).isEmpty();
    }
}
