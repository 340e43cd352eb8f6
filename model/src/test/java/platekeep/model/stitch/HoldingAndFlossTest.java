package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;

class HoldingAndFlossTest {

    @Property(tries = 200, seed = "20261125")
    void cablesHoldTogetherAlongTheRowAndFromAnUpCableToTheDownCableAboveIt(@ForAll("plates") Plate plate) {
        Kinds kinds = Kinds.of(plate);
        Holding holding = Holding.of(plate, kinds);
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int p = plate.from(); p < plate.from() + plate.positions(); p++) {
                if (holding.at(r, p) == Holding.NONE) {
                    continue;
                }
                if (holding.at(r, p + 1) != Holding.NONE) {
                    assertThat(holding.at(r, p)).isEqualTo(holding.at(r, p + 1));
                }
                if (kinds.isUp(r, p) && holding.at(r - 1, p) != Holding.NONE) {
                    assertThat(holding.at(r - 1, p)).isEqualTo(holding.at(r, p));
                    assertThat(kinds.at(r - 1, p)).hasValue(DOWN);
                }
                boolean joined = holding.at(r, p - 1) != Holding.NONE
                        || holding.at(r, p + 1) != Holding.NONE
                        || kinds.isUp(r, p) && holding.at(r - 1, p) != Holding.NONE
                        || !kinds.isUp(r, p) && holding.at(r + 1, p) != Holding.NONE;
                assertThat(holding.isAlone(r, p)).isEqualTo(!joined);
            }
        }
    }

    @Test
    void flossIsCountedByColour() {
        Plate plate = Drawn.plate("aaaa aab.", "bbbb ..bb")
                .edit()
                .marks(List.of(new Mark("french knot", new RowId("aaaa"), "1", 'c', Unknown.NONE)))
                .build();
        Floss floss = Floss.of(plate);

        assertThat(floss.cables('a')).isEqualTo(2);
        assertThat(floss.cables('b')).isEqualTo(3);
        assertThat(floss.allCables()).isEqualTo(5);
        assertThat(floss.isUsed('c')).isTrue();
        assertThat(floss.isUsed('d')).isFalse();
    }

    @Provide
    Arbitrary<Plate> plates() {
        return Charts.started();
    }
}
