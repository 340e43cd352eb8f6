package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two versions of a plate are looked at side by side, one over the other and in turns. What changed is known, since the
 * rows of both are typed here; git-log(1) and git-status(1) tell that looking leaves the library as it was.
 */
@Tag("packaged")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class CompareGuiTest {
    private static final String TITLE = "Light Ship";
    private static final String BEFORE = plate("""
                "aa01 ....bbb....",
                "aa02 ...ccccc...",
                "aa03 ..byyyyyb..",
                "aa04 ..bbbbbbb..",
                "aa05 .ccccccccc."
            """);
    private static final String AFTER = plate("""
                "aa06 .....y.....",
                "aa03 ..byycyyb..",
                "aa01 ....bbb....",
                "aa02 ...ccccc...",
                "aa04 ..bbbccbb..",
                "aa05 .ccccccccc."
            """);

    private static final String FIRST = "The ship in the roads";
    private static final String SECOND = "The lamp on the mast";

    private static final String CHARTS = "compare-charts";

    /** What changed between the two, from the rows above: rows are counted from the bottom, pleats from 1. */
    private static final List<String> WORDS = List.of(
            "1 row added above row 5",
            "row 3 moved to row 5",
            "row 2: pleats 6 to 8 chalk instead of brick",
            "row 5: pleats 6 to 7 chalk instead of lamp yellow");

    @TempDir
    Path room;

    private TwoDesks desks;

    @BeforeEach
    void setTheDesks() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
    }

    private static String plate(String rows) {
        return """
                {
                  "format": "plate 1",
                  "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a03",
                  "title": "Light Ship",
                  "themes": [],
                  "ages": [],
                  "designers": [
                    "Wenna Tarrow"
                  ],
                  "notes": [],
                  "colours": {
                    "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4},
                    "c": {"name": "chalk", "srgb": "#F4F1E8", "strands": 4},
                    "y": {"name": "lamp yellow", "srgb": "#E9B83C", "strands": 4}
                  },
                  "pleats": {"from": 1, "to": 12},
                  "starts": [
                    {"row": "aa05", "pleat": 2, "cable": "down"}
                  ],
                  "rows": [
                %s  ]
                }
                """.formatted(rows);
    }

    @Test
    void whatChangedIsSeenAndNothingIsWritten() throws Exception {
        desks.makeAnEmptyLibrary();
        desks.keep(BEFORE, FIRST);
        desks.keep(AFTER, SECOND);
        String versions = desks.git(TwoDesks.WENNA, "log", "--all", "--format=%H %P %s");
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.openPlate(TITLE);
            program.keys("shift F9");
            program.focus("history-list");
            program.keys("ctrl D");
            program.says("compare-before-version", FIRST);
            program.says("compare-after-version", SECOND);
            readAndStep(program);
            lookInAllWays(program);
            exchange(program);
            work.close();
        }
        assertThat(desks.git(TwoDesks.WENNA, "log", "--all", "--format=%H %P %s"))
                .isEqualTo(versions);
        assertThat(desks.git(TwoDesks.WENNA, "status", "--porcelain", "--ignored"))
                .isEmpty();
        assertThat(Work.drafts(desks.home(TwoDesks.WENNA))).isEmpty();
    }

    private static void readAndStep(Program program) {
        WORDS.forEach(sentence -> program.item("compare-changes", "words=" + sentence + ","));
        assertThat(program.see("compare-changes").items()).hasSameSizeAs(WORDS);
        program.focus("compare-changes");
        isAt(program, 0);
        program.keys("N");
        isAt(program, 1);
        program.keys("N");
        isAt(program, 2);
        program.keys("P", "P");
        isAt(program, 0);
        program.keys("P");
        // before the first one comes the last
        isAt(program, 3);
        program.keys("UP");
        isAt(program, 2);
    }

    private static void isAt(Program program, int change) {
        String counter = (change + 1) + " of " + WORDS.size();
        program.until("compare-changes", "is at change " + change, seen -> seen.chosen() == change);
        program.says("compare-counter", counter);
        program.says("compare-charts", counter + ": " + WORDS.get(change));
    }

    /** The display is asked what it shows, since which chart is in front is seen only there. */
    private static void lookInAllWays(Program program) {
        program.until("compare-way-side_by_side", "is chosen", Seen::selected);
        IntBuffer beside = program.dotsLyingStill(CHARTS);
        program.keys("2");
        program.until("compare-way-overlay", "is chosen", Seen::selected);
        program.until(
                "the charts lie over each other", () -> !program.dots(CHARTS).equals(beside));
        IntBuffer over = program.dotsLyingStill(CHARTS);
        program.keys("T");
        program.until("compare-way-blink", "is chosen", Seen::selected);
        // turned by hand they do not turn by themselves
        program.says("compare-hold", "Go on");
        program.until("one chart is in front", () -> !program.dots(CHARTS).equals(over));
        IntBuffer one = program.dotsLyingStill(CHARTS);
        program.keys("T");
        program.until("the other chart is in front", () -> !program.dots(CHARTS).equals(one));
        program.keys("T");
        program.until(
                "the first chart is in front again", () -> program.dots(CHARTS).equals(one));
        program.keys("1");
        program.until("compare-way-side_by_side", "is chosen", Seen::selected);
        program.until(
                "the charts lie side by side again", () -> program.dots(CHARTS).equals(beside));
    }

    private static void exchange(Program program) {
        program.keys("S");
        program.says("compare-before-version", SECOND);
        program.says("compare-after-version", FIRST);
        program.item("compare-changes", "row 6 removed");
        program.item("compare-changes", "row 5 moved to row 3");
        program.item("compare-changes", "brick instead of chalk");
        program.item("compare-changes", "lamp yellow instead of chalk");
        assertThat(program.see("compare-changes").items()).noneMatch(words -> words.contains("chalk instead of"));
        program.keys("S");
        program.item("compare-changes", "row 3 moved to row 5");
        program.says("compare-before-version", FIRST);
    }
}
