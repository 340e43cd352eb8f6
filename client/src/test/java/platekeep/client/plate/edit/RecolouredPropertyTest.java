package platekeep.client.plate.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import platekeep.client.plate.Charted;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.Kinds;

/** The short ways that a stroke may take give what the long ones give. */
class RecolouredPropertyTest {

    @Property(seed = "20261126")
    void aDrawingChangedIsTheDrawingMadeAnew(
            @ForAll("charts") Plate plate,
            @ForAll @IntRange(max = 7) int row,
            @ForAll @IntRange(max = 9) int index,
            @ForAll @IntRange(max = 3) int how) {
        Spot spot = new Spot(row % plate.rows().size(), index % plate.positions());
        char key = "abc.".charAt(how);
        Plate painted = how == 3
                ? CableEdits.paint(plate, List.of(spot), key)
                : CableEdits.recolour(plate, CableEdits.block(spot, spot.moved(2, 3)), key);
        Plate edited = KeptKinds.after(plate, painted);
        Drawing anew = Drawing.of(edited);
        Drawing changed = Drawing.of(plate).changedTo(edited);
        assertThat(changed.plate()).isSameAs(edited);
        assertThat(changed.hasShapeOf(anew)).isTrue();
        for (int r = 0; r < edited.rows().size(); r++) {
            assertThat(changed.hasRowOf(anew, r)).isTrue();
        }
    }

    @Property(seed = "20261126")
    void afterAnyEditTheShortWayGivesWhatTheLongOneGives(
            @ForAll("charts") Plate plate, @ForAll @IntRange(max = 7) int how, @ForAll Random random) {
        Plate edited = edited(plate, how, random);
        Kinds kinds = Kinds.of(plate);
        assertThat(KeptKinds.after(plate, kinds, edited)).isEqualTo(KeptKinds.after(plate, edited));
        Kinds anew = Kinds.of(edited);
        Kinds shared = Kinds.of(edited, kinds);
        Drawing drawnAnew = Drawing.of(edited);
        Drawing drawn = Drawing.of(plate).changedTo(edited);
        assertThat(drawn.hasShapeOf(drawnAnew)).isTrue();
        assertThat(new ColourCounts().of(edited)).isEqualTo(counted(plate, edited));
        for (int r = 0; r < edited.rows().size(); r++) {
            assertThat(shared.hasRowOf(anew, r)).isTrue();
            assertThat(drawn.hasRowOf(drawnAnew, r)).isTrue();
            for (int i = 0; i < edited.positions(); i++) {
                assertThat(shared.at(r, edited.from() + i)).isEqualTo(anew.at(r, edited.from() + i));
            }
        }
    }

    private static SortedMap<Character, Integer> counted(Plate before, Plate after) {
        ColourCounts counts = new ColourCounts();
        counts.of(before);
        return counts.of(after);
    }

    private static Plate edited(Plate plate, int how, Random random) {
        int row = random.nextInt(plate.rows().size());
        Spot spot = new Spot(row, random.nextInt(plate.positions()));
        List<Spot> block = CableEdits.block(spot, spot.moved(random.nextInt(3), random.nextInt(4)));
        return switch (how) {
            case 0 -> CableEdits.paint(plate, block, Row.EMPTY);
            case 1 -> CableEdits.paint(plate, block, 'a');
            case 2 -> RowEdits.insert(plate, row, random);
            case 3 -> RowEdits.duplicate(plate, row, random);
            case 4 -> RowEdits.delete(plate, row);
            case 5 -> RowEdits.move(plate, row, random.nextBoolean() ? 1 : -1);
            case 6 ->
                PleatEdits.widen(plate, random.nextInt(3), random.nextInt(3)).orElse(plate);
            default -> ColourEdits.merge(plate, 'a', 'b');
        };
    }

    @Property(seed = "20261126")
    void cablesOfOtherColoursKeepTheirKindsByThemselves(
            @ForAll("charts") Plate plate, @ForAll @IntRange(max = 7) int row, @ForAll @IntRange(max = 9) int index) {
        Spot spot = new Spot(row % plate.rows().size(), index % plate.positions());
        Plate recoloured = CableEdits.recolour(plate, CableEdits.block(spot, spot.moved(3, 3)), 'c');
        Drawing before = Drawing.of(plate);
        Drawing after = Drawing.of(recoloured);
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int i = 0; i < plate.positions(); i++) {
                assertThat(after.kind(r, i)).isEqualTo(before.kind(r, i));
            }
        }
    }

    @Provide
    Arbitrary<Plate> charts() {
        return Charted.small();
    }
}
