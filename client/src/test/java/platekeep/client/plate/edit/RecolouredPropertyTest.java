package platekeep.client.plate.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import platekeep.client.plate.Charted;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.KeptKinds;

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
