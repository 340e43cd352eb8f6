package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.plate.CableKind.UP;
import static platekeep.model.stitch.Drawn.plate;
import static platekeep.model.stitch.Drawn.start;
import static platekeep.model.stitch.Drawn.started;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;

/**
 * The geometry of stacked cables against what is known of it. Each case says how it is known: "common practice, no
 * source", or derived from that by geometry.
 */
class StackWorkedExampleTest {

    /** Common practice, no source: n cables in a row take n + 1 pleats. */
    @Test
    void cablesInARowTakeOnePleatMoreThanThereAreCables() {
        assertThat(Figures.of(plate("aaaaaaaaaaa")).get(0).pleats()).isEqualTo(12);
        assertThat(Figures.of(plate("a")).get(0).pleats()).isEqualTo(2);
    }

    /** Common practice, no source; the counts derived: 11, 9, 7, 5, 3 cables, 35 in all over 12 pleats. */
    @Test
    void fiveStackedRowsThatBeginWithElevenCablesHoldElevenNineSevenFiveThree() {
        List<String> rows = new ArrayList<>(List.of("r000 aaaaaaaaaaa"));
        for (int next = 1; next < 5; next++) {
            rows.add(0, "r00" + next + " " + spanOfMeetingCables(stack(rows)));
        }
        Plate stack = stack(rows);

        assertThat(stack.rows().stream().map(r -> r.cells().replace(".", "").length()))
                .containsExactly(3, 5, 7, 9, 11);
        assertThat(Drawn.kinds(stack))
                .allSatisfy(
                        row -> assertThat(row.replace(".", "")).startsWith("d").endsWith("d"));
        assertThat(Figures.of(stack).get(0).cables()).isEqualTo(35);
        assertThat(Figures.of(stack).get(0).pleats()).isEqualTo(12);
        assertThat(Holding.of(stack).count()).isEqualTo(1);
    }

    private static Plate stack(List<String> rows) {
        return started(plate(rows.toArray(String[]::new)), start("r000", 1, DOWN));
    }

    /** From the first to the last cable of the top row that meets the row above: its up cables. */
    private static String spanOfMeetingCables(Plate stack) {
        String top = Drawn.kinds(stack).get(0);
        int from = top.indexOf('u');
        int to = top.lastIndexOf('u');
        return ".".repeat(from) + "a".repeat(to - from + 1) + ".".repeat(top.length() - to - 1);
    }

    /** Common practice, no source: six cables over four pleats, up-down-up below, down-up-down above. */
    @Test
    void aFloweretteIsSixCablesOverFourPleats() {
        Plate flowerette = started(plate("aaaa aaa", "bbbb aaa"), start("bbbb", 1, UP));

        assertThat(Drawn.kinds(flowerette)).containsExactly("dud", "udu");
        assertThat(Figures.of(flowerette).get(0).cables()).isEqualTo(6);
        assertThat(Figures.of(flowerette).get(0).pleats()).isEqualTo(4);
        assertThat(Holding.of(flowerette).count()).isEqualTo(1);
    }

    /** Common practice, no source: the first row begins with a down cable, the row under it with an up cable. */
    @Test
    void aDoubleCableBeginsDownAboveAndUpBelow() {
        Plate cable = started(plate("aaaa aaaa", "bbbb aaaa"), start("aaaa", 1, DOWN));

        assertThat(Drawn.kinds(cable)).containsExactly("dudu", "udud");
        assertThat(Holding.of(cable).count()).isEqualTo(1);
    }

    /** Derived: indented by k positions, a row begins like the row below if k is odd, with the other kind if k is even. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
    void theStartOfARowFollowsFromItsIndent(int indent) {
        for (CableKind kind : CableKind.values()) {
            Plate rows = started(
                    plate("aaaa " + ".".repeat(indent) + "a".repeat(8 - indent), "bbbb aaaaaaaa"),
                    start("bbbb", 1, kind));
            CableKind begins = Kinds.of(rows).at(0, 1 + indent).orElseThrow();

            assertThat(begins == kind).isEqualTo(indent % 2 == 1);
        }
    }

    /** Derived: a row with an odd count begins and ends alike. */
    @ParameterizedTest
    @CsvSource({"1, true", "2, false", "3, true", "10, false", "11, true"})
    void aRowWithAnOddCountBeginsAndEndsAlike(int cables, boolean alike) {
        Kinds kinds = Kinds.of(plate("a".repeat(cables)));

        assertThat(kinds.at(0, 1).equals(kinds.at(0, cables))).isEqualTo(alike);
    }

