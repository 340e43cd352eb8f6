package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Drawn;

class SignatureTest {
    private static final Plate BOAT = Drawn.plate(
            "........w...........",
            "........ww..........",
            "........www.........",
            "........wwww........",
            "...b....wwwww....b..",
            "...bbbbbbbbbbbbbbb..",
            "....bbyybbyybbbbb...",
            ".....bbbbbbbbbbb....",
            "....................");

    private static final Plate HOUSE = Drawn.plate(
            ".....rrrrrrr........",
            "....rrrrrrrrr.......",
            "...rrrrrrrrrrr......",
            "....wwwwwwwww.......",
            "....wbbwwwbbw.......",
            "....wbbwwwbbw.......",
            "....wwwwdwwww.......",
            "....wwwwdwwww.......");

    private static final Plate TREE = Drawn.plate(
            ".......ggg..........",
            ".....gggggg.........",
            "....ggrggrgg........",
            "....gggggggg........",
            ".....grgggg.........",
            ".......tt...........",
            ".......tt...........",
            "......tttt..........");

    private static Signature of(Plate plate) {
        return Signature.of(plate).orElseThrow();
    }

    @Test
    void coloursPlaceAndRoomAroundDoNotMatter() {
        Plate other = Edited.moved(Edited.recoloured(BOAT, new Random(1)), 7, 2, 0, 5);
        assertThat(of(other)).isEqualTo(of(BOAT));
    }

    @Test
    void aGroundWorkedInFullIsLikeAnEmptyOne() {
        for (Plate plate : List.of(BOAT, TREE)) {
            Plate roomy = Edited.moved(plate, 3, 3, 2, 2);
            assertThat(of(Edited.filled(roomy)).likeness(of(plate))).isEqualTo(1.0);
        }
    }

    @Test
    void theMirroredPlateHasTheMirroredSignature() {
        for (Plate plate : List.of(BOAT, HOUSE, TREE)) {
            assertThat(of(Edited.leftRight(plate)).likeness(of(plate).mirrored(Mirror.ACROSS)))
                    .isGreaterThan(0.97);
            assertThat(of(Edited.topBottom(plate)).likeness(of(plate).mirrored(Mirror.OVER)))
                    .isGreaterThan(0.97);
            assertThat(of(Edited.topBottom(Edited.leftRight(plate)))
                            .likeness(of(plate).mirrored(Mirror.BOTH)))
                    .isGreaterThan(0.97);
            assertThat(of(plate).mirrored(Mirror.BOTH).mirrored(Mirror.BOTH)).isEqualTo(of(plate));
        }
    }

    @Test
    void differentPicturesStandApart() {
        assertThat(of(BOAT).likeness(of(HOUSE))).isLessThan(0.6);
        assertThat(of(BOAT).likeness(of(TREE))).isLessThan(0.6);
        assertThat(of(HOUSE).likeness(of(TREE))).isLessThan(0.6);
    }

    @Test
    void innerPartsCount() {
        Plate blind = Drawn.redrawn(
                HOUSE,
                HOUSE.rows().stream()
                        .map(r -> r.cells().replace('b', 'w').replace('d', 'w'))
                        .toArray(String[]::new));
        assertThat(of(blind).likeness(of(HOUSE))).isLessThan(0.9);
    }

    @Test
    void thePlateIsFoundAmongOthersHoweverItWasChanged() {
        Looks looks = new Looks(Stream.of(HOUSE, BOAT, TREE).map(Signature::of).toList());
        Plate sought = Edited.leftRight(Edited.touched(Edited.scaled(BOAT, 200), 0.05, new Random(3)));
        Looks.Near first = looks.nearest(of(sought), 1).get(0);
        assertThat(first.at()).isEqualTo(1);
        assertThat(first.mirror()).isEqualTo(Mirror.ACROSS);
    }

    @Test
    void aPlateWithoutACableHasNone() {
        assertThat(Signature.of(Drawn.plate("....", "...."))).isEmpty();
        assertThat(Signature.of(Drawn.plate())).isEmpty();
        Looks looks = new Looks(List.of(Optional.empty(), Signature.of(BOAT)));
        assertThat(looks.nearest(of(BOAT), 5)).extracting(Looks.Near::at).containsExactly(1);
        assertThat(new Looks(List.of()).nearest(of(BOAT), 5)).isEmpty();
    }

    @Test
    void aChartOfOneColourIsAShapeOfItsOwn() {
        assertThat(of(Drawn.plate("aaaa", "aaaa"))
                        .likeness(of(Drawn.plate("bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb"))))
                .isEqualTo(1.0);
    }

    @Test
    void aTraceTellsAtOnceWhereAMotifCannotBe() {
        MotifFinder boat = new MotifFinder(Motif.of(BOAT).orElseThrow(), Wanted.USUAL);
        assertThat(boat.mayBeIn(Trace.of(Edited.leftRight(Edited.moved(BOAT, 3, 9, 1, 4)))))
                .isTrue();
        assertThat(boat.mayBeIn(Trace.of(HOUSE))).isFalse();
        assertThat(boat.mayBeIn(Trace.of(TREE))).isFalse();
    }

    @Test
    void doublesAreFoundOnceForEachPairOfReadings() {
        List<Plate> plates = List.of(BOAT, HOUSE, Edited.leftRight(BOAT), TREE);
        Looks looks = new Looks(plates.stream().map(Signature::of).toList());
        int pairs = 0;
        for (int reading = 0; reading < looks.readings(); reading++) {
            for (Looks.Near near : looks.after(reading, 0.9)) {
                assertThat(looks.owner(reading)).isEqualTo(0);
                assertThat(near.at()).isEqualTo(2);
                assertThat(near.mirror()).isEqualTo(Mirror.ACROSS);
                pairs++;
            }
        }
        assertThat(pairs).isPositive();
    }

    @Test
    void anOverlayCountsRowsAndPlacesThatDiffer() {
        Plate changed = Drawn.redrawn(
                BOAT,
                BOAT.rows().stream().map(r -> r.cells().replace("byyb", "bbyb")).toArray(String[]::new));
        Overlay laid = Overlay.of(BOAT, changed, Mirror.NONE).orElseThrow();
        assertThat(laid.rows()).isEqualTo(1);
        assertThat(laid.places()).isEqualTo(2);
        assertThat(laid.sameColours()).isTrue();
        Overlay mirrored = Overlay.of(BOAT, Edited.leftRight(Edited.recoloured(BOAT, new Random(2))), Mirror.ACROSS)
                .orElseThrow();
        assertThat(mirrored.isSame()).isTrue();
        assertThat(mirrored.sameColours()).isFalse();
        assertThat(Overlay.of(BOAT, Edited.scaled(BOAT, 300), Mirror.NONE)).isEmpty();
    }
}
