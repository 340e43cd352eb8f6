package platekeep.client.plate.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.plate.TestPlates;
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.Suggestions;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

class PlatePresenterTest {
    private static final String ID = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";

    @TempDir
    private Path folder;

    private TestRoom test;
    private RecordingPlateView view;
    private PlatePresenter plates;
    private DrawPresenter draw;

    @BeforeEach
    void openAPlate() throws LibraryException {
        test = new TestRoom(folder);
        test.library.save(saving(TestPlates.block(ID, "Block"), "First version"));
        test.open();
        begin(test.drafts);
    }

    private void begin(Drafts drafts) {
        view = new RecordingPlateView();
        plates = new PlatePresenter(test.room, drafts, new Motifs(folder.resolve("motifs")), view);
        draw = plates.draw();
        plates.open(test.library, ID);
    }

    private static Saving saving(Plate plate, String reason) {
        return new Saving(List.of(new Change.PutPlate(plate)), reason, Optional.empty(), Optional.empty());
    }

    private List<String> cells() {
        return view.state.plate().orElseThrow().rows().stream().map(Row::cells).toList();
    }

    private void save(String reason) {
        view.reason = Optional.of(new PlateView.SaveAnswer(reason, 0));
        plates.history().save();
    }

    @Test
    void anOpenedPlateIsShownWithItsHistoryAndNothingToSave() {
        assertThat(view.state.plate().map(Plate::title)).contains("Block");
        assertThat(view.state.history()).extracting(HistoryStep::reason).containsExactly("First version");
        assertThat(view.state.isDrawn()).isFalse();
        assertThat(view.state.canDraw()).isTrue();
    }

    @Test
    void aStrokeIsOneStepNamedForItsColour() {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        draw.drag(new Spot(0, 5));
        draw.release();
        assertThat(cells()).startsWith("..cccc..");
        assertThat(view.state.undo()).contains("Paint chalk");
        draw.undo();
        assertThat(cells()).startsWith("..bbbb..");
        assertThat(view.state.isDrawn()).isFalse();
        draw.redo();
        assertThat(cells()).startsWith("..cccc..");
    }

    @Test
    void whatIsDrawnIsOnDiskAtOnceAndOfferedAtTheNextStart() {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        begin(new Drafts(folder.resolve("drafts")));
        assertThat(view.state.offer())
                .hasValueSatisfying(
                        words -> assertThat(words).startsWith("A draft of ").contains("chalk"));
        assertThat(view.state.canDraw()).isFalse();
        assertThat(cells()).startsWith("..bbbb..");
        plates.takeOffer();
        assertThat(cells()).startsWith("..cbbb..");
        assertThat(view.state.offer()).isEmpty();
        draw.undo();
        assertThat(cells()).startsWith("..bbbb..");
    }

    @Test
    void aDraftThatIsGivenUpIsNotOfferedAgain() {
        draw.press(new Spot(0, 0), Press.PLAIN);
        begin(test.drafts);
        view.consent = PlateView.Consent.YES;
        plates.giveUp();
        begin(test.drafts);
        assertThat(view.state.offer()).isEmpty();
        assertThat(cells()).startsWith("..bbbb..");
    }

    @Test
    void savingMakesAVersionWithTheReasonAndTakesTheDraftAway() {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        draw.release();
        save("Corner in chalk");
        assertThat(view.state.history())
                .extracting(HistoryStep::reason)
                .containsExactly("Corner in chalk", "First version");
        assertThat(view.state.isDrawn()).isFalse();
        assertThat(test.drafts.all(test.library.folder())).isEmpty();
        assertThat(view.suggestions.get(0)).isNotBlank();
    }

    @Test
    void aFailedSavingLosesNothing() {
        draw.press(new Spot(0, 0), Press.PLAIN);
        test.library.failNext("The disk is full. Nothing was changed.");
        save("Too much");
        assertThat(test.front.troubles).containsExactly("The disk is full. Nothing was changed.");
        assertThat(view.state.isDrawn()).isTrue();
        assertThat(test.drafts.of(test.library.folder(), ID)).isPresent();
    }

