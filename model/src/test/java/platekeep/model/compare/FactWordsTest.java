package platekeep.model.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import platekeep.model.compare.Difference.About;
import platekeep.model.plate.Age;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** The change of all that is said about a plate, in words; rows are counted from the bottom. */
class FactWordsTest {
    private static final Colour BRICK = new Colour("brick", "#A63C2B", 4);
    private static final Colour CHALK = new Colour("chalk", "#F4F1E8", 4);
    private static final Plate GATE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a16", "Gate")
            .palette(Palette.EMPTY.with('b', BRICK).with('c', CHALK))
            .pleats(Optional.of(new Pleats(1, 7)))
            .rows(List.of(Row.of("r3r3", "..bb.."), Row.of("r2r2", ".bccb."), Row.of("r1r1", "bbccbb")))
            .build();

    private static List<String> words(Plate before, Plate after) {
        return Comparison.of(before, after).words();
    }

    private static List<String> words(UnaryOperator<Draft> change) {
        return words(GATE, change.apply(GATE.edit()).build());
    }

    private static List<String> back(UnaryOperator<Draft> change) {
        return words(change.apply(GATE.edit()).build(), GATE);
    }

    @Test
    void aFieldIsSaidAsItIsAndAsItWas() {
        assertThat(words(d -> d.title("Orchard Gate"))).containsExactly("title now “Orchard Gate” instead of “Gate”");
        assertThat(words(d -> d.number(Optional.of("O-1")))).containsExactly("number now O-1");
        assertThat(back(d -> d.number(Optional.of("O-1")))).containsExactly("number taken out (was O-1)");
        assertThat(words(d -> d.state(Optional.of(State.CHARTED)))).containsExactly("state now charted");
        assertThat(words(d -> d.repeat(Optional.of(new Repeat(30, 3, Unknown.NONE)))))
                .containsExactly("repeat now every 30 pleats, 3 times");
        assertThat(words(d -> d.fromPlate(Optional.of(new FromPlate("the-old-snail", "1", Unknown.NONE)))))
                .containsExactly("plate it was started from now the-old-snail");
    }

    @Test
    void theOriginIsSaidPartByPart() {
        Origin bought = new Origin(
                Optional.of("bought"),
                Optional.of("a fair"),
                Optional.of("binder 2"),
                Optional.of("mine"),
                Unknown.NONE);
        assertThat(words(d -> d.origin(bought)))
                .containsExactly(
                        "kind of origin now bought",
                        "origin now a fair",
                        "place of the paper now binder 2",
                        "allowed use now mine");
    }

    @Test
    void theClothIsSaidPartByPart() {
        Cloth cloth = new Cloth(
                Optional.of(7),
                Optional.of(new BigDecimal("9.5")),
                Optional.of(5),
                Optional.of(new BigDecimal("4")),
                List.of("1", "7"),
                Unknown.NONE);
        assertThat(words(d -> d.cloth(cloth)))
                .containsExactly(
                        "gathering rows of the cloth now 7",
                        "spacing of the gathering rows now 9.5 mm",
                        "stacked rows to a space now 5",
                        "fullness now 4 to 1",
                        "holding rows now 1, 7");
        assertThat(back(d -> d.cloth(cloth))).contains("holding rows taken out (was 1, 7)");
    }

    @Test
    void setsAndListsSayWhatCameAndWhatWent() {
        assertThat(words(d -> d.themes(List.of("gates", "orchard"))))
                .containsExactly("theme gates added", "theme orchard added");
        assertThat(back(d -> d.themes(List.of("gates")))).containsExactly("theme gates removed");
        assertThat(words(d -> d.ages(List.of(Age.TODDLER)))).containsExactly("age toddler added");
        assertThat(words(d -> d.uses(List.of("yoke")))).containsExactly("use yoke added");
        assertThat(words(d -> d.notes(List.of("Hinge last.")))).containsExactly("note “Hinge last.” added");
        assertThat(words(d -> d.designers(List.of("Wenna Tarrow")))).containsExactly("designer Wenna Tarrow added");
    }

    @Test
    void aListInAnotherOrderIsSaidAsThatAlone() {
        Plate two = GATE.edit()
                .designers(List.of("Wenna Tarrow", "Isolde Marsh"))
                .notes(List.of("One.", "Two."))
                .build();
        Plate turned = two.edit()
                .designers(List.of("Isolde Marsh", "Wenna Tarrow"))
                .notes(List.of("Two.", "One."))
                .build();
        assertThat(words(two, turned)).containsExactly("designers in another order", "notes in another order");
        assertThat(words(
                        two, two.edit().notes(List.of("One.", "Two.", "Three.")).build()))
                .containsExactly("note “Three.” added");
    }

