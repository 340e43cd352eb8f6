package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;

/**
 * All that the Join screen promises, asked of it by keys alone. What comes of it is known, since the texts of both sides are
 * typed by hand from the contract; git-show(1), git-log(1), git-rev-list(1) and git-fsck(1) tell what lies in the library.
 */
@Tag("packaged")
@Timeout(value = 15, unit = TimeUnit.MINUTES)
class JoinGuiTest {
    private static final String BELL = "plates/h/harbour-bell.json";
    private static final String TITLE = "Harbour Bell";

    private static final String BEFORE = plate("""
                "aa01 ...bbbbb...",
                "aa02 ..ccccccc..",
                "aa03 .bbbbbbbbb.",
                "aa04 .ccccccccc."
            """, "");

    /** Wenna's side: against Isolde's a new row and three runs of cables, and by itself one cable of row aa03. */
    private static final String WENNAS = plate("""
                "wa01 ....yyy....",
                "aa01 ...bbbbb...",
                "aa02 ..cyccccy..",
                "aa03 .cbbbbbbbb.",
                "aa04 .cccyycccc."
            """, "");

    private static final String ISOLDES = plate("""
                "ia01 ....bcb....",
                "aa01 ...bbbbb...",
                "aa02 ..cbccccb..",
                "aa03 .bbbbbbbbc.",
                "aa04 .cccbbcccc."
            """, "");

    private static final String FIRST = "Cables in row 3, pleats 4 to 5";
    private static final String SECOND = "Cables in row 3, pleats 9 to 10";
    private static final String THIRD = "Cables in row 1, pleats 5 to 7";
    private static final String NEW_ROWS = "New rows";
    private static final String ALL_OPEN = "4 of 4 open";
    private static final String ALL_DECIDED = "All 4 decided";

    private static final String HERS = "Row 2: pleats 10 to 11 chalk instead of brick";
    private static final String THE_PARTNERS = "Row 2: pleats 2 to 3 chalk instead of brick";

    @TempDir
    Path room;

    private TwoDesks desks;
    private Program program;
    private Work work;
    private Deciding join;

