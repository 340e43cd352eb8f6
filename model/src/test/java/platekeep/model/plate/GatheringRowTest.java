package platekeep.model.plate;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class GatheringRowTest {

    /** Fractions added by hand. */
    @Example
    void rowsAreLoweredInFractionsOfASpace() {
        assertThat(GatheringRow.lower("5", -2, 5)).contains("4 3/5");
        assertThat(GatheringRow.lower("2 1/2", 1, 2)).contains("3");
        assertThat(GatheringRow.lower("2 1/4", 1, 2)).contains("2 3/4");
        assertThat(GatheringRow.lower("1", -1, 5)).isEmpty();
        assertThat(GatheringRow.lower("two", 1, 2)).isEmpty();
    }

    @Property(seed = "20261126")
    void aLoweredRowLiesSoMuchFurtherDownAndComesBack(
            @ForAll @IntRange(min = 10, max = 900) int whole,
            @ForAll @IntRange(min = -20, max = 20) int above,
            @ForAll @IntRange(min = 1, max = 12) int below) {
        String lower = GatheringRow.lower(Integer.toString(whole), above, below).orElse("");
        if (whole * below + above >= below) {
            assertThat(GatheringRow.place(lower).orElseThrow())
                    .isCloseTo(whole + (double) above / below, org.assertj.core.api.Assertions.within(1e-9));
            assertThat(GatheringRow.lower(lower, -above, below)).contains(Integer.toString(whole));
        }
    }
}