    @Test
    void aColourIsSaidByWhatChangedOfIt() {
        assertThat(words(d -> d.palette(GATE.palette().with('b', new Colour("rust", "#A63C2B", 4)))))
                .containsExactly("colour brick now named rust");
        assertThat(words(d -> d.palette(GATE.palette().with('b', new Colour("brick", "#B4492F", 4)))))
                .containsExactly("colour brick now #B4492F");
        assertThat(words(d -> d.palette(GATE.palette().with('b', new Colour("brick", "#A63C2B", 1)))))
                .containsExactly("colour brick now with 1 strand");
        assertThat(words(d -> d.palette(GATE.palette().with('b', new Colour("brick", "#A63C2B", 3)))))
                .containsExactly("colour brick now with 3 strands");
        assertThat(words(d -> d.palette(GATE.palette().with('n', new Colour("navy", "#1F2C58", 4)))))
                .containsExactly("colour navy added (#1F2C58)");
        assertThat(back(d -> d.palette(GATE.palette().with('n', new Colour("navy", "#1F2C58", 4)))))
                .containsExactly("colour navy removed");
    }

    @Test
    void theFlossOfAColourComesAndGoes() {
        Colour shaded = new Colour("brick", "#A63C2B", 4, Optional.of("shade 14"), Unknown.NONE);
        assertThat(words(d -> d.palette(GATE.palette().with('b', shaded))))
                .containsExactly("floss of brick now shade 14");
        assertThat(back(d -> d.palette(GATE.palette().with('b', shaded)))).containsExactly("floss of brick taken out");
    }

    @Test
    void aKeyThatGotAnotherLetterIsRenamedAndNoCableChanged() {
        Plate after = GATE.edit()
                .palette(Palette.EMPTY.with('q', BRICK).with('c', CHALK))
                .rows(GATE.rows().stream()
                        .map(r -> r.withCells(r.cells().replace('b', 'q')))
                        .toList())
                .build();
        assertThat(words(GATE, after)).containsExactly("key b renamed q");
    }

    @Test
    void aColourWorkedInAnotherThroughoutIsMadeOneWithIt() {
        Plate after = GATE.edit()
                .palette(Palette.EMPTY.with('b', BRICK))
                .rows(GATE.rows().stream()
                        .map(r -> r.withCells(r.cells().replace('c', 'b')))
                        .toList())
                .build();
        assertThat(words(GATE, after)).contains("colour chalk made one with brick");
    }

    @Test
    void aStartIsSaidByRowPleatsAndCableAndPointsThere() {
        Start start = new Start(new RowId("r1r1"), 1, CableKind.DOWN, Optional.of("5"), Unknown.NONE);
        Plate with = GATE.edit().starts(List.of(start)).build();
        Plate turned = GATE.edit()
                .starts(List.of(new Start(new RowId("r1r1"), 1, CableKind.UP, Optional.of("5"), Unknown.NONE)))
                .build();
        assertThat(Comparison.of(GATE, with).differences())
                .containsExactly(new Difference(
                        "start added: row 1, pleats 1 and 2, down cable on gathering row 5",
                        About.STARTS,
                        List.of(new Place(Side.AFTER, 2, 1, 1))));
        assertThat(Comparison.of(with, turned).differences())
                .containsExactly(new Difference(
                        "start changed: row 1, pleats 1 and 2, up cable on gathering row 5 instead of row 1, pleats 1 and"
                                + " 2, down cable on gathering row 5",
                        About.STARTS,
                        List.of(new Place(Side.BEFORE, 2, 1, 1), new Place(Side.AFTER, 2, 1, 1))));
        assertThat(Comparison.of(with, GATE).differences())
                .containsExactly(new Difference(
                        "start removed: row 1, pleats 1 and 2, down cable on gathering row 5",
                        About.STARTS,
                        List.of(new Place(Side.BEFORE, 2, 1, 1))));
    }

    @Test
    void startsAreToldApartByRowAndPleat() {
        Start low = new Start(new RowId("r1r1"), 1, CableKind.DOWN);
        Start high = new Start(new RowId("r3r3"), 3, CableKind.UP);
        assertThat(words(d -> d.starts(List.of(low, high))))
                .containsExactly(
                        "start added: row 1, pleats 1 and 2, down cable",
                        "start added: row 3, pleats 3 and 4, up cable");
    }

