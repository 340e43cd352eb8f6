package platekeep.model.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Line;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Unknown;

class DrawingTest {
    private static final Palette BRICK = Palette.EMPTY.with('b', new Colour("brick", "#A63C2B", 4));

    /** A flowerette: up-down-up below, down-up-down above (common practice, no source). */
    private static Plate flowerette() {
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Flowerette")
                .palette(BRICK)
                .pleats(Optional.of(new Pleats(5, 8)))
                .rows(List.of(Row.of("aaaa", "bbb"), Row.of("bbbb", "bbb")))
                .starts(List.of(new Start(new RowId("bbbb"), 5, CableKind.UP)))
                .build();
    }

    @Test
    void aCableIsTwoPleatsWideAndHalfARowHigh() {
        ChartScale scale = ChartScale.exact(10);
        assertThat(scale.cable()).isEqualTo(20);
        assertThat(scale.row()).isEqualTo(19, within(1e-9)); // a row rises 1.9 pleats: common practice, no source
        assertThat(scale.half()).isEqualTo(9.5, within(1e-9));
    }

    @Test
    void anUpCableAndTheDownCableAboveItLieEdgeToEdge() {
        Drawing drawing = Drawing.of(flowerette());
        ChartScale scale = ChartScale.exact(8);
        assertThat(drawing.kind(1, 0)).isEqualTo(CableKind.UP);
        assertThat(drawing.kind(0, 0)).isEqualTo(CableKind.DOWN);
        assertThat(scale.top(0, CableKind.DOWN) + scale.half()).isEqualTo(scale.top(1, CableKind.UP), within(1e-9));
    }

    @Test
    void everyPointOfACableFindsThatCable() {
        Drawing drawing = Drawing.of(flowerette());
        for (int row = 0; row < 2; row++) {
            for (int i = 0; i < 3; i++) {
                double y = row + (drawing.kind(row, i) == CableKind.UP ? 0.25 : 0.75);
                assertThat(drawing.at(i + 0.1, y)).contains(new Spot(row, i));
                assertThat(drawing.at(i + 1.9, y)).contains(new Spot(row, i));
            }
        }
    }

    @Test
    void outsideTheChartNoPlaceIsFound() {
        Drawing drawing = Drawing.of(flowerette());
        assertThat(drawing.at(-0.1, 0.5)).isEmpty();
        assertThat(drawing.at(4.1, 0.5)).isEmpty();
        assertThat(drawing.at(1, 2.01)).isEmpty();
    }

    @Test
    void aStartThatNamesItsGatheringRowFixesThemAll() {
        Plate plate = flowerette()
                .edit()
                .starts(List.of(new Start(new RowId("bbbb"), 5, CableKind.UP, Optional.of("3"), Unknown.NONE)))
                .lines(List.of(line("2", Optional.of("2 1/2"))))
                .build();
        Drawing drawing = Drawing.of(plate);
        assertThat(drawing.gathering()).extracting(GatheringRow::label).containsExactly("2", "3");
        assertThat(drawing.gathering()).extracting(GatheringRow::y).containsExactly(1.5 - 5, 1.5);
        assertThat(drawing.top()).isLessThan(1.5 - 5);
    }

    @Test
    void withoutANumberGatheringRowsAreNamelessAndLinesLieNowhere() {
        Plate plate =
                flowerette().edit().lines(List.of(line("2", Optional.empty()))).build();
        assertThat(Drawing.of(plate).strands()).isEmpty();
        assertThat(Drawing.of(plate).gathering())
                .extracting(GatheringRow::label)
                .containsExactly("");
    }

    /** A three-step trellis repeats every 8 pleats and stands level at both ends: common practice, no source. */
    @Test
    void aThreeStepTrellisComesBackAfterEightPleats() {
        Cloth cloth = new Cloth(
                Optional.of(4), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Unknown.NONE);
        Plate plate = flowerette()
                .edit()
                .cloth(cloth)
                .lines(List.of(new Line(
                        "2", Optional.of("3"), "trellis", Optional.of(3), 'b', 3, 5, 22, CableKind.DOWN, Unknown.NONE)))
                .build();
        List<Strand> strands = Drawing.of(plate).strands();
        double on = 1.5 - 2 * 5;
        assertThat(strands).hasSize(17);
        assertThat(strands.get(0).y1()).isEqualTo(on);
        assertThat(strands.get(0).y2()).isEqualTo(on);
        assertThat(strands.get(4).y1()).isEqualTo(on + 5, within(1e-9));
        assertThat(strands.get(4).y2()).isEqualTo(on + 5, within(1e-9));
        assertThat(strands.get(8).y1()).isEqualTo(on, within(1e-9));
        assertThat(strands.get(8).y2()).isEqualTo(on, within(1e-9));
    }

    @Test
    void withoutLinesAboveItADrawingBeginsAtItsTopRow() {
        assertThat(Drawing.of(flowerette()).top()).isZero();
        assertThat(Drawing.of(flowerette()).height()).isEqualTo(2);
    }

    @Test
    void aPlateWithoutAChartIsEmpty() {
        Drawing drawing = Drawing.of(new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Only a scan").build());
        assertThat(drawing.pleats()).isZero();
        assertThat(drawing.at(0, 0)).isEmpty();
    }

    private static Line line(String on, Optional<String> to) {
        return new Line(on, to, "wave", Optional.empty(), 'b', 3, 5, 8, CableKind.DOWN, Unknown.NONE);
    }
}
