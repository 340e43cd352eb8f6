package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.plate.CableKind.UP;
import static platekeep.model.stitch.Drawn.start;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

class RowIdsTest {

    private static final String CELLS = "......bbbb.......";

    @Test
    void theExamplesOfTheFormatAreMet() {
        assertThat(RowIds.derived(CELLS, 1, Set.of())).isEqualTo(new RowId("2oyp"));
        assertThat(RowIds.derived(CELLS, 2, Set.of())).isEqualTo(new RowId("2g8t"));
    }

    @Test
    void equalRowsAreNumberedFromTheTopAndRowsWithIdsAreCounted() {
        assertThat(ids(RowIds.given(Drawn.plate(CELLS, CELLS)))).containsExactly("2oyp", "2g8t");
        assertThat(ids(RowIds.given(Drawn.plate("abcd " + CELLS, CELLS)))).containsExactly("abcd", "2g8t");
    }

    @Test
    void whileAnIdIsTakenItIsDerivedAnewWithAnotherSign() {
        RowId anew = RowIds.derived(CELLS, 1, Set.of(new RowId("2oyp")));

        assertThat(anew.text()).isNotEqualTo("2oyp");
        assertThat(ids(RowIds.given(Drawn.plate(CELLS, "2oyp .b..............."))))
                .containsExactly(anew.text(), "2oyp");
    }

    @Test
    void anIdThatOnlyAStartNamesCountsAsTaken() {
        Plate plate = Drawn.started(Drawn.plate(CELLS), start("2oyp", 7, UP));

        assertThat(ids(RowIds.given(plate))).doesNotContain("2oyp");
    }

    @Test
    void ofTwoRowsWithOneIdTheFirstKeepsIt() {
        Plate plate = Drawn.started(Drawn.plate("abcd ab", "abcd " + "ba"), start("abcd", 1, UP));

        Plate given = RowIds.given(plate);

        assertThat(ids(given))
                .containsExactly("abcd", RowIds.derived("ba", 1, Set.of()).text());
        assertThat(given.starts()).containsExactly(start("abcd", 1, UP));
    }

    @Test
    void aMissingStartIsWrittenDownAtTheLeftOfTheLowestRowThatHasACable() {
        Plate given = RowIds.given(Drawn.plateFrom(4, "aaaa aaa", "bbbb .aa", "cccc ..."));

        assertThat(given.starts()).containsExactly(start("bbbb", 5, DOWN));
        assertThat(Drawn.kinds(given)).isEqualTo(Drawn.kinds(Drawn.plate("aaa", ".aa", "...")));
    }

    @Test
    void aPlateThatLacksNothingIsReturnedAsItIs() {
        Plate plate = Drawn.started(Drawn.plate("aaaa aaa"), start("aaaa", 1, UP));

        assertThat(RowIds.given(plate)).isSameAs(plate);
        assertThat(RowIds.given(Drawn.plate()).starts()).isEmpty();
        assertThat(RowIds.given(Drawn.plate("aaaa ...")).starts()).isEmpty();
    }

    @Property(tries = 200, seed = "20261125")
    void givingIdsTurnsNoStitchAndGivesNoneTwice(@ForAll("plates") Plate plate) {
        Plate bare = plate.edit()
                .rows(plate.rows().stream().map(r -> Row.bare(r.cells())).toList())
                .build();
        Plate given = RowIds.given(bare);

        assertThat(ids(given)).doesNotHaveDuplicates();
        assertThat(Drawn.kinds(given)).isEqualTo(Drawn.kinds(bare));
        assertThat(RowIds.given(given)).isSameAs(given);
    }

    @Test
    void aFreshIdIsNeverATakenOne() {
        Random sameTwice = new Random() {
            private static final long serialVersionUID = 1;
            private int asked;

            @Override
            public int nextInt(int bound) {
                return asked++ < 3 ? 35 : 36;
            }
        };

        assertThat(RowIds.fresh(Set.of(new RowId("000z")), sameTwice)).isEqualTo(new RowId("0010"));
    }

    @Test
    void whenAllIdsAreTakenThatIsSaid() {
        Set<RowId> all = new HashSet<>();
        for (int i = 0; i < 36 * 36 * 36 * 36; i++) {
            String digits = Integer.toString(i, 36);
            all.add(new RowId("0".repeat(4 - digits.length()) + digits));
        }

        assertThatThrownBy(() -> RowIds.fresh(all, new Random(1))).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<String> ids(Plate plate) {
        return plate.rows().stream().map(r -> r.id().orElseThrow().text()).toList();
    }

    @Provide
    Arbitrary<Plate> plates() {
        return Charts.small();
    }
}
