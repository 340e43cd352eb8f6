package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * From an empty folder, in the window alone: a library, a plate with colours of its own, versions, the partner's first
 * copy, and the way back. Native Git (git-show(1), git-fsck(1)) tells what came of it.
 */
@Tag("packaged")
@Timeout(value = 15, unit = TimeUnit.MINUTES)
class FirstDayGuiTest {
    private static final String HUT = "plates/b/beach-hut.json";
    private static final Pattern ROW = Pattern.compile("\"[0-9a-z]{4} ([.0-9A-Za-z]+)\"");

    @TempDir
    Path room;

    private TwoDesks desks;

    @BeforeEach
    void setTheDesks() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
    }

    @Test
    void aPlateIsBegunDrawnAndSharedInTheWindowAlone() throws Exception {
        wennaMakesALibraryAndAPlate();
        wennaFindsItAgainAndSends();
        isoldeTakesACopyDrawsAndSends();
        wennaDrawsBringsInAndSends();
        isoldeBringsIn();

        List<String> cells = List.of("...........", "...aaa.....", ".bbaaabbb..", ".bbbbbbbbb.");
        assertThat(cells(TwoDesks.WENNA)).isEqualTo(cells);
        assertThat(cells(TwoDesks.ISOLDE)).isEqualTo(cells);
        assertThat(desks.git(TwoDesks.ISOLDE, "show", "HEAD:" + HUT))
                .contains("\"a\": {\"name\": \"sea blue\", \"srgb\": \"#2C5F86\", \"strands\": 4}");
        assertThat(desks.joins(TwoDesks.ISOLDE)).isEqualTo(1);
        desks.agree();
    }

    private void wennaMakesALibraryAndAPlate() throws Exception {
        try (Program program = Program.start(desks.home(TwoDesks.WENNA))) {
            Work work = new Work(program);
            program.says("gallery-nothing", "No library is open.");
            program.menu("L", "menu-new-library");
            program.fill("library-name", "Ours");
            program.fill("library-folder", desks.library(TwoDesks.WENNA).toString());
            program.fill("hand-name", TwoDesks.WENNA);
            program.fill("hand-address", "wenna@harbour.example");
            program.keys("ENTER");
            program.says("status", "\"Ours\" is open.");
            program.says("gallery-nothing", "No plates yet.");
            program.keys("ctrl N");
            program.fill("new-plate-title", "Beach Hut");
            program.fill("new-plate-pleats", "12");
            program.fill("new-plate-rows", "4");
            program.click("ask-yes");
            program.says("plate-title", "Beach Hut");
            program.says("plate-line", "12 pleats, 4 rows");
            program.keys("ctrl shift A");
            program.fill("colour-name", "sea blue");
            program.fill("colour-hex", "#2C5F86");
            program.keys("ENTER");
            program.item("colour-list", "sea blue");
            int brick = 1 + program.item("colour-list", "brick");
            work.paintByMouse(brick, 3, 1, 9);
            work.paintByMouse(brick, 2, 1, 8);
            // who she is was asked with the library and is not asked again
            work.save("The walls");
            work.close();
        }
    }

    private void wennaFindsItAgainAndSends() throws Exception {
        try (Program program = Program.start(desks.home(TwoDesks.WENNA))) {
            Work work = new Work(program);
            work.openPlate("Beach Hut");
            assertThat(cells(TwoDesks.WENNA))
                    .containsExactly("...........", "...........", ".bbbbbbbb..", ".bbbbbbbbb.");
            work.shareIn(desks.shared());
            work.send();
            work.close();
        }
    }

    private void isoldeTakesACopyDrawsAndSends() throws Exception {
        try (Program program = Program.start(desks.home(TwoDesks.ISOLDE))) {
            Work work = new Work(program);
            program.menu("L", "menu-copy-library");
            program.fill("shared-folder", desks.shared().toString());
            program.fill("library-folder", desks.library(TwoDesks.ISOLDE).toString());
            program.fill("hand-name", TwoDesks.ISOLDE);
            program.fill("hand-address", "isolde@orchard.example");
            program.keys("ENTER");
            program.says("status", "\"Ours\" is open.");
            work.openPlate("Beach Hut");
            int sea = 1 + program.item("colour-list", "sea blue");
            work.paintByMouse(sea, 2, 3, 5);
            work.save("A blue door");
            work.send();
            work.close();
        }
    }

    private void wennaDrawsBringsInAndSends() throws Exception {
        try (Program program = Program.start(desks.home(TwoDesks.WENNA))) {
            Work work = new Work(program);
            work.openPlate("Beach Hut");
            int sea = 1 + program.item("colour-list", "sea blue");
            work.paintByMouse(sea, 1, 3, 5);
            work.save("A blue gable");
            work.bringIn();
            program.says("status", "1 plate joined");
            work.send();
            work.close();
        }
    }

    private void isoldeBringsIn() throws Exception {
        try (Program program = Program.start(desks.home(TwoDesks.ISOLDE))) {
            Work work = new Work(program);
            work.bringIn();
            work.close();
        }
    }

    private List<String> cells(String who) throws Exception {
        return ROW.matcher(desks.git(who, "show", "HEAD:" + HUT))
                .results()
                .map(row -> row.group(1))
                .toList();
    }
}
