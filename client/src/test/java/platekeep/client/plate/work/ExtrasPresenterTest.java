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
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.Kin;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Unknown;

class ExtrasPresenterTest {
    private static final String OTHER = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a12";

    @TempDir
    private Path folder;

    private TestRoom test;
    private final RecordingPlateView view = new RecordingPlateView();
    private PlatePresenter plates;
    private DrawPresenter draw;

    @BeforeEach
    void openAPlate() throws LibraryException {
        Plate plate = Charted.of("aab...", "aab...", "......");
        test = new TestRoom(folder);
        test.library.save(saving(plate));
        test.open();
        plates = new PlatePresenter(test.room, test.drafts, new Motifs(folder.resolve("motifs")), view);
        plates.open(test.library, plate.id());
        draw = plates.draw();
    }

    private static Saving saving(Plate plate) {
        return new Saving(List.of(new Change.PutPlate(plate)), "First", Optional.empty(), Optional.empty());
    }

    private Plate plate() {
        return view.state.plate().orElseThrow();
    }

    @Test
    void aSingleStitchIsPutOnMovedAndTakenOff() {
        draw.choose('b');
        draw.take(Tool.STITCH);
        draw.press(new Spot(0, 1), Press.PLAIN);
        draw.release();
        assertThat(plate().marks()).containsExactly(new Mark("french knot", Charted.id(0), "2 1/2", 'b', Unknown.NONE));
        assertThat(view.place).endsWith("; french knot on it");
        draw.press(new Spot(0, 1), Press.PLAIN);
        draw.drag(new Spot(1, 2));
        draw.drag(new Spot(1, 3));
        draw.release();
        assertThat(plate().marks()).extracting(Mark::pleat).containsExactly("4 1/2");
        assertThat(view.state.undo()).contains("Move a french knot");
        draw.undo();
        assertThat(plate().marks()).extracting(Mark::pleat).containsExactly("2 1/2");
        draw.moveCursor(-9, -9);
        draw.moveCursor(0, 1);
        draw.eraseAtCursor();
        assertThat(plate().marks()).isEmpty();
        assertThat(Charted.cells(plate())).startsWith("aab...");
        plates.extras().take("bullion");
        draw.useAtCursor();
        assertThat(view.state.undo()).contains("Put a bullion on");
    }

    @Test
    void aRemarkIsPinnedToWhatIsChosenAnsweredAndTickedOff() {
        draw.take(Tool.REGION);
        draw.press(new Spot(0, 1), Press.PLAIN);
        draw.drag(new Spot(1, 2));
        draw.release();
        view.line = Optional.of("Wider rock?");
        plates.remarks().say();
        Remark said = plate().remarks().get(0);
        assertThat(said.row()).contains(Charted.id(1));
        assertThat(List.of(said.from().orElseThrow(), said.to().orElseThrow())).containsExactly(2, 3);
        assertThat(said.by()).isEqualTo("Wenna Tarrow");
        draw.hover(Optional.of(new Spot(1, 1)));
        assertThat(view.place).endsWith("; Wenna Tarrow: Wider rock?");
        view.line = Optional.of("By one cable");
        plates.remarks().answer(said);
        assertThat(plate().remarks())
                .hasSize(2)
                .allSatisfy(r -> assertThat(r.row()).contains(Charted.id(1)));
        plates.remarks().tick(said);
        assertThat(plate().remarks())
                .filteredOn(Remark::done)
                .extracting(Remark::text)
                .containsExactly("Wider rock?");
        plates.remarks().show(said);
        assertThat(view.pointedOut).contains(new Spot(1, 1));
        plates.remarks().remove(said);
        assertThat(plate().remarks()).hasSize(1);
        draw.undo();
        draw.undo();
        assertThat(plate().remarks()).hasSize(2).noneMatch(Remark::done);
    }

