package platekeep.model.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.text.PlateText;

/**
 * The published example of three-way line merging: S. Khanna, K. Kunal and B. C. Pierce, "A Formal Investigation of
 * Diff3", FSTTCS 2007, section 2: O = 1 2 3 4 5 6, A = 1 4 5 2 3 6, B = 1 2 4 5 3 6. Typed from the paper.
 *
 * <p>There diff3 matches 1, 4 5, 6 of O with A but 1 2, 3, 6 or 1 2, 4 5, 6 of O with B, so it puts A's 4 5 in above the 2
 * and leaves a conflict over 3 / 3 4 5 / 4 5 3: lines stand there twice, though both hands only moved them. Each line
 * here is a row without an id that is like no other row.
 *
 * <p>The join's answer is 1 4 5 2 3 6. To it a row that stands elsewhere was moved, not taken out and put in: the first hand
 * moved 2 3 below 4 5 (or 4 5 above 2 3, the same), the second moved 3 below 4 5. Both orders want 3 below 4 5; that 2 goes
 * there too only the first hand asked for, and the second did not gainsay it. So both wishes hold and nothing is open.
 */
class WorkedExampleTest {
    private static final Palette PALETTE = palette();

    @Test
    void theExampleOfKhannaKunalAndPierceLosesNothingAndInventsNothing() {
        Plate base = plate("123456");
        Plate mine = plate("145236");
        Plate theirs = plate("124536");

        Plate joined = Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN).plate();
        Plate exchanged =
                Join.of(Optional.of(base), theirs, mine, Hands.UNKNOWN).plate();

        assertThat(joined.rows()).containsExactlyElementsOf(plate("145236").rows());
        assertThat(joined.clashes()).isEmpty();
        assertThat(PlateText.write(exchanged)).isEqualTo(PlateText.write(joined));
    }

    private static Palette palette() {
        Palette palette = Palette.EMPTY;
        for (char key = '1'; key <= '6'; key++) {
            palette = palette.with(key, new Colour("shade " + key, "#A03C2" + key, 4));
        }
        return palette;
    }

    /** One digit a row, each at a place of its own. */
    private static Plate plate(String digits) {
        List<Row> rows = digits.chars()
                .mapToObj(c -> ".".repeat((c - '1') * 3) + (char) c + (char) c + ".".repeat(('6' - c) * 3))
                .map(Row::bare)
                .toList();
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a12", "Rows of digits")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(1, 18)))
                .rows(rows)
                .build();
    }
}
