package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.model.plate.CableKind.DOWN;
import static platekeep.model.plate.CableKind.UP;
import static platekeep.model.stitch.Drawn.plate;
import static platekeep.model.stitch.Drawn.start;
import static platekeep.model.stitch.Drawn.started;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

class CheckTest {

    @Test
    void aSoundPlateGivesNoFinding() {
        assertThat(check(started(plate("aaaa .aaa.", "bbbb aaaaa"), start("bbbb", 1, DOWN))))
                .isEmpty();
        assertThat(check(plate())).isEmpty();
    }

    @Test
    void whatNamesARowThatIsNotThereIsAnError() {
        Plate lost = started(plate("aaaa aaa"), start("aaaa", 1, DOWN), start("zzzz", 2, UP))
                .edit()
                .marks(List.of(new Mark("french knot", new RowId("yyyy"), "2 1/2", 'a', Unknown.NONE)))
                .remarks(List.of(remark("xxxx")))
                .build();

        assertThat(check(lost))
                .extracting(Finding::rule)
                .containsExactlyInAnyOrder("start-without-row", "mark-without-row", "remark-without-row");
        assertThat(check(lost)).extracting(Finding::severity).containsOnly(Severity.ERROR);
        assertThat(check(lost)).extracting(Finding::row).containsOnly(Optional.empty());
        assertThat(only("mark-without-row", lost).pleat()).hasValue(2);
    }

    private static Remark remark(String row) {
        return new Remark(
                new RowId("k2w9"),
                Optional.of(new RowId(row)),
                Optional.of(1),
                Optional.of(2),
                "Second Designer",
                LocalDate.of(2026, 3, 2),
                "Wider rock?",
                false,
                Unknown.NONE);
    }

    @Test
    void twoStartsThatDisagreeAreAnErrorAtTheOneThatDoesNotCount() {
        Plate disagreeing = started(plate("aaaa aaa", "bbbb aaa"), start("bbbb", 1, DOWN), start("aaaa", 2, UP));
        Plate agreeing = started(plate("aaaa aaa", "bbbb aaa"), start("bbbb", 1, DOWN), start("aaaa", 2, DOWN));

        assertThat(check(agreeing)).isEmpty();
        assertThat(only("starts-disagree", disagreeing).text())
                .isEqualTo(
                        "This start makes the cable here up, but the start of the same figure in row 1, pleat 1 makes"
                                + " it down; take one of them out or turn it.");
        assertThat(only("starts-disagree", disagreeing).row()).hasValue(2);
        assertThat(only("starts-disagree", disagreeing).pleat()).hasValue(2);
    }

    @Test
    void aStartWhereNoCableLiesIsReported() {
        Plate plate = started(plate("aaaa aaa."), start("aaaa", 4, DOWN));

        assertThat(only("start-without-cable", plate).pleat()).hasValue(4);
    }

    @Test
    void everyOpenClashIsAnError() {
        Clash cables = new Clash(
                Clash.What.CABLES,
                new Value.Builder()
                        .put("row", "bbbb")
                        .put("from", 2)
                        .put("to", 3)
                        .build(),
                Value.of("aa"),
                List.of(new Clash.Side(Value.of("bb"), Optional.empty())));
        Clash title = new Clash(
                Clash.What.FIELD, new Value.Builder().put("field", "title").build(), Value.of("Kite"), List.of());
        Plate plate = started(plate("aaaa aaa", "bbbb aaa"), start("bbbb", 1, DOWN))
                .edit()
                .clashes(List.of(cables, title))
                .build();

        assertThat(check(plate))
                .containsExactly(
                        new Finding(
                                Severity.ERROR,
                                "open-clash",
                                Optional.of(1),
                                Optional.of(2),
                                "The cables over pleats 2 to 4 were changed in two ways; choose one or paint them."),
                        new Finding(
                                Severity.ERROR,
                                "open-clash",
                                Optional.empty(),
                                Optional.empty(),
                                "The title was changed in two ways; choose one."));
    }