    @Test
    void aSingleStitchIsSaidByItsPlaceAndPointsToTheCablesBesideIt() {
        Mark on = new Mark("french knot", new RowId("r2r2"), "4", 'c', Unknown.NONE);
        Mark between = new Mark("bullion", new RowId("r3r3"), "3 1/2", 'b', Unknown.NONE);
        Comparison comparison =
                Comparison.of(GATE, GATE.edit().marks(List.of(on, between)).build());
        assertThat(comparison.differences())
                .containsExactly(
                        new Difference(
                                "mark added: french knot in chalk at row 2, pleat 4",
                                About.MARKS,
                                List.of(new Place(Side.AFTER, 1, 3, 4))),
                        new Difference(
                                "mark added: bullion in brick at row 3, pleat 3 1/2",
                                About.MARKS,
                                List.of(new Place(Side.AFTER, 0, 3, 3))));
    }

    @Test
    void aStitchOnARowThatIsNotThereIsSaidSoAndPointsNowhere() {
        Mark lost = new Mark("french knot", new RowId("zzzz"), "4", 'c', Unknown.NONE);
        assertThat(Comparison.of(GATE, GATE.edit().marks(List.of(lost)).build()).differences())
                .containsExactly(new Difference(
                        "mark added: french knot in chalk at a row that is not there, pleat 4",
                        About.MARKS,
                        List.of()));
    }

    @Test
    void aGeometricLineIsSaidByStitchRowsPleatsAndColour() {
        Line cable =
                new Line("2", Optional.empty(), "cable", Optional.empty(), 'c', 3, 1, 7, CableKind.DOWN, Unknown.NONE);
        Line trellis =
                new Line("2", Optional.of("3"), "trellis", Optional.of(3), 'b', 3, 1, 7, CableKind.DOWN, Unknown.NONE);
        assertThat(words(d -> d.lines(List.of(cable, trellis))))
                .containsExactly(
                        "geometric line added: cable on gathering row 2, pleats 1 to 7, in chalk",
                        "geometric line added: trellis on gathering row 2 to 3, pleats 1 to 7, in brick");
        Plate both = GATE.edit().lines(List.of(cable, trellis)).build();
        assertThat(words(both, both.edit().lines(List.of(trellis, cable)).build()))
                .containsExactly("geometric lines in another order");
        assertThat(words(
                        both,
                        both.edit()
                                .lines(List.of(cable.withColour('b'), trellis))
                                .build()))
                .containsExactly(
                        "geometric line changed: cable on gathering row 2, pleats 1 to 7, in brick instead of cable on"
                                + " gathering row 2, pleats 1 to 7, in chalk");
    }

    @Test
    void notionsAreSaidByCountKindAndSize() {
        Notion buttons = new Notion("button", Optional.of("9 mm"), 2, Unknown.NONE);
        Notion bead = new Notion("bead", Optional.empty(), 1, Unknown.NONE);
        Plate both = GATE.edit().notions(List.of(buttons, bead)).build();
        assertThat(words(GATE, both)).containsExactly("notion added: 2 button of 9 mm", "notion added: 1 bead");
        assertThat(words(both, both.edit().notions(List.of(bead, buttons)).build()))
                .containsExactly("notions in another order");
    }

    @Test
    void aRemarkIsSaidWithWhoSaidItAndPointsToItsStretch() {
        Remark remark = new Remark(
                new RowId("k2w9"),
                Optional.of(new RowId("r2r2")),
                Optional.of(2),
                Optional.of(4),
                "Isolde Marsh",
                LocalDate.of(2026, 3, 2),
                "Wider?",
                false,
                Unknown.NONE);
        Plate with = GATE.edit().remarks(List.of(remark)).build();
        assertThat(Comparison.of(GATE, with).differences())
                .containsExactly(new Difference(
                        "remark added: “Wider?” by Isolde Marsh",
                        About.REMARKS,
                        List.of(new Place(Side.AFTER, 1, 2, 4))));
        assertThat(words(
                        with,
                        with.edit().remarks(List.of(remark.withDone(true))).build()))
                .containsExactly("remark changed: “Wider?” by Isolde Marsh (done) instead of “Wider?” by Isolde Marsh");
    }

