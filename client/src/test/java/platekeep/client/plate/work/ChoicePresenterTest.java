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
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Unknown;

class ChoicePresenterTest {
    @TempDir
    private Path folder;

    private TestRoom test;
    private RecordingPlateView view;
    private PlatePresenter plates;
    private DrawPresenter draw;
    private ChoicePresenter choice;

    @BeforeEach
    void openAPlate() throws LibraryException {
        open(Charted.of("aab.......", "aab.......", "........c.", "........c."));
    }

    private void open(Plate plate) throws LibraryException {
        test = new TestRoom(folder.resolve(Integer.toString(plate.hashCode())));
        test.library.save(new Saving(List.of(new Change.PutPlate(plate)), "First", Optional.empty(), Optional.empty()));
        test.open();
        view = new RecordingPlateView();
        plates = new PlatePresenter(test.room, test.drafts, new Motifs(folder.resolve("motifs")), view);
        plates.open(test.library, plate.id());
        draw = plates.draw();
        choice = plates.choice();
    }

    private List<String> cells() {
        return Charted.cells(view.state.plate().orElseThrow());
    }

    private void drag(Press how, Spot... way) {
        draw.press(way[0], how);
        for (Spot spot : way) {
            draw.drag(spot);
        }
        draw.release();
    }

    @Test
    void aFigureIsDraggedAsOneStepAndWhatItCrossesStays() {
        draw.take(Tool.FIGURE);
        drag(Press.PLAIN, new Spot(0, 0), new Spot(1, 3), new Spot(2, 6), new Spot(2, 7));
        assertThat(cells()).containsExactly("..........", "..........", ".......aab", ".......aab");
        assertThat(view.state.undo()).contains("Move 6 cables");
        drag(Press.PLAIN, new Spot(2, 7), new Spot(0, 7));
        assertThat(cells()).containsExactly(".......aab", ".......aab", "........c.", "........c.");
        draw.undo();
        draw.undo();
        assertThat(cells()).startsWith("aab.......");
        assertThat(view.state.isDrawn()).isFalse();
        draw.redo();
        draw.redo();
        assertThat(cells()).startsWith(".......aab");
    }

    @Test
    void aFigureIsHeldOnTheChart() {
        draw.take(Tool.FIGURE);
        drag(Press.PLAIN, new Spot(0, 0), new Spot(3, 9));
        assertThat(cells()).endsWith(".......aab", ".......aab");
        draw.undo();
        drag(Press.PLAIN, new Spot(1, 1), new Spot(0, 0));
        assertThat(cells()).startsWith("aab.......");
        assertThat(view.state.undo()).isEmpty();
    }

    @Test
    void withCtrlACopyIsDragged() {
        draw.take(Tool.FIGURE);
        drag(Press.COPY, new Spot(0, 0), new Spot(0, 4));
        assertThat(cells()).startsWith("aab.aab...", "aab.aab...");
        assertThat(view.state.undo()).contains("Copy 6 cables");
    }

    @Test
    void aRegionIsChosenByItsCornersAndMovedByKeysAsOneStep() {
        draw.take(Tool.REGION);
        drag(Press.PLAIN, new Spot(0, 0), new Spot(1, 1));
        assertThat(test.front.said).last().asString().isEqualTo("Chosen: 4 cables, rows 3 to 4, pleats 1 to 3");
        choice.move(1, 0);
        choice.move(1, 1);
        assertThat(cells()).containsExactly("..b.......", "..b.......", ".aa.....c.", ".aa.....c.");
        draw.undo();
        assertThat(cells()).startsWith("aab.......");
    }

    @Test
    void byKeysARegionBeginsAndEndsWithTheSpaceBar() {
        draw.take(Tool.REGION);
        draw.moveCursor(-9, -9);
        draw.useAtCursor();
        assertThat(view.state.hand().firstEnd()).contains(new Spot(0, 0));
        draw.moveCursor(1, 2);
        draw.useAtCursor();
        assertThat(view.state.hand().chosen().orElseThrow().spots()).hasSize(6);
        assertThat(choice.letGo()).isTrue();
        assertThat(view.state.hand().chosen()).isEmpty();
    }

    @Test
    void byKeysALineGoesFromSpaceBarToSpaceBar() {
        draw.choose('b');
        draw.take(Tool.LINE);
        draw.moveCursor(-9, -9);
        draw.moveCursor(0, 4);
        draw.useAtCursor();
        draw.moveCursor(3, 3);
        draw.useAtCursor();
        assertThat(cells()).containsExactly("aab.b.....", "aab..b....", "......b.c.", ".......bc.");
        assertThat(view.state.undo()).contains("Line in buoy");
    }

    @Test
    void aBlockFollowsThePointerAndLeavesNothingWhereItWas() {
        draw.choose('c');
        draw.take(Tool.BLOCK);
        drag(Press.PLAIN, new Spot(0, 4), new Spot(3, 6), new Spot(1, 5));
        assertThat(cells()).containsExactly("aab.cc....", "aab.cc....", "........c.", "........c.");
        assertThat(view.state.undo()).contains("Block in chalk");
        draw.take(Tool.RUN);
        drag(Press.PLAIN, new Spot(2, 0), new Spot(3, 3));
        assertThat(cells()).endsWith("cccc....c.", "........c.");
    }

    @Test
    void theRimOfAFigureTakesTheColour() throws LibraryException {
        open(Charted.of("aaaa..", "aaaa..", "aaaa.."));
        draw.choose('c');
        draw.take(Tool.RIM);
        draw.press(new Spot(1, 1), Press.PLAIN);
        draw.release();
        assertThat(cells()).containsExactly("cccc..", "caac..", "cccc..");
        assertThat(view.state.undo()).contains("Rim in chalk");
    }

