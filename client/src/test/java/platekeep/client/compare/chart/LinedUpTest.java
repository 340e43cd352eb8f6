package platekeep.client.compare.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import platekeep.client.compare.chart.Line.Edited;
import platekeep.client.compare.chart.Line.Fate;
import platekeep.model.compare.Side;
import platekeep.model.plate.Plate;

class LinedUpTest {
    private static final Plate TOWER =
            ChartPlates.plate("r5r5 ...bb...", "r4r4 ..bccb..", "r3r3 ..bnnb..", "r2r2 .bbccbb.", "r1r1 nnnnnnnn");

    @Test
    void aRowOfItsOwnHasAGapBesideIt() {
        LinedUp lines = ChartPlates.paired(
                        TOWER,
                        ChartPlates.plate(
                                "r5r5 ...bb...", "nn11 ..cccc..", "r4r4 ..bccb..", "r2r2 .bbccbb.", "r1r1 nnnnnnnn"))
                .lines();
        assertThat(lines.lines())
                .containsExactly(
                        new Line(0, 0, Fate.STAYED, Edited.NO, Line.NONE),
                        new Line(Line.NONE, 1, Fate.ADDED, Edited.NO, Line.NONE),
                        new Line(1, 2, Fate.STAYED, Edited.NO, Line.NONE),
                        new Line(2, Line.NONE, Fate.REMOVED, Edited.NO, Line.NONE),
                        new Line(3, 3, Fate.STAYED, Edited.NO, Line.NONE),
                        new Line(4, 4, Fate.STAYED, Edited.NO, Line.NONE));
    }

    @Test
    void aRowThatWasMovedAndEditedStandsAtBothItsPlacesAndShowsBoth() {
        LinedUp lines = ChartPlates.paired(
                        TOWER,
                        ChartPlates.plate(
                                "r2r2 .bbcnbb.", "r5r5 ...bb...", "r4r4 ..bccb..", "r3r3 ..bnnb..", "r1r1 nnnnnnnn"))
                .lines();
        assertThat(lines.line(0)).isEqualTo(new Line(Line.NONE, 0, Fate.CAME, Edited.YES, 4));
        assertThat(lines.line(4)).isEqualTo(new Line(3, Line.NONE, Fate.LEFT, Edited.YES, 0));
        assertThat(lines.of(Side.BEFORE, 3)).isEqualTo(4);
        assertThat(lines.of(Side.AFTER, 0)).isZero();
    }

    @Test
    void eachPlatesOwnRowsStayInOrderAndNoneIsLost() {
        Plate after =
                ChartPlates.plate("r2r2 .bbcnbb.", "r5r5 ...bb...", "nn11 ..cccc..", "r3r3 ..bnnb..", "r1r1 nnnnnnnn");
        LinedUp lines = ChartPlates.paired(TOWER, after).lines();
        assertThat(lines.lines().stream().map(Line::before).filter(row -> row != Line.NONE))
                .containsExactly(0, 1, 2, 3, 4);
        assertThat(lines.lines().stream().map(Line::after).filter(row -> row != Line.NONE))
                .containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void aPictureTurnedUpsideDownStaysRowBesideRow() {
        Plate after =
                ChartPlates.plate("r1r1 nnnnnnnn", "r2r2 .bbccbb.", "r3r3 ..bnnb..", "r4r4 ..bccb..", "r5r5 ...bb...");
        LinedUp lines = ChartPlates.paired(TOWER, after).lines();
        assertThat(lines.size()).isEqualTo(5);
        assertThat(lines.lines()).allMatch(line -> line.before() == 4 - line.after());
    }

    @Test
    void platesWithHardlyARowInCommonStandByTheNumberFromTheBottom() {
        Plate other = ChartPlates.plate("x7x7 ........", "x6x6 cc......", "x5x5 .......c");
        LinedUp lines = ChartPlates.paired(TOWER, other).lines();
        assertThat(lines.isByNumber()).isTrue();
        assertThat(lines.size()).isEqualTo(5);
        assertThat(lines.line(0)).isEqualTo(new Line(0, Line.NONE, Fate.BESIDE, Edited.NO, Line.NONE));
        assertThat(lines.line(4)).isEqualTo(new Line(4, 2, Fate.BESIDE, Edited.NO, Line.NONE));
    }
}
