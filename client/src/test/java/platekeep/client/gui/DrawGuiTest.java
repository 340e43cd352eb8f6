package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A figure is drawn, mirrored, checked and saved in the window, and git-show(1) tells what was saved. The plate is typed
 * by hand from the contract.
 *
 * <p>Mirrored left to right a stitch stays up or down. Neighbours in a row alternate (common practice, no source), so the
 * two ends of a row of an even number of cables differ: of four over pleats 3 to 7 that start down, the last is up. In
 * the mirror the first is up and the last is down: up and down would come out swapped with the start left where it was.
 */
@Tag("packaged")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class DrawGuiTest {
    private static final String TITLE = "Tide Gate";
    private static final String GATE = "plates/t/tide-gate.json";
    private static final String SILL = """
            {
              "format": "plate 1",
              "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a02",
              "title": "Tide Gate",
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
              "pleats": {"from": 1, "to": 14},
              "starts": [
                {"row": "aa04", "pleat": 3, "cable": "down"}
              ],
              "rows": [
                "aa01 .............",
                "aa02 .............",
                "aa03 .............",
                "aa04 ..bbbb......."
              ]
            }
            """;
    private static final String DRAWN = SILL.replace(
                    "\"pleat\": 3, \"cable\": \"down\"", "\"pleat\": 6, \"cable\": \"down\"")
            .replace("aa02 .............", "new1 ....yy.......\",\n    \"aa02 ....cc.......")
            .replace("aa03 .............", "aa03 ...ccc.......")
            .replace("aa04 ..bbbb.......", "aa04 ..yyyy.......");

    private static final int CHALK = 2;
    private static final int YELLOW = 3;

    @TempDir
    Path room;

    @BeforeEach
    void needADisplay() {
        Fingers.needDisplayAndGit();
    }

    @Test
    void aFigureIsDrawnMirroredCheckedAndSaved() throws Exception {
        TwoDesks desks = new TwoDesks(room);
        desks.makeWennasLibrary();
        desks.keep(SILL, "The sill of the gate");
        try (Program program = desks.open(TwoDesks.WENNA)) {
            Work work = new Work(program);
            work.openPlate(TITLE);
            drawTheFigure(program, work);
            mirrorIt(program, work);
            insertARow(program, work);
            followAFinding(program, work);
            finishTheTop(program, work);
            save(program);
            findItAgain(program);
            work.close();
        }
        String saved = desks.git(TwoDesks.WENNA, "show", "HEAD:" + GATE)
                // the id of a row that was put in is made at random
                .replaceFirst("\"[0-9a-z]{4} (\\.{4}yy\\.{7})\"", "\"new1 $1\"");
        assertThat(saved).isEqualTo(DRAWN);
        assertThat(desks.git(TwoDesks.WENNA, "status", "--porcelain")).isEmpty();
    }

    private static void drawTheFigure(Program program, Work work) {
        work.take("R", "tool-run", CHALK);
        program.drag(program.spot(2, 2), program.spot(2, 4));
        work.isDraft();
        work.walk(1, 2);
        program.keys("SPACE", "RIGHT", "SPACE");
        work.take("F", "tool-fill", YELLOW);
        work.walk(3, 3);
        program.keys("SPACE");
        work.walk(3, 2);
        program.says("chart", "row 1, pleats 3 and 4: down cable, lamp yellow");
    }

    private static void mirrorIt(Program program, Work work) {
        program.keys("U");
        program.until("tool-figure", "is in hand", Seen::selected);
        program.fingers().click(program.spot(2, 3));
        program.says("status", "Chosen: 9 cables, rows 1 to 3, pleats 3 to 7");
        program.keys("ctrl M");
        work.walk(3, 2);
        program.says("chart", "row 1, pleats 3 and 4: up cable, lamp yellow");
        program.keys("ctrl Z");
        program.says("status", "Taken back: Mirror left to right: 9 cables");
        work.walk(3, 2);
        program.says("chart", "row 1, pleats 3 and 4: down cable, lamp yellow");
        program.keys("ctrl shift Z");
        program.says("status", "Done again: Mirror left to right: 9 cables");
        work.walk(3, 5);
        program.says("chart", "row 1, pleats 6 and 7: down cable, lamp yellow");
    }

    private static void insertARow(Program program, Work work) {
        work.walk(1, 4);
        program.keys("ctrl I");
        program.says("plate-line", "14 pleats, 5 rows");
    }

    /** A cable all alone is found by the check; a click on the finding brings the cursor there, and Delete takes it out. */
    private static void followAFinding(Program program, Work work) {
        work.paintByKeys(CHALK, 1, 10);
        work.walk(4, 0);
        program.says("chart", "row 1, pleats 1 and 2: no cable");
        program.keys("F9");
        program.choose("check-list", "rule=lone-cable, row=Optional[4], pleat=Optional[11]");
        program.keys("F6");
        program.focus("chart");
        program.keys("DELETE");
        program.until(
                "check-list",
                "has no lone cable",
                seen -> seen.showing() && seen.items().stream().noneMatch(item -> item.contains("lone-cable")));
    }

    private static void finishTheTop(Program program, Work work) {
        program.keys("F7");
        program.until("colour-list", "shows", Seen::showing);
        program.keys("F6");
        work.take("R", "tool-run", YELLOW);
        program.drag(program.spot(1, 4), program.spot(1, 5));
        work.walk(1, 5);
        program.says("chart", "row 4, pleats 6 and 7: up cable, lamp yellow");
    }

    private static void save(Program program) {
        program.keys("ctrl S");
        program.until("save-reason", "proposes a reason", seen -> !seen.text().isBlank());
        program.fill("save-reason", "A gate that hangs at the right");
        program.click("ask-yes");
        program.says("status", "Saved: A gate that hangs at the right");
    }

    private static void findItAgain(Program program) {
        program.keys("ctrl 1");
        program.item("gallery-plates", TwoDesks.TITLE);
        program.fill("gallery-search", "gate");
        program.until(
                "gallery-plates",
                "holds the gate alone",
                seen -> seen.items().size() == 1 && seen.items().get(0).contains("title=" + TITLE));
    }
}
