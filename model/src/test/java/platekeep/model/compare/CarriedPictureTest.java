package platekeep.model.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import platekeep.model.compare.CableChange.How;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** The marks on the charts, against edits whose outcome is written down beside them by hand. */
class CarriedPictureTest {
    private static final Palette PALETTE = Palette.EMPTY
            .with('b', new Colour("brick", "#A63C2B", 4))
            .with('c', new Colour("chalk", "#F4F1E8", 4))
            .with('n', new Colour("navy", "#1F2C58", 4));

    private static final Plate HOUSE =
            plate(1, "r5r5 ....bb....", "r4r4 ...bbcb...", "r3r3 ..bcbbbb..", "r2r2 ..bbbbbn..", "r1r1 .nnnnnnnn.");

    @Test
    void eachCableThatChangedIsToldOnBothSidesAtItsOwnPlace() {
        Plate after =
                plate(1, "r5r5 ....bb....", "r4r4 ...bbnb...", "r3r3 ..bcbbbbcc", "r2r2 ..b..bbn..", "r1r1 .nnnnnnnn.");
        CarriedPicture carried = CarriedPicture.of(Comparison.of(HOUSE, after));
        CableChange recoloured = new CableChange(6, 6, How.RECOLOURED);
        CableChange putIn = new CableChange(9, 10, How.PUT_IN);
        CableChange takenOut = new CableChange(4, 5, How.TAKEN_OUT);
        assertThat(carried.before(1)).containsExactly(recoloured);
        assertThat(carried.after(1)).containsExactly(recoloured);
        assertThat(carried.before(2)).containsExactly(putIn);
        assertThat(carried.after(2)).containsExactly(putIn);
        assertThat(carried.before(3)).containsExactly(takenOut);
        assertThat(carried.after(3)).containsExactly(takenOut);
        assertThat(carried.after(0)).isEmpty();
        assertThat(carried.after(4)).isEmpty();
    }

    @Test
    void aPictureThatWasMovedIsNoChangeOfItsCables() {
        Plate moved =
                plate(1, "r5r5 ........bb", "r4r4 .......bbn", "r3r3 ......bcbb", "r2r2 ......bbbb", "r1r1 .....nnnnn");
        Plate room =
                plate(1, "r5r5 ....bb....", "r4r4 ...bbc....", "r3r3 ..bcbb....", "r2r2 ..bbbb....", "r1r1 .nnnnn....");
        CarriedPicture carried = CarriedPicture.of(Comparison.of(room, moved));
        assertThat(carried.after(0)).isEmpty();
        assertThat(carried.after(2)).isEmpty();
        assertThat(carried.after(1)).containsExactly(new CableChange(10, 10, How.RECOLOURED));
        assertThat(carried.before(1)).containsExactly(new CableChange(6, 6, How.RECOLOURED));
        assertThat(carried.was(1, 10)).isEqualTo('c');
        assertThat(carried.isChanged(1, 10)).isTrue();
        assertThat(carried.isChanged(1, 9)).isFalse();
    }

    @Test
    void aRowThatWasPutInHasNoChangedCablesOfItsOwn() {
        Plate after = plate(
                1,
                "r5r5 ....bb....",
                "r4r4 ...bbcb...",
                "nn11 ..cccccc..",
                "r3r3 ..bcbbbb..",
                "r2r2 ..bbbbbn..",
                "r1r1 .nnnnnnnn.");
        CarriedPicture carried = CarriedPicture.of(Comparison.of(HOUSE, after));
        assertThat(carried.after(2)).isEmpty();
        assertThat(carried.isChanged(2, 4)).isTrue();
        assertThat(CarriedPicture.of(Comparison.of(after, HOUSE)).before(2)).isEmpty();
    }

    @Test
    void aRowThatWasMovedAndEditedShowsItsEdit() {
        Plate after =
                plate(1, "r3r3 ..bcbbbb..", "r5r5 ....bb....", "r4r4 ...bbcb...", "r2r2 ..bbbbbn..", "r1r1 .nnnnnnnn.");
        Plate edited =
                plate(1, "r3r3 ..bcnbbb..", "r5r5 ....bb....", "r4r4 ...bbcb...", "r2r2 ..bbbbbn..", "r1r1 .nnnnnnnn.");
        assertThat(CarriedPicture.of(Comparison.of(HOUSE, after)).after(0)).isEmpty();
        CarriedPicture carried = CarriedPicture.of(Comparison.of(HOUSE, edited));
        assertThat(carried.after(0)).containsExactly(new CableChange(5, 5, How.RECOLOURED));
        assertThat(carried.before(2)).containsExactly(new CableChange(5, 5, How.RECOLOURED));
    }

    @Test
    void aChartThatWasWidenedAndAKeyThatWasRenamedChangeNoCable() {
        List<Row> rows = HOUSE.rows().stream()
                .map(row -> row.withCells("..." + row.cells().replace('n', 'q')))
                .toList();
        Plate after = HOUSE.edit()
                .pleats(Optional.of(new Pleats(-2, 11)))
                .palette(PALETTE.without('n').with('q', new Colour("navy", "#1F2C58", 4)))
                .rows(rows)
                .build();
        CarriedPicture carried = CarriedPicture.of(Comparison.of(HOUSE, after));
        for (int row = 0; row < 5; row++) {
            assertThat(carried.before(row)).isEmpty();
            assertThat(carried.after(row)).isEmpty();
        }
        assertThat(carried.was(4, 2)).isEqualTo('n');
    }

    /** With the same ids in the same order and cables that stay where they are, marks follow from the cells alone. */
    @Property(tries = 300, seed = "20261126")
    void oneChangedCableIsMarkedThereAndNowhereElse(@ForAll("places") int place, @ForAll("keys") char key) {
        int row = place / 10;
        int index = place % 10;
        char was = HOUSE.rows().get(row).cells().charAt(index);
        List<Row> rows = new ArrayList<>(HOUSE.rows());
        char[] cells = rows.get(row).cells().toCharArray();
        cells[index] = key;
        rows.set(row, rows.get(row).withCells(new String(cells)));
        CarriedPicture carried =
                CarriedPicture.of(Comparison.of(HOUSE, HOUSE.edit().rows(rows).build()));
        How how = was == '.' ? How.PUT_IN : key == '.' ? How.TAKEN_OUT : How.RECOLOURED;
        for (int i = 0; i < rows.size(); i++) {
            List<CableChange> expected =
                    i == row && was != key ? List.of(new CableChange(index + 1, index + 1, how)) : List.of();
            assertThat(carried.after(i)).isEqualTo(expected);
            assertThat(carried.before(i)).isEqualTo(expected);
        }
    }

    @Provide
    Arbitrary<Integer> places() {
        return Arbitraries.integers().between(0, 49);
    }

    @Provide
    Arbitrary<Character> keys() {
        return Arbitraries.of('b', 'c', 'n', '.');
    }

    private static Plate plate(int from, String... rows) {
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a12", "House on the quay")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(from, from + rows[0].length() - 5)))
                .rows(Arrays.stream(rows)
                        .map(r -> Row.of(r.substring(0, 4), r.substring(5)))
                        .toList())
                .build();
    }
}
