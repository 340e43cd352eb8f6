package platekeep.client.plate.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Unknown;

class EditsTest {
    private static final Plate PLATE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Small")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4)))
            .pleats(Optional.of(new Pleats(5, 10)))
            .rows(List.of(Row.of("tttt", "..c.."), Row.of("mmmm", ".bbb."), Row.of("llll", ".bbb.")))
            .starts(List.of(new Start(new RowId("llll"), 6, CableKind.DOWN)))
            .marks(List.of(new Mark("french knot", new RowId("mmmm"), "7 1/2", 'c', Unknown.NONE)))
            .remarks(List.of(new Remark(
                    new RowId("k2w9"),
                    Optional.of(new RowId("mmmm")),
                    Optional.of(6),
                    Optional.of(7),
                    "Isolde Marsh",
                    LocalDate.of(2026, 3, 2),
                    "Wider?",
                    false,
                    Unknown.NONE)))
            .build();

    private static List<String> cells(Plate plate) {
        return plate.rows().stream().map(Row::cells).toList();
    }

    @Test
    void paintingOutsideTheChartChangesNothing() {
        assertThat(CableEdits.paint(PLATE, List.of(new Spot(3, 0), new Spot(0, 5), new Spot(-1, 2)), 'b'))
                .isSameAs(PLATE);
    }

    @Test
    void aStrokeFromSpotToSpotLeavesNoGap() {
        assertThat(CableEdits.line(new Spot(0, 0), new Spot(1, 4)))
                .hasSize(5)
                .startsWith(new Spot(0, 0))
                .endsWith(new Spot(1, 4));
        assertThat(CableEdits.line(new Spot(2, 2), new Spot(2, 2))).containsExactly(new Spot(2, 2));
    }

    @Test
    void fillingReachesWhatIsAlikeAndHangsTogether() {
        assertThat(CableEdits.alike(PLATE, new Spot(1, 1))).hasSize(6);
        assertThat(CableEdits.alike(PLATE, new Spot(0, 2))).containsExactly(new Spot(0, 2));
        assertThat(CableEdits.alike(PLATE, new Spot(0, 0))).hasSize(4);
    }

    @Test
    void aRowThatIsPutInHasAnIdOfItsOwn() {
        Plate more = RowEdits.insert(PLATE, 1, new Random(1));
        assertThat(cells(more)).containsExactly("..c..", ".....", ".bbb.", ".bbb.");
        assertThat(more.rows().stream().map(Row::id).distinct()).hasSize(4);
        assertThat(cells(RowEdits.duplicate(PLATE, 0, new Random(1)))).startsWith("..c..", "..c..");
    }

    @Test
    void aRowThatIsTakenOutTakesItsStitchesAlongAndLeavesItsRemarks() {
        Plate less = RowEdits.delete(PLATE, 1);
        assertThat(cells(less)).containsExactly("..c..", ".bbb.");
        assertThat(less.marks()).isEmpty();
        assertThat(less.remarks()).singleElement().satisfies(r -> {
            assertThat(r.row()).isEmpty();
            assertThat(r.text()).isEqualTo("Wider?");
        });
    }

    @Test
    void theLastRowStays() {
        Plate one = RowEdits.delete(RowEdits.delete(PLATE, 0), 0);
        assertThat(RowEdits.delete(one, 0)).isSameAs(one);
    }

    @Test
    void aWidenedChartKeepsItsPleatNumbers() {
        Plate wide = PleatEdits.widen(PLATE, 2, 1).orElseThrow();
        assertThat(wide.pleats()).contains(new Pleats(3, 11));
        assertThat(wide.cellAt(0, 7)).isEqualTo('c');
        assertThat(wide.starts()).isEqualTo(PLATE.starts());
    }

    @Test
    void narrowingNeverCutsACableOff() {
        assertThat(PleatEdits.widen(PLATE, -1, -1).map(EditsTest::cells)).contains(List.of(".c.", "bbb", "bbb"));
        assertThat(PleatEdits.widen(PLATE, -2, 0)).isEmpty();
        assertThat(PleatEdits.widen(PLATE, 0, -2)).isEmpty();
    }

