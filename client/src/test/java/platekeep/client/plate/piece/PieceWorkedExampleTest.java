package platekeep.client.plate.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.client.plate.Charted;
import platekeep.model.draw.Spot;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Start;
import platekeep.model.plate.Unknown;
import platekeep.model.stitch.Kinds;

/** Figures of the trade, moved and mirrored. */
class PieceWorkedExampleTest {

    /** A flowerette: six cables over four pleats, up-down-up below, down-up-down above (common practice, no source). */
    private static Plate flowerette() {
        return Charted.of(
                List.of(new Start(Charted.id(3), 3, CableKind.UP)),
                "..........",
                "..........",
                "..aaa.....",
                "..aaa.....",
                "..........");
    }

    private static String kinds(Plate plate, int row) {
        Kinds kinds = Kinds.of(plate);
        StringBuilder words = new StringBuilder();
        for (int p = plate.from(); p < plate.from() + plate.positions(); p++) {
            words.append(
                    kinds.at(row, p).map(k -> k == CableKind.UP ? "u" : "d").orElse("."));
        }
        return words.toString();
    }

    private static Plate moved(Plate plate, Spot in, Spot corner) {
        Area area = Area.figure(plate, in).orElseThrow();
        return Putting.down(Piece.of(plate, area).orElseThrow(), Putting.lifted(plate, area), corner)
                .orElseThrow()
                .plate();
    }

    @Test
    void aFloweretteIsAFloweretteWhereverItIsMoved() {
        for (int row = 0; row <= 3; row++) {
            for (int index = 0; index <= 7; index++) {
                Plate moved = moved(flowerette(), new Spot(2, 2), new Spot(row, index));
                assertThat(kinds(moved, row).substring(index, index + 3)).isEqualTo("dud");
                assertThat(kinds(moved, row + 1).substring(index, index + 3)).isEqualTo("udu");
                assertThat(moved.starts()).hasSize(1);
            }
        }
    }

    /** Turned over, a flowerette is one again, as is plain from its drawing. */
    @Test
    void aFloweretteIsItsOwnMirrorImage() {
        Piece piece =
                Piece.of(flowerette(), Area.whole(flowerette()).orElseThrow()).orElseThrow();
        for (Piece image : List.of(piece.mirroredLeftRight(), piece.mirroredTopBottom())) {
            Plate put = Putting.down(image, Charted.of("...", "..."), new Spot(0, 0))
                    .orElseThrow()
                    .plate();
            assertThat(kinds(put, 0)).isEqualTo("dud");
            assertThat(kinds(put, 1)).isEqualTo("udu");
        }
    }

    /**
     * Five stacked rows of 11, 9, 7, 5, 3 cables that all begin and end with a down cable (common practice, no source),
     * turned over: 3, 5, 7, 9, 11 from below, all beginning and ending with an up cable.
     */
    @Test
    void aPyramidTurnedOverStandsOnItsPoint() {
        Plate pyramid = Charted.of(
                List.of(new Start(Charted.id(4), 1, CableKind.DOWN)),
                "....aaa....",
                "...aaaaa...",
                "..aaaaaaa..",
                ".aaaaaaaaa.",
                "aaaaaaaaaaa");
        Plate over = Putting.down(
                        Piece.of(pyramid).orElseThrow().mirroredTopBottom(),
                        Putting.lifted(pyramid, Area.whole(pyramid).orElseThrow()),
                        new Spot(0, 0))
                .orElseThrow()
                .plate();
        assertThat(kinds(over, 0)).isEqualTo("ududududu" + "du");
        assertThat(kinds(over, 4)).isEqualTo("....udu....");
        for (int row = 0; row < 5; row++) {
            assertThat(kinds(over, row).replace(".", ""))
                    .startsWith("u")
                    .endsWith("u")
                    .hasSize(11 - 2 * row);
        }
    }

