package platekeep.model.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.compare.Difference.About;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/**
 * The change of a chart in words. Rows are counted from the bottom, and a range of cables is said in the pleats that they
 * lie over, both as stitchers count (common practice, no source).
 */
class ChangeWordsTest {
    private static final Palette PALETTE = Palette.EMPTY
            .with('b', new Colour("brick", "#A63C2B", 4))
            .with('c', new Colour("chalk", "#F4F1E8", 4))
            .with('n', new Colour("navy", "#1F2C58", 4));

    private static final String[] HOUSE = {
        "r6r6 ....bb....", "r5r5 ...bccb...", "r4r4 ..bcncbb..", "r3r3 ..bbbbbn..", "r2r2 .cbcbcbcb.", "r1r1 nnnnnnnnnn"
    };

    private static Plate plate(int from, String... rows) {
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a15", "House")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(from, from + rows[0].length() - 5)))
                .rows(Arrays.stream(rows)
                        .map(r -> Row.of(r.substring(0, 4), r.substring(5)))
                        .toList())
                .build();
    }

    private static List<String> words(String[] before, String... after) {
        return Comparison.of(plate(1, before), plate(1, after)).words();
    }

    /** The house with some of its rows in other words; a row is told by its id. */
    private static String[] house(String... instead) {
        return Arrays.stream(HOUSE)
                .map(row -> Arrays.stream(instead)
                        .filter(i -> i.startsWith(row.substring(0, 4)))
                        .findFirst()
                        .orElse(row))
                .toArray(String[]::new);
    }

    private static String[] order(String... ids) {
        return Arrays.stream(ids)
                .map(id -> Arrays.stream(HOUSE)
                        .filter(r -> r.startsWith(id))
                        .findFirst()
                        .orElse(id))
                .toArray(String[]::new);
    }

    @Test
    void nothingIsSaidOfTwoPlatesThatAreTheSame() {
        Comparison comparison = Comparison.of(plate(1, HOUSE), plate(1, HOUSE));
        assertThat(comparison.words()).isEmpty();
        assertThat(comparison.same()).isTrue();
        assertThat(Comparison.of(plate(1, HOUSE), plate(1, house("r1r1 nnnnnnnnnb")))
                        .same())
                .isFalse();
    }

    @Test
    void cablesOfOneRowAreSaidOneByOneShortestFirst() {
        assertThat(words(HOUSE, house("r4r4 ..bnncb...")))
                .containsExactly("row 4: pleats 8 to 9 brick taken out", "row 4: pleats 4 to 5 navy instead of chalk");
        assertThat(words(HOUSE, house("r6r6 ...cbb...."))).containsExactly("row 6: pleats 4 to 5 chalk put in");
    }

    @Test
    void aRegionOfSeveralRowsIsOneChangeWithItsCablesCounted() {
        assertThat(words(HOUSE, house("r5r5 ...bnnb...", "r4r4 ..bcnnbb..")))
                .containsExactly("rows 4 to 5, pleats 5 to 7: navy instead of chalk (3 cables)");
        assertThat(words(HOUSE, house("r6r6 ....cc....", "r5r5 ...b..b...")))
                .containsExactly("rows 5 to 6, pleats 5 to 7: chalk instead of brick; chalk taken out (4 cables)");
        assertThat(words(HOUSE, house("r6r6 ....cn....", "r5r5 ...b..b...")))
                .containsExactly("rows 5 to 6, pleats 5 to 7: redrawn (4 cables)");
    }

    @Test
    void regionsThatDoNotTouchAreSaidApart() {
        assertThat(words(HOUSE, house("r6r6 ....cb....", "r1r1 nnnnnnnnnb")))
                .containsExactlyInAnyOrder(
                        "row 6: pleats 5 to 6 chalk instead of brick", "row 1: pleats 10 to 11 brick instead of navy");
    }

    @Test
    void aRowWithManyChangesIsOneRegionWhereTheyTouch() {
        assertThat(words(HOUSE, house("r2r2 .bcbcbcbc.")))
                .containsExactly("row 2, pleats 2 to 10: brick instead of chalk; chalk instead of brick (8 cables)");
    }

    @Test
    void scatteredChangesBeyondCountAreSaidAsOne() {
        String[] rows = new String[30];
        String[] dotted = new String[30];
        for (int i = 0; i < 30; i++) {
            String id = String.format("k%03d", i);
            rows[i] = id + " bbbbbbbbbb";
            dotted[i] = i % 2 == 0 ? id + " bcbbbbbbcb" : rows[i];
        }
        List<String> words = words(rows, dotted);
        assertThat(words).containsExactly("rows 2 to 30, pleats 2 to 10: chalk instead of brick (30 cables)");
    }

