package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.plate.CableKind.UP;
import static platekeep.model.stitch.Drawn.start;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;

class KindsTest {

    @Test
    void aPlateWithoutStartsBeginsWithADownCableAtTheLeftOfItsLowestRowThatHasOne() {
        assertThat(Drawn.kinds(Drawn.plate("a..", "aa.", ".aa", "..."))).containsExactly("u..", "du.", ".du", "...");
    }

    @Test
    void upAndDownAlternateAlongTheRowAndUpwards() {
        Plate plate = Drawn.started(Drawn.plate("aaaa aaa", "bbbb aaa"), start("aaaa", 2, UP));

        assertThat(Drawn.kinds(plate)).containsExactly("dud", "udu");
    }

    @Test
    void eachFigureFollowsItsOwnStart() {
        Plate plate =
                Drawn.started(Drawn.plate("aaaa aa.aa", "bbbb aa.aa"), start("bbbb", 1, DOWN), start("bbbb", 4, DOWN));

        assertThat(Drawn.kinds(plate)).containsExactly("ud.ud", "du.du");
    }

    @Test
    void aFigureWithoutAStartFollowsTheFirstOfThePlate() {
        Plate plate = Drawn.started(Drawn.plate("aaaa aa.aa", "bbbb aa.aa"), start("bbbb", 1, DOWN));

        assertThat(Drawn.kinds(plate)).containsExactly("ud.du", "du.ud");
    }

    @Test
    void theFirstStartIsFollowedEvenWhereItStandsOnNoCable() {
        Plate plate = Drawn.started(Drawn.plate("aaaa a.", "bbbb .."), start("bbbb", 2, UP));

        assertThat(Drawn.kinds(plate)).containsExactly("u.", "..");
    }

    @Test
    void aStartOnARowThatIsNotThereSettlesNothing() {
        Plate plate = Drawn.started(Drawn.plate("aaaa .aa"), start("zzzz", 1, UP));

        assertThat(Drawn.kinds(plate)).containsExactly(".du");
    }

    @Test
    void ofTwoStartsInAFigureTheLowerCounts() {
        Plate plate =
                Drawn.started(Drawn.plate("aaaa a", "bbbb a", "cccc a"), start("aaaa", 1, UP), start("cccc", 1, UP));

        assertThat(Drawn.kinds(plate)).containsExactly("u", "d", "u");
        assertThat(Kinds.of(plate).startOf(0)).hasValue(start("cccc", 1, UP));
    }

    @Test
    void pleatsLeftOfTheOriginCountAlike() {
        Plate plate = Drawn.started(Drawn.plateFrom(-3, "aaaa aaaa"), start("aaaa", -3, DOWN));

        assertThat(Drawn.kinds(plate)).containsExactly("dudu");
    }

    @Property(tries = 300, seed = "20261125")
    void everyCableIsOfItsStartsKindJustWhenItsDistanceIsEven(@ForAll("plates") Plate plate) {
        Kinds kinds = Kinds.of(plate);
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int p = plate.from(); p < plate.from() + plate.positions(); p++) {
                if (plate.cellAt(r, p) == Row.EMPTY) {
                    assertThat(kinds.at(r, p)).isEmpty();
                } else {
                    assertThat(kinds.at(r, p)).hasValue(byTheWordsOfTheFormat(plate, r, p));
                }
            }
        }
    }

    /** The rule of the plate's text, said again in the plain way. */
    private static CableKind byTheWordsOfTheFormat(Plate plate, int row, int position) {
        Figures figures = Figures.of(plate);
        int figure = figures.at(row, position);
        Start counts = plate.starts().stream()
                .filter(s -> figures.at(plate.indexOf(s.row()), s.pleat()) == figure)
                .findFirst()
                .or(() -> plate.starts().stream().findFirst())
                .orElseGet(() -> {
                    Figure lowest = figures.get(0);
                    return new Start(
                            plate.rows().get(lowest.bottom()).id().orElseThrow(), lowest.first(), CableKind.DOWN);
                });
        int d = plate.indexOf(counts.row()) - row + position - counts.pleat();
        return d % 2 == 0 ? counts.cable() : counts.cable() == UP ? DOWN : UP;
    }

    @Provide
    Arbitrary<Plate> plates() {
        return Charts.started();
    }
}