    @Test
    void startsStitchesAndRemarksGoAlongAndTheGatheringRowsStay() {
        Plate plate = flowerette()
                .edit()
                .starts(List.of(new Start(Charted.id(3), 3, CableKind.UP, Optional.of("5"), Unknown.NONE)))
                .marks(List.of(new Mark("french knot", Charted.id(2), "4 1/2", 'b', Unknown.NONE)))
                .remarks(List.of(new Remark(
                        Charted.id(9),
                        Optional.of(Charted.id(3)),
                        Optional.of(3),
                        Optional.of(4),
                        "Isolde Marsh",
                        LocalDate.of(2026, 3, 2),
                        "Wider?",
                        false,
                        Unknown.NONE)))
                .build();
        Plate moved = moved(plate, new Spot(2, 2), new Spot(0, 5));
        assertThat(moved.starts())
                .containsExactly(new Start(Charted.id(1), 6, CableKind.UP, Optional.of("4 3/5"), Unknown.NONE));
        assertThat(moved.marks()).singleElement().satisfies(mark -> {
            assertThat(mark.row()).isEqualTo(Charted.id(0));
            assertThat(mark.pleat()).isEqualTo("7 1/2");
        });
        assertThat(moved.remarks()).singleElement().satisfies(remark -> {
            assertThat(remark.row()).contains(Charted.id(1));
            assertThat(remark.from()).contains(6);
            assertThat(remark.to()).contains(7);
        });
        Plate copied = Putting.down(
                        Piece.of(plate, Area.figure(plate, new Spot(2, 2)).orElseThrow())
                                .orElseThrow()
                                .copy(),
                        plate,
                        new Spot(0, 6))
                .orElseThrow()
                .plate();
        assertThat(copied.marks()).hasSize(2);
        assertThat(copied.remarks()).hasSize(1);
    }

    @Test
    void whatLayUnderAMovedPieceIsThereAgainWhenItMovesOn() {
        Plate plate = Charted.of("aa..b", "aa..b");
        Area area = Area.figure(plate, new Spot(0, 0)).orElseThrow();
        Plate ground = Putting.lifted(plate, area);
        Piece piece = Piece.of(plate, area).orElseThrow();
        assertThat(Charted.cells(Putting.down(piece, ground, new Spot(0, 3))
                        .orElseThrow()
                        .plate()))
                .containsExactly("...aa", "...aa");
        assertThat(Charted.cells(Putting.down(piece, ground, new Spot(0, 1))
                        .orElseThrow()
                        .plate()))
                .containsExactly(".aa.b", ".aa.b");
    }

    @Test
    void aPieceBringsTheColoursThatThePlateLacks() {
        Plate other = Charted.of("...")
                .edit()
                .palette(platekeep.model.plate.Palette.EMPTY
                        .with('a', new platekeep.model.plate.Colour("moss", "#4F7A3A", 4))
                        .with('x', new platekeep.model.plate.Colour("buoy", "#2B6CA6", 4)))
                .build();
        Piece piece = Piece.of(Charted.of("ab")).orElseThrow();
        Plate put = Putting.down(piece, other, new Spot(0, 0)).orElseThrow().plate();
        assertThat(Charted.cells(put)).containsExactly("bx.");
        assertThat(put.palette().get('b').orElseThrow().name()).isEqualTo("apple");
    }

    /** A figure 24 pleats wide with 12 pleats between figures repeats every 36 pleats (common practice, no source). */
    @Test
    void aFigureOfTwentyFourPleatsWithTwelveBetweenComesEveryThirtySix() {
        String figure = "a".repeat(23);
        Plate plate = Charted.of(figure + ".".repeat(100));
        Area area = Area.figure(plate, new Spot(0, 0)).orElseThrow();
        assertThat(Repeats.room(plate, area, 12)).isEqualTo(3);
        Plate repeated = Repeats.across(plate, area, 12, 3).orElseThrow().plate();
        String gap = ".".repeat(13);
        assertThat(Charted.cells(repeated)).containsExactly(figure + gap + figure + gap + figure + ".".repeat(28));
        assertThat(repeated.cellAt(0, 1 + 36)).isEqualTo('a');
    }

    @Test
    void theRepeatsOfAChartAreWorkedOutInCables() {
        Plate plate = Charted.of(".a.b", "aaab")
                .edit()
                .repeat(Optional.of(new Repeat(6, 3, Unknown.NONE)))
                .build();
        Plate out = Repeats.workedOut(plate).orElseThrow();
        assertThat(Charted.cells(out)).containsExactly(".a.b...a.b...a.b", "aaab..aaab..aaab");
        assertThat(out.repeat()).isEmpty();
        assertThat(Repeats.workedOut(Repeats.said(plate, 1000, 4))).isEmpty();
    }
}