    @Test
    void whatIsMirroredCanBeMirroredBackToNothing() {
        draw.take(Tool.FIGURE);
        drag(Press.PLAIN, new Spot(0, 0));
        choice.mirrorLeftRight();
        assertThat(cells()).startsWith("baa.......");
        assertThat(view.state.undo()).contains("Mirror left to right: 6 cables");
        choice.mirrorLeftRight();
        assertThat(cells()).startsWith("aab.......");
    }

    @Test
    void whatIsCutOutIsPutInAtTheCursorInAnotherPlateToo() throws LibraryException {
        draw.take(Tool.FIGURE);
        drag(Press.PLAIN, new Spot(0, 0));
        choice.cut();
        assertThat(cells()).startsWith("..........", "..........");
        draw.moveCursor(9, -9);
        choice.paste();
        assertThat(cells()).endsWith("aab.....c.", "aab.....c.");
        assertThat(view.state.undo()).contains("Put in 6 cables");
    }

    @Test
    void aPieceLargerThanTheChartIsRefusedWithASentence() throws LibraryException {
        choice.chooseAll();
        choice.copy();
        plates.chart().widen(0, 5);
        choice.chooseAll();
        choice.copy();
        plates.chart().deleteRow();
        draw.undo();
        plates.chart().widen(0, -5);
        choice.paste();
        assertThat(test.front.troubles).isEmpty();
        choice.paste(platekeep.client.plate.piece.Piece.of(Charted.of("a".repeat(30)))
                .orElseThrow());
        assertThat(test.front.troubles)
                .containsExactly("It is 31 pleats wide and 1 rows high, more than this chart. Widen the chart or insert"
                        + " rows first; nothing was put in.");
    }

    @Test
    void oneColourOfWhatIsChosenIsRecoloured() {
        choice.chooseAll();
        view.recolouring = Optional.of(new PlateView.Recolouring(Optional.of('a'), 'c'));
        choice.recolour();
        assertThat(cells()).startsWith("ccb.......");
        assertThat(view.state.undo()).contains("Recolour to chalk");
        view.recolouring = Optional.of(new PlateView.Recolouring(Optional.empty(), 'b'));
        choice.recolour();
        assertThat(cells()).containsExactly("bbb.......", "bbb.......", "........b.", "........b.");
    }

    @Test
    void whatIsChosenIsRepeatedWithAGap() {
        draw.take(Tool.FIGURE);
        drag(Press.PLAIN, new Spot(0, 0));
        view.repeating = Optional.of(new PlateView.Repeating(0, 2));
        choice.repeat();
        assertThat(view.room).isEqualTo(2);
        assertThat(cells()).startsWith("aab.aab...");
        assertThat(view.state.undo()).contains("Repeat across");
    }

    @Test
    void drawingOnBothSidesOfTheCentre() {
        choice.mirrorAboutCentre();
        draw.choose('c');
        draw.take(Tool.PAINT);
        drag(Press.PLAIN, new Spot(3, 2), new Spot(3, 3));
        assertThat(cells()).endsWith("..cc..ccc.");
        choice.mirrorAboutCentre();
        assertThat(view.state.hand().axis()).isEmpty();
    }

    @Test
    void drawingOnBothSidesOfTheCableAtTheCursor() {
        draw.moveCursor(9, -9);
        draw.moveCursor(0, 3);
        choice.mirrorAboutCursor();
        draw.choose('b');
        draw.take(Tool.PAINT);
        drag(Press.PLAIN, new Spot(2, 4), new Spot(2, 5));
        assertThat(cells().get(2)).isEqualTo(".bb.bb..c.");
    }

    @Test
    void withNothingChosenAWordIsSaid() {
        choice.mirrorTopBottom();
        assertThat(test.front.said).last().asString().startsWith("Nothing is chosen.");
        assertThat(view.state.isDrawn()).isFalse();
    }

    @Test
    void theRepeatsOfAChartAreSaidAndTurnedIntoCables() {
        view.strip = Optional.of(new PlateView.Strip(Optional.of(new Repeat(12, 2, Unknown.NONE))));
        plates.chart().repeat();
        assertThat(view.state.plate().orElseThrow().repeat()).isPresent();
        plates.chart().workOutRepeats();
        assertThat(cells().get(0)).isEqualTo("aab.........aab.......");
        draw.undo();
        draw.undo();
        assertThat(view.state.isDrawn()).isFalse();
    }

    @Test
    void aMotifIsKeptUnderANamePutInAndForgotten() throws LibraryException {
        choice.chooseAll();
        view.line = Optional.of("Gull");
        plates.motifs().keep();
        open(Charted.of("..........", "..........", "..........", "..........", ".........."));
        draw.moveCursor(9, -9);
        view.motif = Optional.of(new PlateView.MotifAnswer(0, PlateView.MotifAnswer.What.PUT));
        plates.motifs().put();
        assertThat(view.motifs).extracting(Plate::title).containsExactly("Gull");
        assertThat(cells()).containsExactly("..........", "aab.......", "aab.......", "........c.", "........c.");
        view.motif = Optional.of(new PlateView.MotifAnswer(0, PlateView.MotifAnswer.What.FORGET));
        plates.motifs().put();
        plates.motifs().put();
        assertThat(test.front.said).last().asString().startsWith("No motif is kept yet.");
    }

    @Test
    void oneColourIsMergedIntoAnother() {
        view.mergeInto = Optional.of('c');
        plates.palette().merge('a');
        assertThat(cells()).startsWith("ccb.......");
        assertThat(view.state.plate().orElseThrow().palette().has('a')).isFalse();
        assertThat(view.state.undo()).contains("Turn apple into chalk");
    }
}