    @Test
    void aLoneCableIsFoundOnceForItsFigure() {
        Plate tip = started(plate("aaaa a..", "bbbb aaa"), start("bbbb", 1, DOWN));

        assertThat(only("lone-cable", tip))
                .isEqualTo(new Finding(
                        Severity.WARNING,
                        "lone-cable",
                        Optional.of(2),
                        Optional.of(1),
                        "The cable over pleats 1 and 2 holds to no other cable; set another beside it."));
        assertThat(check(started(tip, start("bbbb", 1, UP)))).isEmpty();
        Plate tips = started(plate("aaaa a.a", "bbbb aaa"), start("bbbb", 1, DOWN));
        assertThat(only("lone-cable", tips).text()).contains("so does 1 other cable of this figure");
    }

    @Test
    void aPartThatOnlyTouchesIsFoundOnceForItsFigure() {
        Plate loose = started(plate("aaaa ..aa", "bbbb aaa."), start("bbbb", 1, DOWN));
        Plate pairs = started(plate("aaaa a", "bbbb a", "cccc a", "dddd a", "eeee a", "ffff a"), start("ffff", 1, UP));

        assertThat(only("loose-part", loose).row()).hasValue(2);
        assertThat(only("loose-part", loose).pleat()).hasValue(3);
        assertThat(check(started(loose, start("bbbb", 1, UP)))).isEmpty();
        assertThat(only("loose-part", pairs).text()).contains("so does 1 other part of this figure");
    }

    @Test
    void aRunMayHangTwoPleatsBeyondTheRowItRestsOnButNotThree() {
        Plate two = started(plate("aaaa aaaaaa", "bbbb ..aa.."), start("bbbb", 3, UP));
        Plate three = started(plate("aaaa aaaaaa.", "bbbb ...aaa."), start("bbbb", 4, UP));

        assertThat(check(two)).isEmpty();
        assertThat(only("overhang", three).text())
                .isEqualTo("The run over pleats 1 to 7 hangs 3 pleats beyond row 1, on which it rests; widen row 1 or"
                        + " start the figure at a wider row.");
        assertThat(only("overhang", three).row()).hasValue(2);
        assertThat(only("overhang", three).pleat()).hasValue(1);
    }

    @Test
    void underItsStartARunRestsOnTheRowAbove() {
        Plate three = plate("aaaa aaaaaa", "bbbb ...aaa");

        assertThat(check(started(three, start("aaaa", 1, UP)))).isEmpty();
        assertThat(check(started(three, start("bbbb", 4, UP))))
                .extracting(Finding::rule)
                .containsExactly("overhang");
        assertThat(check(started(plate("aaaa aaa...", "bbbb aaaaaa"), start("aaaa", 1, DOWN))))
                .extracting(Finding::rule)
                .containsExactly("overhang");
    }

    @Test
    void aRunThatRestsOnNothingIsSaidSo() {
        Plate arch = started(plate("aaaa aaaaaa", "bbbb aa.aaa", "cccc aa...."), start("cccc", 1, UP));

        assertThat(only("overhang", arch).text()).startsWith("The run over pleats 4 to 7 rests on nothing in row 1");
    }

    @Test
    void aThreadMayBeCarriedBehindFourPleatsButNotFive() {
        Plate four = started(plate("aaaa aabbbbaa"), start("aaaa", 1, DOWN));
        Plate five = started(plate("aaaa aabbbbbaa", "bbbb aabbbbbaa"), start("bbbb", 1, DOWN));

        assertThat(check(four)).isEmpty();
        assertThat(only("carried-thread", five).text())
                .isEqualTo(
                        "The thread of colour a is carried behind 5 pleats, from pleat 3 to pleat 8 (and too far in 1"
                                + " other place of this figure); end it off, or work the colour between.");
        assertThat(only("carried-thread", five).row()).hasValue(2);
    }

    @Test
    void threadsCarriedInOneFigureAreOneFindingThatNamesTheColours() {
        Plate two = started(plate("aaaa aaabbbbbaaabbb"), start("aaaa", 1, DOWN));
        Plate three = started(plate("aaaa aaabbbbbaaaaaaabbb"), start("aaaa", 1, DOWN));

        assertThat(only("carried-thread", two).text()).doesNotContain("and too far");
        assertThat(only("carried-thread", three).text())
                .startsWith(
                        "The thread of colour b is carried behind 7 pleats, from pleat 9 to pleat 16 (and too far in"
                                + " 1 other place of this figure, also colour a)");
    }

    @Test
    void betweenTwoFiguresNoThreadIsCarried() {
        assertThat(check(started(plate("aaaa aa.......aa"), start("aaaa", 1, DOWN))))
                .isEmpty();
    }

