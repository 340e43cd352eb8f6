package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

class FiguresTest {

    @Test
    void aPlateWithoutRowsHasNoFigure() {
        Figures figures = Figures.of(Drawn.plate());

        assertThat(figures.count()).isZero();
        assertThat(figures.all()).isEmpty();
        assertThat(figures.at(0, 0)).isEqualTo(Figures.NONE);
    }

    @Test
    void cablesThatOnlyMeetAtACornerAreTwoFigures() {
        assertThat(Figures.of(Drawn.plate(".a", "a.")).count()).isEqualTo(2);
    }

    @Test
    void figuresAreNumberedFromTheBottomThenFromTheLeft() {
        Figures figures = Figures.of(Drawn.plateFrom(5, "a....b", "....cc", "d....."));

        assertThat(figures.all())
                .containsExactly(
                        new Figure(0, 1, 2, 2, 5, 5, 5),
                        new Figure(1, 3, 0, 1, 9, 10, 9),
                        new Figure(2, 1, 0, 0, 5, 5, 5));
    }

    @Test
    void armsThatJoinOnlyHighUpAreOneFigure() {
        Figures figures = Figures.of(Drawn.plate("aaaaa", "a.a.a", "a...a"));

        assertThat(figures.count()).isEqualTo(1);
        assertThat(figures.get(0)).isEqualTo(new Figure(0, 10, 0, 2, 1, 5, 1));
    }

    @Test
    void outsideTheChartNoFigureLies() {
        Figures figures = Figures.of(Drawn.plate("aa"));

        assertThat(figures.at(0, 0)).isEqualTo(Figures.NONE);
        assertThat(figures.at(0, 3)).isEqualTo(Figures.NONE);
        assertThat(figures.at(-1, 1)).isEqualTo(Figures.NONE);
        assertThat(figures.at(1, 1)).isEqualTo(Figures.NONE);
        assertThat(figures.figureAt(0, 2)).hasValue(new Figure(0, 2, 0, 0, 1, 2, 1));
    }

    @Property(tries = 300, seed = "20261125")
    void twoCablesAreInOneFigureJustWhenAWalkLeadsFromOneToTheOther(@ForAll("charts") Plate plate) {
        Figures figures = Figures.of(plate);
        int[][] walked = walked(plate);
        Map<Integer, Integer> pairing = new HashMap<>();
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int i = 0; i < plate.positions(); i++) {
                int figure = figures.at(r, plate.from() + i);
                assertThat(figure == Figures.NONE).isEqualTo(walked[r][i] == 0);
                if (figure != Figures.NONE) {
                    Integer before = pairing.putIfAbsent(figure, walked[r][i]);
                    assertThat(before == null || before == walked[r][i]).isTrue();
                }
            }
        }
        assertThat(pairing.values()).doesNotHaveDuplicates().hasSize(figures.count());
    }

    @Provide
    Arbitrary<Plate> charts() {
        return Charts.small();
    }

    /** The plain way: a walk from each cable not yet reached, numbers from 1. */
    private static int[][] walked(Plate plate) {
        int[][] seen = new int[plate.rows().size()][plate.positions()];
        int number = 0;
        for (int r = 0; r < seen.length; r++) {
            for (int i = 0; i < plate.positions(); i++) {
                if (seen[r][i] == 0 && plate.rows().get(r).cells().charAt(i) != Row.EMPTY) {
                    walk(plate, seen, r, i, ++number);
                }
            }
        }
        return seen;
    }

    private static void walk(Plate plate, int[][] seen, int row, int index, int number) {
        Deque<int[]> next = new ArrayDeque<>();
        next.push(new int[] {row, index});
        while (!next.isEmpty()) {
            int[] at = next.pop();
            int r = at[0];
            int i = at[1];
            if (plate.cellAt(r, plate.from() + i) == Row.EMPTY || seen[r][i] != 0) {
                continue;
            }
            seen[r][i] = number;
            next.push(new int[] {r - 1, i});
            next.push(new int[] {r + 1, i});
            next.push(new int[] {r, i - 1});
            next.push(new int[] {r, i + 1});
        }
    }
}
