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
import platekeep.client.plate.TestPlates;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Line;
import platekeep.model.plate.Plate;

class LinePresenterTest {
    private static final String ID = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";

    @TempDir
    private Path folder;

    private RecordingPlateView view;
    private DrawPresenter draw;
    private LinePresenter lines;
    private Plate first;

    @BeforeEach
    void openAPlate() throws LibraryException {
        TestRoom test = new TestRoom(folder);
        first = TestPlates.block(ID, "Block");
        test.library.save(
                new Saving(List.of(new Change.PutPlate(first)), "First version", Optional.empty(), Optional.empty()));
        test.open();
        view = new RecordingPlateView();
        PlatePresenter plates = new PlatePresenter(test.room, test.drafts, new Motifs(folder.resolve("motifs")), view);
        draw = plates.draw();
        lines = plates.lines();
        plates.open(test.library, ID);
        draw.take(Tool.GATHER);
    }

    private List<Line> placed() {
        return view.state.plate().orElseThrow().lines();
    }

    @Test
    void aLineIsPlacedFromPleatToPleatOnTheNearestGatheringRow() {
        assertThat(lines.grab(1.4, 0.2)).isTrue();
        lines.pull(3.0, 0.2);
        lines.pull(5.9, 0.3);
        draw.release();
        Plate plate = view.state.plate().orElseThrow();
        assertThat(placed()).hasSize(1);
        Line line = placed().get(0);
        assertThat(line.stitch()).isEqualTo("cable");
        assertThat(line.from()).isEqualTo(plate.from() + 1);
        assertThat(line.to()).isEqualTo(plate.from() + 5);
        assertThat(view.state.drawing().orElseThrow().gatheringRowAt(0.2)).contains(line.on());
        assertThat(view.state.undo()).contains("Place a line of cable");
        assertThat(view.state.hand().line()).hasValue(0);
    }

    /** Common practice, no source: a wave travels a full space, a baby wave half a one. */
    @Test
    void aStitchThatTravelsGoesDownBySoMuchUnlessPointedElsewhere() {
        lines.take("baby wave");
        lines.grab(0.5, 0.5);
        lines.pull(6.5, 0.5);
        draw.release();
        Line baby = placed().get(0);
        lines.take("wave");
        lines.grab(0.5, 40);
        lines.pull(6.5, 40);
        draw.release();
        Line wave = placed().get(1);
        assertThat(spaces(baby)).isEqualTo(0.5);
        assertThat(spaces(wave)).isEqualTo(1);
    }

    private static double spaces(Line line) {
        return platekeep.model.plate.GatheringRow.place(line.toRow().orElseThrow())
                        .orElseThrow()
                - platekeep.model.plate.GatheringRow.place(line.on()).orElseThrow();
    }

    @Test
    void gatheringRowsWithoutNumbersGetThemSoThatALineCanLieOnOne() {
        assertThat(first.cloth().gatheringRows()).isEmpty();
        lines.grab(0.5, 0.5);
        lines.pull(4.5, 0.5);
        draw.release();
        Plate plate = view.state.plate().orElseThrow();
        assertThat(plate.cloth().gatheringRows()).isPresent();
        assertThat(view.state.drawing().orElseThrow().lineBox(0)).isPresent();
        assertThat(view.state.drawing().orElseThrow().strands()).isNotEmpty();
    }

    @Test
    void theLineInHandIsMovedAndTakenOutByKeys() {
        draw.useAtCursor();
        draw.moveCursor(0, -3);
        draw.useAtCursor();
        Line before = placed().get(0);
        draw.moveInHand(0, 2);
        assertThat(placed().get(0).from()).isEqualTo(before.from() + 2);
        draw.moveInHand(-1, 0);
        assertThat(placed().get(0).on()).isNotEqualTo(before.on());
        draw.eraseAtCursor();
        assertThat(placed()).isEmpty();
        draw.undo();
        assertThat(placed()).hasSize(1);
    }

    @Test
    void theLineInHandGoesBeforeWhatIsChosen() {
        draw.take(Tool.FIGURE);
        draw.useAtCursor();
        assertThat(view.state.hand().chosen()).isPresent();
        draw.take(Tool.GATHER);
        lines.grab(0.5, 0.5);
        lines.pull(6.5, 0.5);
        draw.release();
        Plate before = view.state.plate().orElseThrow();
        draw.eraseAtCursor();
        assertThat(placed()).isEmpty();
        assertThat(view.state.plate().orElseThrow().rows()).isEqualTo(before.rows());
    }

    @Test
    void eraseWithoutALineInHandLeavesTheCables() {
        Plate before = view.state.plate().orElseThrow();
        draw.press(new Spot(0, 3), platekeep.client.plate.chart.Press.PLAIN);
        draw.release();
        lines.letGo();
        draw.eraseAtCursor();
        assertThat(view.state.plate().orElseThrow().rows()).isEqualTo(before.rows());
    }

    @Test
    void aLineThatLiesThereIsTakenHoldOfRatherThanCrossed() {
        lines.grab(0.5, 0.5);
        lines.pull(6.5, 0.5);
        draw.release();
        double[] box = view.state.drawing().orElseThrow().lineBox(0).orElseThrow();
        assertThat(lines.grab(3, (box[1] + box[3]) / 2)).isTrue();
        lines.pull(4, (box[1] + box[3]) / 2);
        draw.release();
        assertThat(placed()).hasSize(1);
        assertThat(placed().get(0).from())
                .isEqualTo(view.state.plate().orElseThrow().from() + 1);
    }
}