    @Test
    void rowsPutInAreSaidByTheRowBelowThem() {
        assertThat(words(HOUSE, order("r6r6", "r5r5", "x1x1 ..nnnnnn..", "r4r4", "r3r3", "r2r2", "r1r1")))
                .containsExactly("1 row added above row 4");
        assertThat(words(
                        HOUSE,
                        order("r6r6", "r5r5", "r4r4", "r3r3", "r2r2", "r1r1", "x1x1 cccccccccc", "x2x2 cccccccccc")))
                .containsExactly("2 rows added below row 3");
    }

    @Test
    void rowsTakenOutAreSaidAsTheyWereCounted() {
        assertThat(words(HOUSE, order("r6r6", "r5r5", "r2r2", "r1r1"))).containsExactly("rows 3 to 4 removed");
        assertThat(words(HOUSE, order("r6r6", "r4r4", "r3r3", "r2r2")))
                .containsExactly("row 5 removed", "row 1 removed");
    }

    @Test
    void rowsThatWereMovedAreSaidWithBothTheirPlaces() {
        assertThat(words(HOUSE, order("r3r3", "r6r6", "r5r5", "r4r4", "r2r2", "r1r1")))
                .containsExactly("row 3 moved to row 6");
        assertThat(words(HOUSE, order("r3r3", "r2r2", "r6r6", "r5r5", "r4r4", "r1r1")))
                .containsExactly("rows 2 to 3 moved to rows 5 to 6");
    }

    @Test
    void aRowThatWasMovedAndEditedIsSaidTwice() {
        assertThat(words(HOUSE, order("r3r3 ..bbcbbn..", "r6r6", "r5r5", "r4r4", "r2r2", "r1r1")))
                .containsExactly("row 3 moved to row 6", "row 6: pleats 5 to 6 chalk instead of brick");
    }

    @Test
    void aChartIsWidenedAndNarrowedAtItsEnds() {
        String[] wide = Arrays.stream(HOUSE)
                .map(r -> r.substring(0, 5) + ".." + r.substring(5) + ".")
                .toArray(String[]::new);
        Comparison wider = Comparison.of(plate(1, HOUSE), plate(-1, wide));
        assertThat(wider.words())
                .containsExactly("chart widened at the left by 2 pleats", "chart widened at the right by 1 pleat");
        Comparison narrower = Comparison.of(plate(-1, wide), plate(1, HOUSE));
        assertThat(narrower.words())
                .containsExactly("chart narrowed at the left by 2 pleats", "chart narrowed at the right by 1 pleat");
        assertThat(wider.rows()).allMatch(pair -> pair.kind() == RowPair.Kind.SAME);
    }

    @Test
    void aChartIsBegunAndTakenOut() {
        Plate none = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a15", "House")
                .palette(PALETTE)
                .build();
        assertThat(Comparison.of(none, plate(3, "r1r1 bbbb")).words())
                .containsExactly("chart begun, pleats 3 to 7", "1 row added");
        assertThat(Comparison.of(plate(3, "r1r1 bbbb"), none).words())
                .containsExactly("chart taken out", "row 1 removed");
    }

    @Test
    void aPictureThatWasMovedOrMirroredIsOneChange() {
        String[] left = {"r3r3 .bb.......", "r2r2 .bcn......", "r1r1 bnnnn....."};
        String[] right = {"r3r3 ...bb.....", "r2r2 ...bcn....", "r1r1 ..bnnnn..."};
        String[] mirrored = {"r3r3 .......bb.", "r2r2 ......ncb.", "r1r1 .....nnnnb"};
        assertThat(words(left, right)).containsExactly("picture moved 2 pleats right");
        assertThat(words(right, left)).containsExactly("picture moved 2 pleats left");
        assertThat(words(left, mirrored)).containsExactly("picture mirrored left to right and moved 5 pleats right");
    }

    @Test
    void aPictureThatWasMirroredInItsPlaceIsNotMoved() {
        String[] was = {"r3r3 .bb.......", "r2r2 .bcn......", "r1r1 bnnnn....."};
        String[] is = {"r3r3 ..bb......", "r2r2 .ncb......", "r1r1 nnnnb....."};
        Comparison comparison = Comparison.of(plate(1, was), plate(1, is));
        assertThat(comparison.words()).containsExactly("picture mirrored left to right");
        assertThat(comparison.differences().get(0).places())
                .containsExactly(
                        new Place(Side.AFTER, 0, 1, 10),
                        new Place(Side.AFTER, 1, 1, 10),
                        new Place(Side.AFTER, 2, 1, 10));
    }