    @Test
    void startsOfTwoFiguresWhoseRowWentAreEachMovedOnce() {
        Plate two = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Pears")
                .palette(Palette.of(
                        Map.of('a', new Colour("brick", "#A63C2B", 4), 'b', new Colour("chalk", "#F4F1E8", 4))))
                .pleats(Optional.of(new Pleats(1, 13)))
                .rows(List.of(
                        new Row(Optional.of(new RowId("r1r1")), ".aaaa..bbbb."),
                        new Row(Optional.of(new RowId("r2r2")), "..aa....bb..")))
                .starts(List.of(
                        new Start(new RowId("r2r2"), 3, CableKind.DOWN), new Start(new RowId("r2r2"), 9, CableKind.UP)))
                .build();
        Plate shorter = two.edit()
                .rows(two.rows().subList(0, 1))
                .starts(List.of(
                        new Start(new RowId("r1r1"), 3, CableKind.UP), new Start(new RowId("r1r1"), 9, CableKind.DOWN)))
                .build();
        assertThat(words(two, shorter))
                .containsExactly(
                        "row 1 removed",
                        "start moved: row 1, pleats 3 and 4, up cable instead of row 1 as it was, pleats 3 and 4, down cable",
                        "start moved: row 1, pleats 9 and 10, down cable instead of row 1 as it was, pleats 9 and 10, up cable");
    }

    @Test
    void aStartAtAnotherPlaceIsSaidOnce() {
        Plate with = GATE.edit()
                .starts(List.of(new Start(new RowId("r1r1"), 2, CableKind.UP)))
                .build();
        Plate other = GATE.edit()
                .starts(List.of(new Start(new RowId("r1r1"), 4, CableKind.UP)))
                .build();
        assertThat(words(with, other))
                .containsExactly(
                        "start moved: row 1, pleats 4 and 5, up cable instead of row 1, pleats 2 and 3, up cable");
    }

    @Test
    void threadsThatChangedPlacesAreSaidOnce() {
        Colour brick = GATE.palette().get('b').orElseThrow();
        Colour chalk = GATE.palette().get('c').orElseThrow();
        Plate exchanged = GATE.edit()
                .palette(GATE.palette().with('b', chalk).with('c', brick))
                .build();
        assertThat(words(GATE, exchanged)).containsExactly("threads brick and chalk exchanged");
    }

    @Test
    void aRemarkOnARowPointsToAllOfItAndOneOnThePlateNowhere() {
        Remark row = new Remark(
                new RowId("k2w9"),
                Optional.of(new RowId("r2r2")),
                Optional.empty(),
                Optional.empty(),
                "Isolde Marsh",
                LocalDate.of(2026, 3, 2),
                "Wider?",
                false,
                Unknown.NONE);
        Remark whole = new Remark(
                new RowId("k2w8"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "Isolde Marsh",
                LocalDate.of(2026, 3, 2),
                "Good.",
                false,
                Unknown.NONE);
        List<Difference> said = Comparison.of(
                        GATE, GATE.edit().remarks(List.of(row, whole)).build())
                .differences();
        assertThat(said.get(1).places()).containsExactly(new Place(Side.AFTER, 1, 1, 6));
        assertThat(said.get(0).places()).isEmpty();
    }

    @Test
    void whatThisVersionDoesNotKnowIsAtLeastMentioned() {
        Unknown unknown = new Unknown(Map.of("sheen", Value.of("silk")));
        assertThat(words(d -> d.unknown(unknown))).containsExactly("something changed that this version does not know");
        assertThat(words(d -> d.origin(
                        new Origin(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), unknown))))
                .containsExactly("something changed that this version does not know");
        assertThat(words(d -> d.palette(
                        GATE.palette().with('b', new Colour("brick", "#A63C2B", 4, Optional.empty(), unknown)))))
                .containsExactly("colour brick changed in an entry that this version does not know");
    }

    @Test
    void changesAreToldInTheOrderOfTheirKinds() {
        Plate after = GATE.edit()
                .title("Orchard Gate")
                .rows(List.of(Row.of("r3r3", "..cb.."), Row.of("r1r1", "bbccbb")))
                .palette(GATE.palette().with('b', new Colour("brick", "#B4492F", 4)))
                .notions(List.of(new Notion("bead", Optional.empty(), 1, Unknown.NONE)))
                .build();
        assertThat(Comparison.of(GATE, after).differences().stream().map(Difference::about))
                .containsExactly(About.ROWS_REMOVED, About.CABLES, About.COLOURS, About.FACTS, About.NOTIONS);
    }
}
