package platekeep.client.plate.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import platekeep.client.plate.Charted;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Kinds;

/** No stitch changes its kind when a part of the picture is moved or mirrored, unless what touches cannot agree. */
class PiecePropertyTest {

    @Property(seed = "20261126")
    void whatIsLiftedOffLeavesTheRestAsItWas(@ForAll("charts") Plate plate, @ForAll("corners") int[] corners) {
        Area area = area(plate, corners);
        Map<Spot, CableKind> expected = kinds(plate);
        expected.keySet().removeIf(area::has);
        assertThat(kinds(Putting.lifted(plate, area))).isEqualTo(expected);
    }

    @Property(seed = "20261126")
    void aMovedPieceHasTheKindsThatItHad(
            @ForAll("charts") Plate plate,
            @ForAll("corners") int[] corners,
            @ForAll @IntRange(max = 7) int down,
            @ForAll @IntRange(max = 9) int right) {
        Area area = area(plate, corners);
        Optional<Piece> piece = Piece.of(plate, area);
        if (piece.isEmpty()) {
            return;
        }
        Area box = area.boxOfCables(plate);
        Spot corner = new Spot(
                down % (plate.rows().size() - box.height() + 1), right % (plate.positions() - box.width() + 1));
        Map<Spot, CableKind> expected = kinds(plate);
        expected.keySet().removeIf(area::has);
        kinds(plate).forEach((spot, kind) -> {
            if (area.has(spot)) {
                expected.put(spot.moved(corner.row() - box.top(), corner.index() - box.left()), kind);
            }
        });
        check(Putting.down(piece.get(), Putting.lifted(plate, area), corner).orElseThrow(), expected, Map.of());
    }

    /** Geometry: a mirror beside a cable leaves the thread above or below the needle, one below it swaps them. */
    @Property(seed = "20261126")
    void aMirroredPieceHasTheKindsOfItsMirrorImage(@ForAll("charts") Plate plate, @ForAll("corners") int[] corners) {
        Area area = area(plate, corners);
        Optional<Piece> piece = Piece.of(plate, area);
        if (piece.isEmpty()) {
            return;
        }
        Area box = area.boxOfCables(plate);
        Spot corner = new Spot(box.top(), box.left());
        Plate ground = Putting.lifted(plate, area);
        Map<Spot, CableKind> across = kinds(ground);
        Map<Spot, CableKind> over = kinds(ground);
        kinds(plate).forEach((spot, kind) -> {
            if (area.has(spot)) {
                across.put(new Spot(spot.row(), box.left() + box.right() - spot.index()), kind);
                over.put(new Spot(box.top() + box.bottom() - spot.row(), spot.index()), kind.turned());
            }
        });
        check(Putting.down(piece.get().mirroredLeftRight(), ground, corner).orElseThrow(), across, kinds(ground));
        check(Putting.down(piece.get().mirroredTopBottom(), ground, corner).orElseThrow(), over, kinds(ground));
    }

    /** Counts what turned, and allows it only where a cable of the piece touches one of another kind pattern. */
    private static void check(Putting.Put put, Map<Spot, CableKind> expected, Map<Spot, CableKind> ground) {
        Map<Spot, CableKind> is = kinds(put.plate());
        assertThat(is.keySet()).isEqualTo(expected.keySet());
        long turned = is.entrySet().stream()
                .filter(e -> expected.get(e.getKey()) != e.getValue())
                .count();
        assertThat(put.turned()).isEqualTo((int) turned);
        if (agrees(expected)) {
            assertThat(turned).isZero();
        }
    }

    /** Whether all neighbours in a row, and over the same pleats in rows next to each other, are of different kinds. */
    private static boolean agrees(Map<Spot, CableKind> kinds) {
        return kinds.entrySet().stream()
                .allMatch(e -> List.of(e.getKey().moved(0, 1), e.getKey().moved(1, 0)).stream()
                        .allMatch(near -> kinds.get(near) != e.getValue()));
    }

    @Property(seed = "20261126")
    void twoMirrorsOfOneKindGiveThePieceAgain(@ForAll("charts") Plate plate) {
        Piece.of(plate).ifPresent(piece -> {
            assertThat(as(piece.mirroredLeftRight().mirroredLeftRight())).isEqualTo(as(piece));
            assertThat(as(piece.mirroredTopBottom().mirroredTopBottom())).isEqualTo(as(piece));
        });
    }

    private static Map<Spot, CableKind> as(Piece piece) {
        return kinds(piece.plate("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a11", "Motif", new Random(1)));
    }

    @Property(seed = "20261126")
    void aMotifKeptAsAPlateIsTheSamePieceAgain(@ForAll("charts") Plate plate) {
        Piece.of(plate).ifPresent(piece -> {
            Plate kept = piece.plate("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a11", "Motif", new Random(1));
            Plate again = Piece.of(kept).orElseThrow().plate(kept.id(), "Motif", new Random(2));
            assertThat(Charted.cells(again)).isEqualTo(Charted.cells(kept));
            assertThat(kinds(again)).isEqualTo(kinds(kept));
        });
    }

    private static Area area(Plate plate, int[] corners) {
        int rows = plate.rows().size();
        int positions = plate.positions();
        return Area.between(
                new Spot(corners[0] % rows, corners[1] % positions),
                new Spot(corners[2] % rows, corners[3] % positions));
    }

    private static Map<Spot, CableKind> kinds(Plate plate) {
        Kinds kinds = Kinds.of(plate);
        Map<Spot, CableKind> at = new HashMap<>();
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int i = 0; i < plate.positions(); i++) {
                if (plate.rows().get(r).cells().charAt(i) != Row.EMPTY) {
                    at.put(new Spot(r, i), kinds.at(r, plate.from() + i).orElseThrow());
                }
            }
        }
        return at;
    }

    @Provide
    Arbitrary<Plate> charts() {
        return Charted.small();
    }

    @Provide
    Arbitrary<int[]> corners() {
        return net.jqwik.api.Arbitraries.integers()
                .between(0, 9)
                .array(int[].class)
                .ofSize(4);
    }
}
