package platekeep.client.plate.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import platekeep.client.plate.Charted;
import platekeep.client.plate.piece.Area;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Shapes that are painted, held against plain models that share nothing with how they are found. */
class ShapesPropertyTest {

    /**
     * Source: J. E. Bresenham, "Algorithm for computer control of a digital plotter", IBM Systems Journal 4(1), 1965: of
     * the two points next to the true line at each step along the longer side the nearer one is taken, the farther one
     * along where both are as near. Here by the line's equation in whole numbers.
     */
    @Property(seed = "20261126")
    void aLineTakesTheNearestPlaceAtEachStep(
            @ForAll @IntRange(min = -40, max = 40) int rows, @ForAll @IntRange(min = -40, max = 40) int places) {
        int longer = Math.max(Math.abs(rows), Math.abs(places));
        List<Spot> line = CableEdits.line(new Spot(0, 0), new Spot(rows, places));
        assertThat(line).hasSize(longer + 1);
        for (int step = 0; step <= longer; step++) {
            assertThat(line.get(step)).isEqualTo(new Spot(along(step, rows, longer), along(step, places, longer)));
        }
    }

    /** The whole number nearest to step * side / longer, away from 0 at a half. */
    private static int along(int step, int side, int longer) {
        return longer == 0 ? 0 : Integer.signum(side) * ((2 * step * Math.abs(side) + longer) / (2 * longer));
    }

    /** The eight octants of a line 5 along and 2 across: worked by hand from the rule named above. */
    @Example
    void aLineLooksAlikeInAllEightDirections() {
        int[] across = {0, 0, 1, 1, 2, 2};
        for (int down : new int[] {1, -1}) {
            for (int right : new int[] {1, -1}) {
                List<Spot> flat = CableEdits.line(new Spot(0, 0), new Spot(2 * down, 5 * right));
                List<Spot> steep = CableEdits.line(new Spot(0, 0), new Spot(5 * down, 2 * right));
                for (int i = 0; i <= 5; i++) {
                    assertThat(flat.get(i)).isEqualTo(new Spot(across[i] * down, i * right));
                    assertThat(steep.get(i)).isEqualTo(new Spot(i * down, across[i] * right));
                }
            }
        }
    }

    @Property(seed = "20261126")
    void fillingReachesWhatIsReachedByStepsThroughItsColour(
            @ForAll("charts") Plate plate, @ForAll @IntRange(max = 7) int row, @ForAll @IntRange(max = 9) int index) {
        Spot start = new Spot(row % plate.rows().size(), index % plate.positions());
        char key = cell(plate, start);
        assertThat(new HashSet<>(CableEdits.alike(plate, start)))
                .isEqualTo(reached(plate, start, (from, to) -> cell(plate, to) == key));
        assertThat(CableEdits.alike(plate, start)).doesNotHaveDuplicates();
    }

    @Property(seed = "20261126")
    void aFigureIsWhatIsReachedByStepsOverCables(
            @ForAll("charts") Plate plate, @ForAll @IntRange(max = 7) int row, @ForAll @IntRange(max = 9) int index) {
        Spot start = new Spot(row % plate.rows().size(), index % plate.positions());
        if (cell(plate, start) == Row.EMPTY) {
            assertThat(Area.figure(plate, start)).isEmpty();
            assertThat(CableEdits.rim(plate, start)).isEmpty();
            return;
        }
        Set<Spot> figure = reached(plate, start, (from, to) -> cell(plate, to) != Row.EMPTY);
        assertThat(new HashSet<>(Area.figure(plate, start).orElseThrow().spots()))
                .isEqualTo(figure);
        Set<Spot> rim = new HashSet<>(figure);
        rim.removeIf(s -> figure.containsAll(around(s)));
        assertThat(new HashSet<>(CableEdits.rim(plate, start))).isEqualTo(rim);
    }

    /** All places reached, found by going over the whole chart again until nothing is added. */
    private static Set<Spot> reached(Plate plate, Spot start, BiPredicate<Spot, Spot> passes) {
        Set<Spot> found = new HashSet<>(Set.of(start));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (int r = 0; r < plate.rows().size(); r++) {
                for (int i = 0; i < plate.positions(); i++) {
                    Spot spot = new Spot(r, i);
                    boolean isNext = around(spot).stream().anyMatch(n -> found.contains(n) && passes.test(n, spot));
                    grew |= isNext && found.add(spot);
                }
            }
        }
        return found;
    }

    private static List<Spot> around(Spot spot) {
        return List.of(spot.moved(-1, 0), spot.moved(1, 0), spot.moved(0, -1), spot.moved(0, 1));
    }

    private static char cell(Plate plate, Spot spot) {
        return plate.rows().get(spot.row()).cells().charAt(spot.index());
    }

    @Property(seed = "20261126")
    void whatIsMirroredFacesItselfAcrossTheAxis(
            @ForAll("charts") Plate plate, @ForAll @IntRange(min = -3, max = 22) int axis) {
        Set<Spot> both = new HashSet<>(CableEdits.mirrored(CableEdits.block(new Spot(0, 0), new Spot(1, 3)), axis));
        assertThat(both).allSatisfy(s -> assertThat(both).contains(new Spot(s.row(), axis - s.index())));
        Plate painted = CableEdits.paint(plate, List.copyOf(both), 'c');
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int i = 0; i < plate.positions(); i++) {
                Spot spot = new Spot(r, i);
                assertThat(cell(painted, spot)).isEqualTo(both.contains(spot) ? 'c' : cell(plate, spot));
            }
        }
    }

    @Provide
    Arbitrary<Plate> charts() {
        return Charted.small();
    }
}