    @Test
    void aShiftedPictureTakesStartsStitchesAndRemarksAlong() {
        Plate right = PleatEdits.shift(PLATE, 1).orElseThrow();
        assertThat(cells(right)).containsExactly("...c.", "..bbb", "..bbb");
        assertThat(right.starts().get(0).pleat()).isEqualTo(7);
        assertThat(right.marks().get(0).pleat()).isEqualTo("8 1/2");
        assertThat(right.remarks().get(0).from()).contains(7);
        assertThat(PleatEdits.shift(right, 1)).isEmpty();
        assertThat(PleatEdits.shift(right, -1)).contains(PLATE);
    }

    @Test
    void aRowIsShiftedByItselfWithWhatIsPinnedToItAndNothingIsCutOff() {
        Plate right = RowEdits.shift(PLATE, 0, 1).orElseThrow();
        assertThat(cells(right).get(0)).isEqualTo("." + cells(PLATE).get(0).substring(0, 4));
        assertThat(cells(right).subList(1, 3)).isEqualTo(cells(PLATE).subList(1, 3));
        assertThat(RowEdits.shift(right, 0, -1)).contains(PLATE);
        assertThat(RowEdits.shift(PLATE, 0, 5)).isEmpty();
    }

    @Test
    void coloursAreCountedAndOnlyUnusedOnesGo() {
        Plate more = ColourEdits.put(PLATE, 'l', new Colour("leaf", "#4F7A3A", 4));
        assertThat(new ColourCounts().of(more))
                .containsEntry('b', 6)
                .containsEntry('c', 1)
                .containsEntry('l', 0);
        assertThat(ColourEdits.remove(more, 'l')).isEqualTo(PLATE);
        assertThat(ColourEdits.remove(more, 'c')).isSameAs(more);
    }

    @Test
    void aPlaceIsToldAsAStitcherCounts() {
        Drawing drawing = Drawing.of(PLATE);
        assertThat(PlaceWords.of(drawing, new Spot(2, 1)))
                .isEqualTo("row 1, pleats 6 and 7: down cable, brick; meets nothing below");
        assertThat(PlaceWords.of(drawing, new Spot(2, 2)))
                .isEqualTo("row 1, pleats 7 and 8: up cable, brick; meets brick above");
        assertThat(PlaceWords.of(drawing, new Spot(0, 0))).isEqualTo("row 3, pleats 5 and 6: no cable");
    }

    @Test
    void stepsLeadBackAndForthByTheirNames() {
        Steps steps = new Steps(PLATE);
        steps.take("Delete a row", RowEdits.delete(PLATE, 0));
        steps.take("Delete a row", steps.now());
        assertThat(steps.undoName()).contains("Delete a row");
        steps.undo();
        assertThat(steps.now()).isEqualTo(PLATE);
        assertThat(steps.undoName()).isEmpty();
        assertThat(steps.redoName()).contains("Delete a row");
        steps.redo();
        assertThat(steps.now().rows()).hasSize(2);
    }

    @Test
    void aStrokeIsOneStep() {
        Steps steps = new Steps(PLATE);
        steps.stroke("Paint brick", CableEdits.paint(steps.now(), List.of(new Spot(0, 0)), 'b'));
        steps.stroke("Paint brick", CableEdits.paint(steps.now(), List.of(new Spot(0, 1)), 'b'));
        steps.endStroke();
        steps.stroke("Paint brick", CableEdits.paint(steps.now(), List.of(new Spot(0, 3)), 'b'));
        steps.undo();
        assertThat(cells(steps.now())).startsWith("bbc..");
        steps.undo();
        assertThat(steps.now()).isEqualTo(PLATE);
    }

    @Test
    void aNewStepForgetsWhatWasTakenBack() {
        Steps steps = new Steps(PLATE);
        steps.take("Delete a row", RowEdits.delete(PLATE, 0));
        steps.undo();
        steps.take("Shift", PleatEdits.shift(PLATE, 1).orElseThrow());
        assertThat(steps.redoName()).isEmpty();
    }
}