    @Test
    void oneBlankRowBetweenFiguresOneAboveTheOtherMayBeAMistake() {
        Plate over = started(plate("aaaa .aa..", "bbbb .....", "cccc ..aa."), start("cccc", 3, DOWN));
        Plate beside = started(plate("aaaa aa...", "bbbb .....", "cccc ...aa"), start("cccc", 4, DOWN));
        Plate far = started(plate("aaaa aa", "bbbb ..", "dddd ..", "cccc aa"), start("cccc", 1, DOWN));

        assertThat(only("blank-row", over).row()).hasValue(2);
        assertThat(only("blank-row", over).pleat()).hasValue(3);
        assertThat(check(beside)).isEmpty();
        assertThat(check(far)).isEmpty();
    }

    @Test
    void aFigureThatReachesUnderAnotherOnlyFartherDownIsNotTooClose() {
        Plate tail = started(
                plate("aaaa aa.....", "bbbb .......", "cccc .....aa", "dddd ...aaaa", "eeee .aaaaaa"),
                start("eeee", 2, DOWN));

        assertThat(check(tail)).isEmpty();
    }

    @Test
    void aColourForFewCablesOrNoneIsAHint() {
        Plate few = started(plate("aaaa aaabb"), start("aaaa", 1, DOWN));
        Plate unused = few.edit()
                .palette(few.palette().with('q', new Colour("plum", "#5A2A5A", 4)))
                .build();

        assertThat(only("few-cables", few).text())
                .isEqualTo("colour b is used for 2 cables only and needs a needle of its own.");
        assertThat(only("unused-colour", unused).text())
                .isEqualTo("Nothing is worked in plum; take it out of the palette.");
        assertThat(only("unused-colour", unused).severity()).isEqualTo(Severity.HINT);
    }

    @Test
    void coloursThatAreHardToTellApartAreNamed() {
        Plate plate = started(plate("aaaa aaabbb"), start("aaaa", 1, DOWN));

        assertThat(only("colours-alike", coloured(plate, "#A63C2B", "#A8402C")).text())
                .isEqualTo("one (#A63C2B) and other (#A8402C) are hard to tell apart on paper.");
        assertThat(check(coloured(plate, "#A63C2B", "#F4F1E8"))).isEmpty();
    }

    @Test
    void coloursThatOnlySomeCannotTellApartAreAHint() {
        Plate plate = started(plate("aaaa aaabbb"), start("aaaa", 1, DOWN));

        Finding finding = only("colours-alike-to-some", coloured(plate, "#B05A3C", "#7D7A32"));

        assertThat(finding.severity()).isEqualTo(Severity.HINT);
        assertThat(finding.text()).endsWith("are hard to tell apart for people who do not see green.");
    }

    private static Plate coloured(Plate plate, String one, String other) {
        Palette palette = Palette.EMPTY.with('a', new Colour("one", one, 4)).with('b', new Colour("other", other, 4));
        return plate.edit().palette(palette).build();
    }

    @Test
    void aHundredOfOneRuleAreNotListedOneByOne() {
        Plate dots = plate("a.".repeat(100));

        List<Finding> findings = check(dots);

        assertThat(findings).hasSize(Findings.MOST_OF_A_RULE + 1);
        assertThat(findings.get(Findings.MOST_OF_A_RULE).text())
                .isEqualTo("50 more places like those listed (lone cable) are not listed.");
    }

    @Test
    void settingsAreKeptAsValuesAndMoveTheLines() {
        CheckSettings wide = new CheckSettings(3, 5, 0, 0, 0);
        Plate three = started(plate("aaaa aaaaaa.", "bbbb ...aaa."), start("bbbb", 4, UP));

        assertThat(CheckSettings.of(wide.value())).isEqualTo(wide);
        assertThat(CheckSettings.of(new Value.Builder().put("overhang", "wide").build()))
                .isEqualTo(CheckSettings.DEFAULT);
        assertThat(Check.of(three, wide)).isEmpty();
    }

    private static List<Finding> check(Plate plate) {
        return Check.of(plate, CheckSettings.DEFAULT);
    }

    private static Finding only(String rule, Plate plate) {
        List<Finding> found =
                check(plate).stream().filter(f -> f.rule().equals(rule)).toList();
        assertThat(found).as(rule).hasSize(1);
        return found.get(0);
    }
}