    @Test
    void geometricLinesAreAddedMovedAndTakenOut() {
        plates.lines().addLine();
        assertThat(plate().lines()).singleElement().satisfies(line -> {
            assertThat(line.from()).isEqualTo(1);
            assertThat(line.to()).isEqualTo(7);
        });
        plates.lines().moveLine(0, 1, 0);
        plates.lines().moveLine(0, 1, 0);
        assertThat(plate().lines().get(0).from()).isEqualTo(3);
        assertThat(ExtraEdits.words(plate(), plate().lines().get(0)))
                .isEqualTo("cable, row 1, pleats 3 to 9, apple, 3 strands");
        draw.undo();
        view.geometric = line -> new Line(
                "2",
                Optional.of("2 1/2"),
                "trellis",
                Optional.of(3),
                'b',
                3,
                line.from(),
                line.to(),
                line.start(),
                line.unknown());
        plates.lines().changeLine(0);
        assertThat(view.state.undo()).contains("Change a line of trellis");
        plates.lines().removeLine(0);
        assertThat(plate().lines()).isEmpty();
    }

    @Test
    void notionsAreAddedChangedAndTakenOut() {
        view.notion = Optional.of(new Notion("button", Optional.of("9 mm"), 2, Unknown.NONE));
        plates.extras().addNotion();
        assertThat(ExtraEdits.words(plate().notions().get(0))).isEqualTo("2 x button, 9 mm");
        view.notion = Optional.of(new Notion("bead", Optional.empty(), 1, Unknown.NONE));
        plates.extras().changeNotion(0);
        assertThat(plate().notions()).extracting(Notion::kind).containsExactly("bead");
        plates.extras().removeNotion(0);
        assertThat(plate().notions()).isEmpty();
    }

    @Test
    void platesThatWereStartedFromEachOtherAreKnownBothWays() throws LibraryException {
        String version = test.library.newest().orElseThrow().id();
        Plate other = plate().edit()
                .id(OTHER)
                .title("Mirrored")
                .fromPlate(Optional.of(new FromPlate(plate().id(), version, Unknown.NONE)))
                .build();
        test.library.save(saving(other));
        plates.open(test.library, OTHER);
        assertThat(view.state.kin().from().orElseThrow().words()).startsWith("Charted, version of ");
        String id = view.state.kin().from().orElseThrow().plateId();
        plates.openRelative(id);
        assertThat(plate().title()).isEqualTo("Charted");
        assertThat(view.state.kin().here()).extracting(Kin.Relative::words).containsExactly("Mirrored");
    }

    @Test
    void aLineIsTakenHoldOfOnTheChartAndMoved() throws LibraryException {
        Plate before = plate();
        plates.draw()
                .facts(
                        "Five gathering rows",
                        p -> p.edit()
                                .cloth(new Cloth(
                                        Optional.of(5),
                                        Optional.empty(),
                                        Optional.of(5),
                                        Optional.empty(),
                                        List.of(),
                                        Unknown.NONE))
                                .build());
        plates.lines().addLine();
        draw.take(Tool.STITCH);
        double onFirst = before.rows().size() - 0.5 - 4 * 5;
        assertThat(plates.lines().grab(2, onFirst + 3)).isFalse();
        assertThat(plates.lines().grab(2, onFirst + 0.2)).isTrue();
        plates.lines().pull(3.9, onFirst + 1);
        plates.lines().pull(4.1, onFirst + 2.8);
        draw.release();
        assertThat(plate().lines()).singleElement().satisfies(line -> {
            assertThat(line.on()).isEqualTo("1 1/2");
            assertThat(line.from()).isEqualTo(3);
        });
        assertThat(view.state.undo()).contains("Move a line of cable");
        plates.lines().moveLine(0, 0, -1);
        plates.lines().moveLine(0, 0, -1);
        assertThat(plate().lines().get(0).on()).isEqualTo("1");
        draw.take(Tool.POINT);
        assertThat(plates.lines().grab(2, onFirst + 0.2)).isFalse();
    }
}
