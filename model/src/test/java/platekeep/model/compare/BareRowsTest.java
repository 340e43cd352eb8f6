package platekeep.model.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** Which row is which where none has an id. Rows are written top first and told by their index. */
class BareRowsTest {
    private static final Palette PALETTE = Palette.EMPTY
            .with('b', new Colour("brick", "#A63C2B", 4))
            .with('c', new Colour("chalk", "#F4F1E8", 4))
            .with('n', new Colour("navy", "#1F2C58", 4));

    private static final String[] BOAT = {
        ".......b....", ".......bb...", ".......bbb..", ".......b....", ".nnnnnnnnnn.", "..cnnnnnnc..", "...nnnnnn..."
    };

    @Test
    void aRowDrawnAnewBetweenRowsThatStayedIsStillThatRow() {
        assertThat(pairs(BOAT, with(4, "ccc......ccc"))).containsExactly(0, 1, 2, 3, 4, 5, 6);
    }

    @Test
    void twoRowsDrawnAnewSideBySideAreStillThoseRows() {
        String[] after = with(5, "n..........n");
        after[4] = "ccc......ccc";
        assertThat(pairs(BOAT, after)).containsExactly(0, 1, 2, 3, 4, 5, 6);
    }

    @Test
    void aRowThatMovedPastRowsMuchLikeItIsFoundAgain() {
        String[] before = {"bbbbbbb...c.", "bbbbbbb..cc.", "bbbnbbb..cc.", "bbbbbbb.ccc.", "nnnnnnnnnnnn"};
        String[] after = {"bbbbbbb..cc.", "bbbnbbb..cc.", "bbbbbbb.ccc.", "bbbbbbb...c.", "nnnnnnnnnnnn"};
        assertThat(pairs(before, after)).containsExactly(1, 2, 3, 0, 4);
    }

    @Test
    void rowsStayUnderAFigureThatWasLifted() {
        String[] before = {
            "............................",
            "..................bb........",
            ".bbbb............nccn.......",
            ".bccb...........bbbbbb......",
            ".bbnb..........cncncncn.....",
            ".bbbn.........nnnnnnnnnn....",
            ".nbbb.......................",
            ".cccc......................."
        };
        String[] after = before.clone();
        for (int i = 0; i < 6; i++) {
            after[i] = before[i].substring(0, 10) + before[i + 1].substring(10);
        }
        after[3] = "." + after[3].substring(1, 5).replace('b', 'n') + after[3].substring(5);
        assertThat(pairs(before, after)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
    }

    /** It may as well be another blank row: a row that the picture gave way to, and one that it left. */
    @Test
    void aBlankRowFoundElsewhereIsTakenForMovedAndCalledUncertain() {
        String[] before = {"............", "..bbbbbbbb..", ".nnnnnnnnnn."};
        String[] after = {"..bbbbbbbb..", ".nnnnnnnnnn.", "............"};
        RowPairing pairing = read(before, after);
        assertThat(pairs(before, after)).containsExactly(1, 2, 0);
        assertThat(pairing.isUncertainAfter(2)).isTrue();
        assertThat(pairing.isUncertainBefore(0)).isTrue();
        assertThat(pairing.isUncertainAfter(0)).isFalse();
    }

    /** Nobody can tell a copy from what it was copied from; either way the answer is the same each time. */
    @Test
    void ofEqualRowsTheOneFurtherUpIsTakenForTheOldOneAndBothAreUncertain() {
        String[] before = {"..bbbb......", "..nnnn......", "..cccc......"};
        String[] after = {"..bbbb......", "..nnnn......", "..nnnn......", "..cccc......"};
        assertThat(pairs(before, after)).containsExactly(0, 1, -1, 2);
        assertThat(read(before, after).isUncertainAfter(1)).isTrue();
        assertThat(read(before, after).isUncertainAfter(2)).isTrue();
    }

    private static String[] with(int row, String cells) {
        String[] rows = BOAT.clone();
        rows[row] = cells;
        return rows;
    }

    /** For each row of the later plate the row of the earlier one, or -1. */
    private static List<Integer> pairs(String[] before, String[] after) {
        RowPairing pairing = read(before, after);
        return IntStream.range(0, after.length).map(pairing::before).boxed().toList();
    }

    private static RowPairing read(String[] before, String[] after) {
        Plate b = plate(before);
        Plate a = plate(after);
        Grid.Frame frame = Grid.Frame.around(b, a);
        Map<String, char[]> shared = new HashMap<>();
        return PlateEdit.of(b, a, Grid.of(b, frame, shared), Grid.of(a, frame, shared))
                .pairing();
    }

    private static Plate plate(String... rows) {
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a15", "Boat")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(1, rows[0].length() + 1)))
                .rows(Arrays.stream(rows).map(Row::bare).toList())
                .build();
    }
}