    @Test
    void aVersionCanBeInThePartnersName() {
        Hand isolde = new Hand("Isolde Marsh", "isolde@workshop.example");
        draw.press(new Spot(0, 0), Press.PLAIN);
        draw.release();
        view.reason = Optional.empty();
        plates.history().save();
        assertThat(view.hands).containsExactly("Wenna Tarrow");
        assertThat(Suggestions.hands(isolde, test.library.history(ID))).containsExactly(isolde, TestRoom.WENNA);
    }

    @Test
    void everyCableKeepsItsKindWhenItsStartIsErased() {
        var before = view.state.drawing().orElseThrow();
        draw.take(Tool.ERASE);
        draw.press(new Spot(2, 2), Press.PLAIN);
        var after = view.state.drawing().orElseThrow();
        assertThat(cells()).endsWith("...bbb..");
        for (int i = 3; i < 6; i++) {
            assertThat(after.kind(2, i)).isEqualTo(before.kind(2, i));
            assertThat(after.kind(0, i)).isEqualTo(before.kind(0, i));
        }
    }

    @Test
    void theCursorDrawsByKeysAndTellsWhereItIs() {
        draw.take(Tool.POINT);
        draw.press(new Spot(2, 2), Press.PLAIN);
        assertThat(view.place).isEqualTo("row 1, pleats 3 and 4: down cable, brick; meets nothing below");
        draw.moveCursor(0, -1);
        assertThat(view.state.cursor()).isEqualTo(new Spot(2, 1));
        draw.choose('c');
        draw.useAtCursor();
        draw.drawCursor(0, -1);
        assertThat(cells()).endsWith("ccbbbb..");
        draw.eraseAtCursor();
        assertThat(cells()).endsWith(".cbbbb..");
    }

    @Test
    void theCursorNeverLeavesTheChart() {
        draw.moveCursor(-50, -50);
        assertThat(view.state.cursor()).isEqualTo(new Spot(0, 0));
        draw.moveCursor(50, 50);
        assertThat(view.state.cursor()).isEqualTo(new Spot(2, 7));
        plates.chart().deleteRow();
        assertThat(view.state.cursor().row()).isEqualTo(1);
    }

    @Test
    void anOldVersionIsLookedAtAndBroughtBackAsANewOne() {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        draw.release();
        save("Corner in chalk");
        String first = view.state.history().get(1).versionId();
        plates.history().lookAt(first);
        assertThat(cells()).startsWith("..bbbb..");
        assertThat(view.state.canDraw()).isFalse();
        draw.press(new Spot(0, 0), Press.PLAIN);
        assertThat(view.state.isDrawn()).isFalse();
        view.reason = Optional.of(new PlateView.SaveAnswer("Back to brick", 0));
        plates.history().bringBack();
        assertThat(view.state.history()).hasSize(3);
        assertThat(cells()).startsWith("..bbbb..");
        assertThat(view.state.lookingAt()).isEmpty();
    }

    @Test
    void aNameGivenToAVersionStandsInItsHistory() {
        view.line = Optional.of("Spring class 2026");
        plates.history().nameVersion(view.state.history().get(0).versionId());
        assertThat(view.state.history().get(0).names()).containsExactly("Spring class 2026");
    }

    @Test
    void twoVersionsAreComparedOlderFirst() {
        draw.press(new Spot(0, 0), Press.PLAIN);
        save("More");
        String newest = view.state.history().get(0).versionId();
        String oldest = view.state.history().get(1).versionId();
        plates.history().compare(newest, oldest);
        Place.Compare place = (Place.Compare) test.front.places.get(0);
        assertThat(place.before().versionId()).contains(oldest);
        assertThat(place.after().versionId()).contains(newest);
    }