    @Test
    void rowsThatStoodApartAndWereMovedTogetherAreCounted() {
        assertThat(words(HOUSE, order("r6r6", "r4r4", "r2r2", "r1r1", "r5r5", "r3r3")))
                .containsExactly("2 rows moved to rows 1 to 2");
    }

    @Test
    void wholeRowsLieInTheirOwnChartsPleats() {
        Plate before = plate(1, "r3r3 bbbbbb", "r2r2 cccccc", "r1r1 nnnnnn");
        Plate after = plate(-1, "x1x1 bcbcbcbc", "r3r3 ..bbbbbb", "r1r1 ..nnnnnn");
        assertThat(Comparison.of(before, after).differences())
                .containsExactly(
                        new Difference("chart widened at the left by 2 pleats", About.WIDTH, List.of()),
                        new Difference(
                                "1 row added above row 2", About.ROWS_ADDED, List.of(new Place(Side.AFTER, 0, -1, 6))),
                        new Difference("row 2 removed", About.ROWS_REMOVED, List.of(new Place(Side.BEFORE, 1, 1, 6))));
    }

    @Test
    void aColourThatWentIsStillCalledByItsName() {
        Plate before = plate(1, "r2r2 bbbbbb", "r1r1 bbnbbb");
        Plate after = plate(1, "r2r2 bbbbbb", "r1r1 bb.bbb")
                .edit()
                .palette(PALETTE.without('n'))
                .build();
        assertThat(Comparison.of(before, after).words())
                .containsExactly("row 1: pleats 3 to 4 navy taken out", "colour navy removed");
    }

    @Test
    void aPictureThatWasMovedAndEditedSaysBoth() {
        String[] left = {"r3r3 .bb.......", "r2r2 .bcn......", "r1r1 bnnnn....."};
        String[] right = {"r3r3 ...bb.....", "r2r2 ...bbn....", "r1r1 ..bnnnn..."};
        assertThat(words(left, right))
                .containsExactly("picture moved 2 pleats right", "row 2: pleats 5 to 6 brick instead of chalk");
    }

    @Test
    void aPictureThatTookItsRowsUpIsOneChange() {
        String[] low = {"e1e1 ..........", "e2e2 ..........", "r3r3 ...bb.....", "r2r2 ...bcn....", "r1r1 ..bnnnn..."};
        String[] high = {"r3r3 ...bb.....", "r2r2 ...bcn....", "r1r1 ..bnnnn...", "e3e3 ..........", "e4e4 .........."};
        assertThat(words(low, high)).containsExactly("picture moved 2 rows up");
        assertThat(words(high, low)).containsExactly("picture moved 2 rows down");
    }

    @Test
    void aPictureTurnedUpsideDownWithItsRowsIsOneChange() {
        List<String> turned = new ArrayList<>(List.of(HOUSE));
        Collections.reverse(turned);
        assertThat(words(HOUSE, turned.toArray(String[]::new))).containsExactly("picture mirrored top to bottom");
    }

    @Test
    void aFigureThatWasMovedIsSaidByWhereItStood() {
        String[] two = {
            "r4r4 ..bb......nnnn..", "r3r3 .bccb.....nccn..", "r2r2 .bbbb.....nnnn..", "r1r1 ................"
        };
        String[] moved = {
            "r4r4 ..bb....nnnn....", "r3r3 .bccb...nccn....", "r2r2 .bbbb...nnnn....", "r1r1 ................"
        };
        Comparison comparison = Comparison.of(plate(1, two), plate(1, moved));
        assertThat(comparison.words()).containsExactly("figure at rows 2 to 4, pleats 11 to 15 moved 2 pleats left");
        assertThat(comparison.differences().get(0).places())
                .containsExactly(
                        new Place(Side.BEFORE, 0, 11, 14),
                        new Place(Side.AFTER, 0, 9, 12),
                        new Place(Side.BEFORE, 1, 11, 14),
                        new Place(Side.AFTER, 1, 9, 12),
                        new Place(Side.BEFORE, 2, 11, 14),
                        new Place(Side.AFTER, 2, 9, 12));
    }