    @BeforeEach
    void bothEditTheBell() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
        desks.makeAnEmptyLibrary();
        desks.keep(BEFORE, "A bell for the harbour");
        desks.share();
        desks.keep(WENNAS, "A lamp over the bell");
        desks.command(TwoDesks.WENNA, "send");
        desks.keep(TwoDesks.ISOLDE, ISOLDES, "A cord for the bell");
    }

    private static String plate(String rows, String clashes) {
        return """
                {
                  "format": "plate 1",
                  "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a04",
                  "title": "Harbour Bell",
                  "themes": [],
                  "ages": [],
                  "designers": [
                    "Wenna Tarrow"
                  ],
                  "notes": [],
                  "colours": {
                    "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4},
                    "c": {"name": "chalk", "srgb": "#F4F1E8", "strands": 4},
                    "g": {"name": "bottle green", "srgb": "#2F5D3A", "strands": 4},
                    "y": {"name": "lamp yellow", "srgb": "#E9B83C", "strands": 4}
                  },
                  "pleats": {"from": 1, "to": 12},
                  "starts": [
                    {"row": "aa04", "pleat": 2, "cable": "down"}
                  ],
                  "rows": [
                %s  ]%s
                }
                """.formatted(rows, clashes);
    }

    // ---- what she does

    private void sit() throws Exception {
        program = desks.open(TwoDesks.ISOLDE);
        work = new Work(program);
        join = new Deciding(program);
    }

    private void sitAgain(String counter) throws Exception {
        sit();
        program.item("gallery-plates", TITLE);
        program.keys("ctrl 4");
        program.says("join-counter", counter);
        program.focus("join-matters");
    }

    private void bringIn() {
        work.bringInToDecide(ALL_OPEN);
        program.focus("join-matters");
    }

    // ---- what lies in the library

    private String newest(String who) throws Exception {
        return desks.git(who, "rev-parse", "HEAD").strip();
    }

    /** The newest version is the only one since, and it comes from both sides. */
    private void isOneVersionOfBoth(String mine) throws Exception {
        assertThat(desks.git(TwoDesks.ISOLDE, "log", "-1", "--format=%P").strip())
                .isEqualTo(mine + " " + newest(TwoDesks.WENNA));
        assertThat(desks.git(TwoDesks.ISOLDE, "rev-list", "--count", mine + "..HEAD", "^" + newest(TwoDesks.WENNA))
                        .strip())
                .isEqualTo("1");
        assertThat(desks.git(TwoDesks.ISOLDE, "status", "--porcelain")).isEmpty();
        desks.areSound();
    }

    private String bell() throws Exception {
        return desks.git(TwoDesks.ISOLDE, "show", "HEAD:" + BELL);
    }

    /** The day of a designer's newest version, as people write it. */
    private String day(String who) throws Exception {
        return desks.git(who, "log", "-1", "--date=format:%d %b %Y", "--format=%ad")
                .strip()
                .replaceFirst("^0", "");
    }

    // ---- the promises

    /** One of the two, painted by hand, hers, and the rows of both. */
    @Test
    void eachClashIsDecidedByAKeyAndAllIsOneVersion() throws Exception {
        String mine = newest(TwoDesks.ISOLDE);
        sit();
        try (Program open = program) {
            bringIn();
            join.isAt(FIRST);
            program.says("join-standing", "what was before stands");
            join.isOffered("Before", "as you both had it", "1 chalk");
            join.isOffered("Yours", TwoDesks.ISOLDE + ", " + day(TwoDesks.ISOLDE), "1 brick");
            join.isOffered(TwoDesks.WENNA, day(TwoDesks.WENNA), "1 lamp yellow");
            join.take(TwoDesks.WENNA, "3 of 4 open");
            paintTheSecond();
            join.goTo(THIRD);
            join.take("Yours", "1 of 4 open");
            decideTheNewRows();
            work.saveJoined();
            work.close();
        }
        isOneVersionOfBoth(mine);
        assertThat(bell()).isEqualTo(plate("""
                    "ia01 ....bcb....",
                    "wa01 ....yyy....",
                    "aa01 ...bbbbb...",
                    "aa02 ..cyccccg..",
                    "aa03 .cbbbbbbbc.",
                    "aa04 .cccbbcccc."
                """, ""));
    }

    /** Painting decides nothing before she says that it is the answer. */
    private void paintTheSecond() {
        join.goTo(SECOND);
        program.keys("F");
        program.focus("join-chart");
        program.keys("alt 3", "SPACE");
        program.until("join-who-4", "is what was painted", seen -> seen.text().equals("Painted"));
        program.says("join-counter", "3 of 4 open");
        program.keys("P");
        program.says("join-counter", "2 of 4 open");
        join.stands(SECOND, "standing=Painted");
    }

    private void decideTheNewRows() throws Exception {
        join.goTo(NEW_ROWS);
        program.says("join-standing", "the rows of both stand");
        join.isOffered("Yours", TwoDesks.ISOLDE + ", " + day(TwoDesks.ISOLDE), "");
        join.isOffered(TwoDesks.WENNA, day(TwoDesks.WENNA), "");
        join.take("Neither", ALL_DECIDED);
        join.stands(NEW_ROWS, "standing=Neither");
        program.keys("0");
        program.says("join-counter", "1 of 4 open");
        program.focus("join-chart");
        program.keys("shift N");
        join.isAt(NEW_ROWS);
        join.take("Both", ALL_DECIDED);
        join.stands(NEW_ROWS, "standing=Both");
    }

    @Test
    void whatWasSettledIsTakenBackAndGoingBackReachesBeforeTheJoin() throws Exception {
        String mine = newest(TwoDesks.ISOLDE);
        sit();
        try (Program open = program) {
            bringIn();
            lookAtWhatWasSettled();
            seeTheCheckFollow();
            join.takeForAll(1, ALL_DECIDED);
            join.stands(THIRD, "standing=Yours");
            join.takeBack(ALL_OPEN);
            join.stands(THIRD, "state=OPEN");
            join.takeForAll(2, ALL_DECIDED);
            join.stands(THIRD, "standing=" + TwoDesks.WENNA);
            goBackBeforeTheJoin();
            work.saveJoined();
            work.close();
        }
        isOneVersionOfBoth(mine);
        assertThat(bell()).isEqualTo(plate("""
                    "wa01 ....yyy....",
                    "aa01 ...bbbbb...",
                    "aa02 ..cyccccy..",
                    "aa03 .bbbbbbbbc.",
                    "aa04 .cccyycccc."
                """, ""));
    }

    /** Both are taken back one by one, and hers is put in again. */
    private void lookAtWhatWasSettled() throws Exception {
        program.until("join-matters", "holds all", seen -> seen.items().size() == 6);
        join.downTo(SECOND);
        join.downTo(THIRD);
        join.downTo(NEW_ROWS);
        join.downTo(HERS);
        join.isOffered("Before", "as you both had it", "without this change");
        join.isOffered("Yours", TwoDesks.ISOLDE + ", " + day(TwoDesks.ISOLDE), HERS.substring(1));
        join.take("Before");
        join.stands(HERS, "state=OUT");
        join.downTo(THE_PARTNERS);
        join.isOffered(TwoDesks.WENNA, day(TwoDesks.WENNA), THE_PARTNERS.substring(1));
        join.take("Before");
        join.stands(THE_PARTNERS, "state=OUT");
        program.keys("UP");
        join.isAt(HERS);
        join.take("Yours");
        join.stands(HERS, "state=IN");
        join.stands(THE_PARTNERS, "state=OUT");
        program.says("join-counter", ALL_OPEN);
    }

    /** A cable all alone in a corner is found at once, and is no finding any more once it is taken back. */
    private void seeTheCheckFollow() {
        String found = "rule=lone-cable, row=Optional[6], pleat=Optional[1]";
        program.keys("F");
        program.focus("join-chart");
        program.keys("HOME", "UP", "UP", "UP", "UP", "UP", "UP", "SPACE");
        program.until(
                "join-findings",
                "has the lone cable as new",
                seen -> seen.items().stream().anyMatch(item -> item.contains(found) && item.contains("isNew=true")));
        program.keys("ctrl Z");
        program.until(
                "join-findings",
                "has no lone cable",
                seen -> seen.items().stream().noneMatch(item -> item.contains(found)));
        program.keys("L");
        program.focus("join-matters");
    }

    /** All her steps, and then the join itself; all of it is done again. */
    private void goBackBeforeTheJoin() {
        join.takeBack(ALL_OPEN);
        join.takeBack(ALL_OPEN);
        join.stands(HERS, "state=OUT");
        join.takeBack(ALL_OPEN);
        join.stands(THE_PARTNERS, "state=IN");
        join.takeBack(ALL_OPEN);
        join.stands(HERS, "state=IN");
        join.takeBack("Before the join");
        assertThat(program.see("join-matters").items()).isEmpty();
        assertThat(program.see("join-save").enabled()).isFalse();
        assertThat(program.see("join-undo").enabled()).isFalse();
        for (String counter : List.of(ALL_OPEN, ALL_OPEN, ALL_OPEN, ALL_OPEN, ALL_DECIDED)) {
            program.keys("ctrl Y");
            program.says("join-counter", counter);
        }
        join.stands(THE_PARTNERS, "state=OUT");
    }

    @Test
    void whatIsLeftForLaterStaysInThePlateWithBothSides() throws Exception {
        String mine = newest(TwoDesks.ISOLDE);
        decideTwoThroughAClosedWindowAndAPowerCut(mine);
        sitAgain("2 of 4 open");
        try (Program open = program) {
            join.stands(FIRST, "standing=Before");
            join.stands(NEW_ROWS, "standing=Neither");
            saveTheRestForLater(mine);
            decideTheRest();
            work.close();
        }
        assertThat(desks.git(TwoDesks.ISOLDE, "rev-list", "--count", "--min-parents=2", "HEAD")
                        .strip())
                .isEqualTo("1");
        assertThat(desks.git(TwoDesks.ISOLDE, "log", "-1", "--format=%P").strip())
                .hasSize(40);
        assertThat(bell()).isEqualTo(later("..ccccccy..", ".cccyycccc.", ""));
        desks.areSound();
    }

    private static String later(String second, String fourth, String clashes) {
        return plate("""
                    "aa01 ...bbbbb...",
                    "aa02 %s",
                    "aa03 .cbbbbbbbc.",
                    "aa04 %s"
                """.formatted(second, fourth), clashes);
    }

    private void decideTwoThroughAClosedWindowAndAPowerCut(String mine) throws Exception {
        sit();
        try (Program open = program) {
            bringIn();
            join.isAt(FIRST);
            join.take("Before", "3 of 4 open");
            work.close();
        }
        nothingIsSaved(mine);
        sitAgain("3 of 4 open");
        try (Program open = program) {
            join.goTo(THIRD);
            join.goTo(NEW_ROWS);
            join.take("Neither", "2 of 4 open");
            program.until(
                    "the decision is on disk",
                    () -> Work.drafts(desks.home(TwoDesks.ISOLDE)).stream().noneMatch(text -> text.contains("wa01")));
            program.kill();
        }
        nothingIsSaved(mine);
    }

    private void nothingIsSaved(String mine) throws Exception {
        assertThat(newest(TwoDesks.ISOLDE)).isEqualTo(mine);
        assertThat(bell()).isEqualTo(ISOLDES);
        assertThat(desks.git(TwoDesks.ISOLDE, "status", "--porcelain")).isEmpty();
    }

    /** The sides are sorted by their values, as the contract has them. */
    private void saveTheRestForLater(String mine) throws Exception {
        program.keys("ctrl S");
        program.says("join-question", "2 clashes are open yet");
        program.keys("ESCAPE");
        program.until("join-question", "is gone", seen -> !seen.showing());
        nothingIsSaved(mine);
        program.keys("ctrl S");
        program.says("join-question", "both sides kept");
        program.keys("ENTER");
        program.says("status", "1 plate with clashes left open");
        isOneVersionOfBoth(mine);
        String saved = bell();
        assertThat(saved).isEqualTo(later("..ccccccc..", ".ccccccccc.", """
                ,
                  "clashes": [
                    {"what": "cables", "row": "aa02", "from": 9, "to": 9, "base": "c", "sides": [\
                {"value": "b", "by": "Isolde Marsh"}, {"value": "y", "by": "Wenna Tarrow"}]},
                    {"what": "cables", "row": "aa04", "from": 5, "to": 6, "base": "cc", "sides": [\
                {"value": "bb", "by": "Isolde Marsh"}, {"value": "yy", "by": "Wenna Tarrow"}]}
                  ]"""));
        assertThat(PlateText.read(BELL, saved.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfSatisfying(
                        Reading.Good.class,
                        good -> assertThat(((Plate) good.read()).clashes()).hasSize(2));
        program.keys("ctrl 1");
        program.item("gallery-plates", "marks=[CLASH");
    }

    private void decideTheRest() {
        program.keys("ctrl 4");
        program.says("join-counter", "2 of 2 open");
        program.focus("join-matters");
        join.isAt(SECOND);
        join.take(TwoDesks.WENNA, "1 of 2 open");
        join.goTo(THIRD);
        join.take(TwoDesks.WENNA, "All 2 decided");
        program.keys("ctrl S");
        program.until("join-reason", "proposes a reason", seen -> !seen.text().isBlank());
        program.keys("ENTER");
        program.says("status", "Version saved.");
        program.keys("ctrl 1");
        program.until(
                "gallery-plates",
                "has no clash",
                seen -> seen.items().size() == 1 && !seen.items().get(0).contains("CLASH"));
    }
}