    /** Derived: a column one cable wide falls into pairs. */
    @Test
    void aColumnOneCableWideFallsIntoPairs() {
        Holding holding = Holding.of(started(plate("aaaa a", "bbbb a", "cccc a", "dddd a"), start("dddd", 1, UP)));

        assertThat(holding.count()).isEqualTo(2);
        assertThat(holding.cables(0)).isEqualTo(2);
        assertThat(holding.cables(1)).isEqualTo(2);
        assertThat(holding.at(3, 1)).isEqualTo(holding.at(2, 1));
    }

    /** Derived: a diagonal one cable wide never meets. */
    @ParameterizedTest
    @EnumSource(CableKind.class)
    void aDiagonalOneCableWideNeverMeets(CableKind kind) {
        Plate diagonal = started(plate("aaaa ..a", "bbbb .a.", "cccc a.."), start("cccc", 1, kind));

        assertThat(Holding.of(diagonal).count()).isEqualTo(3);
    }

    /** Derived: a diagonal two cables wide holds in one of the two phases only. */
    @Test
    void aDiagonalTwoCablesWideHoldsInOnePhaseOnly() {
        Plate diagonal = plate("aaaa ..aa", "bbbb .aa.", "cccc aa..");

        assertThat(Holding.of(started(diagonal, start("cccc", 1, DOWN))).count())
                .isEqualTo(1);
        assertThat(Holding.of(started(diagonal, start("cccc", 1, UP))).count()).isEqualTo(3);
    }

    /** Derived: columns two wide and diagonals three wide hold. */
    @ParameterizedTest
    @EnumSource(CableKind.class)
    void columnsTwoWideAndDiagonalsThreeWideHold(CableKind kind) {
        Plate column = started(plate("aaaa aa", "bbbb aa", "cccc aa"), start("cccc", 1, kind));
        Plate diagonal = started(plate("aaaa ..aaa", "bbbb .aaa.", "cccc aaa.."), start("cccc", 1, kind));

        assertThat(Holding.of(column).count()).isEqualTo(1);
        assertThat(Holding.of(diagonal).count()).isEqualTo(1);
    }

    /** Derived: with the start left where it was, up and down are swapped if rows + positions moved are odd. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "1, 1", "2, 1", "0, 2", "2, 2", "1, 2"})
    void aMovedFigureIsSwappedWhenItMovedByAnOddTotal(int up, int right) {
        String blank = ".......";
        Plate before = started(
                plate("r000 " + blank, "r001 " + blank, "r002 aa.....", "r003 aaa...."), start("r003", 1, DOWN));
        String[] rows = {"r000 " + blank, "r001 " + blank, "r002 " + blank, "r003 " + blank};
        rows[2 - up] = rows[2 - up].substring(0, 5) + shifted("aa.....", right);
        rows[3 - up] = rows[3 - up].substring(0, 5) + shifted("aaa....", right);
        Plate moved = Drawn.redrawn(before, rows);

        CableKind was = Kinds.of(before).at(3, 1).orElseThrow();
        assertThat(Kinds.of(moved).at(3 - up, 1 + right)).hasValue(was.turned(up + right));
    }

    private static String shifted(String cells, int right) {
        return ".".repeat(right) + cells.substring(0, cells.length() - right);
    }

    /** Derived: mirrored left to right, swapped if over an even number of positions. */
    @ParameterizedTest
    @ValueSource(strings = {"aab", "aaba", "aabab", "aababb"})
    void aFigureMirroredLeftToRightIsSwappedOverAnEvenNumberOfPositions(String cells) {
        Plate before = started(plate("aaaa " + cells), start("aaaa", 1, DOWN));
        Plate mirrored = Drawn.redrawn(before, "aaaa " + new StringBuilder(cells).reverse());
        String wanted = new StringBuilder(Drawn.kinds(before).get(0)).reverse().toString();
        boolean swapped = !Drawn.kinds(mirrored).get(0).equals(wanted);

        assertThat(swapped).isEqualTo(cells.length() % 2 == 0);
    }

    /** Derived: mirrored top to bottom, where every up should become a down, swapped if over an odd number of rows. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void aFigureMirroredTopToBottomIsSwappedOverAnOddNumberOfRows(int rows) {
        String[] chart = new String[rows];
        for (int r = 0; r < rows; r++) {
            chart[r] = "r00" + r + " aaa";
        }
        Plate mirrored = started(plate(chart), start("r000", 1, DOWN));
        CableKind was = Kinds.of(mirrored).at(0, 1).orElseThrow();
        CableKind now = Kinds.of(mirrored).at(rows - 1, 1).orElseThrow();

        assertThat(now == was.turned()).isEqualTo(rows % 2 == 0);
    }
}