    @Test
    void aFigureMovedByRowsIsSaidSo() {
        String[] two = {
            "r5r5 ................",
            "r4r4 ..bb......nnnn..",
            "r3r3 .bccb.....nccn..",
            "r2r2 .bbbb.....nnnn..",
            "r1r1 ................"
        };
        String[] up = {
            "r5r5 ..........nnnn..",
            "r4r4 ..bb......nccn..",
            "r3r3 .bccb.....nnnn..",
            "r2r2 .bbbb...........",
            "r1r1 ................"
        };
        assertThat(words(two, up)).containsExactly("figure at rows 2 to 4, pleats 11 to 15 moved 1 row up");
        assertThat(words(up, two)).containsExactly("figure at rows 3 to 5, pleats 11 to 15 moved 1 row down");
    }

    @Test
    void everyChangeSaysWhatItIsAboutAndWhereItLies() {
        Comparison comparison = Comparison.of(
                plate(1, HOUSE), plate(1, order("r3r3", "r6r6 ....cc....", "r5r5", "x1x1 cccccccccc", "r4r4", "r1r1")));
        assertThat(comparison.differences())
                .containsExactly(
                        new Difference(
                                "1 row added above row 2", About.ROWS_ADDED, List.of(new Place(Side.AFTER, 3, 1, 10))),
                        new Difference("row 2 removed", About.ROWS_REMOVED, List.of(new Place(Side.BEFORE, 4, 1, 10))),
                        new Difference(
                                "row 3 moved to row 6", About.ROWS_MOVED, List.of(new Place(Side.AFTER, 0, 1, 10))),
                        new Difference(
                                "row 5: pleats 5 to 7 chalk instead of brick",
                                About.CABLES,
                                List.of(new Place(Side.AFTER, 1, 5, 6))));
    }

    @Test
    void rowsWithoutIdsArePairedByLikeness() {
        Plate before = bare("....bb....", "...bccb...", "..bcncbb..", "nnnnnnnnnn");
        Plate after = bare("....bb....", "..cccccc..", "...bccb...", "..bcbcbb..", "nnnnnnnnnn");
        assertThat(Comparison.of(before, after).words())
                .containsExactly("1 row added above row 3", "row 2: pleats 5 to 6 brick instead of navy");
        assertThat(Comparison.of(before, after).rows().stream().map(RowPair::kind))
                .containsExactly(
                        RowPair.Kind.SAME,
                        RowPair.Kind.ADDED,
                        RowPair.Kind.SAME,
                        RowPair.Kind.EDITED,
                        RowPair.Kind.SAME);
    }

    @Test
    void aRowWithoutIdIsFoundAgainWhereItWasMoved() {
        assertThat(Comparison.of(
                                bare("....bb....", "...bccb...", "..bcncbb..", "nnnnnnnnnn", "cccccccccc"),
                                bare("cccccccccc", "....bb....", "...bccb...", "..bcncbb..", "nnnnnnnnnn"))
                        .words())
                .containsExactly("row 1 moved to row 5");
    }

    @Test
    void idsThatCameMeanwhileChangeNoRow() {
        Plate before = bare("....bb....", "...bccb...", "nnnnnnnnnn");
        Plate after = plate(1, "r3r3 ....bb....", "r2r2 ...bccb...", "x1x1 cccccccccc", "r1r1 nnnnnnnnnn");
        assertThat(Comparison.of(before, after).words()).containsExactly("1 row added above row 1");
    }

    /** The text of a plate: "if an id stands twice, ... in a join the likest" keeps it; comparing pairs as joining does. */
    @Test
    void ofTwoRowsWithOneIdTheLikestKeepsIt() {
        String[] before = {"r3r3 nnnnnnnnnn", "r2r2 bbbbbbbbbb", "r1r1 cccccccccc"};
        assertThat(words(before, "r3r3 nnnnnnnnnn", "r2r2 bcbcbcbcbc", "r2r2 bbbbbbbbbb", "r1r1 cccccccccc"))
                .containsExactly("1 row added above row 2");
    }

    private static Plate bare(String... rows) {
        return plate(1, HOUSE)
                .edit()
                .rows(Arrays.stream(rows).map(Row::bare).toList())
                .build();
    }

    @Test
    void runsOfCablesGiveBothSidesCells() {
        RowPair pair = Comparison.of(plate(1, HOUSE), plate(1, house("r4r4 ..bnbcb...")))
                .rows()
                .get(2);
        assertThat(pair)
                .isEqualTo(new RowPair(
                        Optional.of(2),
                        Optional.of(2),
                        RowPair.Kind.EDITED,
                        true,
                        List.of(new CableRun(4, 5, "cn", "nb"), new CableRun(8, 8, "b", "."))));
    }
}