    @Test
    void aPlateChangedInTheLibraryIsTakenOver() throws LibraryException {
        Plate other = TestPlates.block(ID, "Block, wider");
        test.library.save(saving(other, "Title"));
        test.room.changed(test.library);
        assertThat(view.state.plate().map(Plate::title)).contains("Block, wider");
        assertThat(view.state.isDrawn()).isFalse();
    }

    @Test
    void aDraftIsJoinedWithWhatTheLibraryHasMeanwhile() throws LibraryException {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        test.library.save(saving(TestPlates.block(ID, "Block, wider"), "Title"));
        test.room.changed(test.library);
        assertThat(view.state.plate().map(Plate::title)).contains("Block, wider");
        assertThat(cells()).startsWith("..cbbb..");
        assertThat(view.state.isDrawn()).isTrue();
        assertThat(test.front.said).anyMatch(sentence -> sentence.contains("joined"));
    }

    @Test
    void aDraftOfferedAtTheNextStartHasWhatTheLibraryGotSince() throws LibraryException {
        draw.choose('c');
        draw.press(new Spot(0, 2), Press.PLAIN);
        test.library.save(saving(TestPlates.block(ID, "Block, wider"), "Title"));
        begin(test.drafts);
        plates.takeOffer();
        assertThat(view.state.plate().map(Plate::title)).contains("Block, wider");
        assertThat(cells()).startsWith("..cbbb..");
    }

    @Test
    void aColourIsAddedRenamedAndTakenOut() {
        view.colour = Optional.of(new Colour("leaf", "#4F7A3A", 4));
        plates.palette().add();
        assertThat(view.state.undo()).contains("Add leaf");
        assertThat(view.state.colour()).contains('a');
        view.colour = Optional.of(new Colour("moss", "#4F7A3A", 4));
        plates.palette().change('a');
        assertThat(view.state.undo()).contains("Rename leaf to moss");
        view.colour = Optional.of(new Colour("moss", "#5F8A3A", 4));
        plates.palette().change('a');
        assertThat(view.state.undo()).contains("Recolour moss");
        plates.palette().remove('a');
        assertThat(view.state.undo()).contains("Take moss out");
        plates.palette().remove('b');
        assertThat(test.front.troubles).singleElement().asString().contains("still used");
    }

    @Test
    void narrowingOverCablesIsRefusedWithASentence() {
        plates.chart().widen(-3, 0);
        assertThat(test.front.troubles).singleElement().asString().contains("nothing was cut off");
        assertThat(view.state.isDrawn()).isFalse();
    }

    @Test
    void putAwayAPlateLeavesTheScreen() {
        view.line = Optional.of("Never liked it");
        plates.history().putAway();
        assertThat(view.state.plate()).isEmpty();
        assertThat(test.library.plate(ID)).isEmpty();
        assertThat(test.front.places).containsExactly(new Place.Gallery());
    }

    @Test
    void nameAndAddressAreAskedOnce() throws LibraryException {
        TestRoom stranger = new TestRoom(folder.resolve("other"), Optional.empty());
        Plate plate = TestPlates.block(ID, "Block");
        stranger.library.save(new Saving(
                List.of(new Change.PutPlate(plate)), "First", Optional.of(TestRoom.WENNA), Optional.empty()));
        stranger.open();
        test = stranger;
        begin(stranger.drafts);
        stranger.front.answer = Optional.of(TestRoom.WENNA);
        draw.press(new Spot(0, 0), Press.PLAIN);
        draw.release();
        save("One");
        draw.press(new Spot(0, 1), Press.PLAIN);
        draw.release();
        save("Two");
        assertThat(view.state.history()).hasSize(3);
        assertThat(stranger.front.asked).isEqualTo(1);
        assertThat(stranger.room.settings().handName()).contains("Wenna Tarrow");
    }
}
