package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.paper.picture.Shots;

/**
 * A folder of scans comes in at one go, gets its titles by keys alone and is found in the gallery. Native Git
 * (git-log(1), git-show(1), git-fsck(1)) tells what came of it.
 */
@Tag("packaged")
@Timeout(value = 15, unit = TimeUnit.MINUTES)
class PaperGuiTest {
    private static final String WENNA = TwoDesks.WENNA;

    @TempDir
    Path room;

    private TwoDesks desks;
    private Path binder;

    @BeforeEach
    void setTheDeskAndFillTheBinder() throws Exception {
        Fingers.needDisplayAndGit();
        desks = new TwoDesks(room);
        desks.makeAnEmptyLibrary();
        binder = Files.createDirectory(room.resolve("binder"));
        for (int page : List.of(1, 2, 10)) {
            Files.write(binder.resolve("page " + page + ".jpg"), Shots.telephoneJpeg(400 + page, 300, 1));
        }
        byte[] whole = Shots.telephoneJpeg(90, 60, 1);
        Files.write(binder.resolve("page 3.jpg"), Arrays.copyOf(whole, whole.length / 2));
    }

    @Test
    void scansComeInGetTheirTitlesByKeysAndAreFound() throws Exception {
        try (Program program = desks.open(WENNA)) {
            program.says("gallery-nothing", "No plates yet.");
            program.keys("ctrl shift S");
            program.fill("paper-files", binder.toString());
            program.keys("ENTER");
            program.says("paper-counter", "1 of 3");
            program.says("trouble", "\"page 3.jpg\" ends in the middle of the picture");
            program.fill("paper-title", "Crab Pot");
            program.fill("paper-themes", "crabs, harbour");
            program.keys("alt 3");
            program.fill("paper-place", "binder 3, page 8");
            program.keys("ENTER");
            program.says("paper-counter", "2 of 3");
            program.says("paper-place", "binder 3, page 9");
            // the mouse rests: the title is ready to be typed over, Enter takes what is offered and goes on
            program.focus("paper-title");
            program.fingers().type("Net Loft");
            program.says("paper-title", "Net Loft");
            program.keys("ENTER");
            program.says("paper-counter", "3 of 3");
            program.focus("paper-title");
            program.fingers().type("Mending Bench");
            program.says("paper-title", "Mending Bench");
            program.keys("ENTER");
            program.says("paper-counter", "3 not saved");
            program.keys("ctrl S");
            program.reach("paper-reason");
            program.keys("ENTER");
            program.says("status", "Saved: Facts of 3 plates.");

            program.keys("ctrl 1");
            program.says("gallery-summary", "3 plates");
            program.keys("ctrl F");
            program.fill("gallery-search", "crab");
            program.says("gallery-summary", "1 of 3 plates");
            program.item("gallery-plates", "Crab Pot");
            new Work(program).close();
        }
        whatCameOfIt();
    }

    @Test
    void filesThatAreDroppedOnThePaperScreenComeIn() throws Exception {
        List<Path> pages = List.of(binder.resolve("page 1.jpg"), binder.resolve("page 10.jpg"));
        try (Program program = desks.open(WENNA)) {
            program.says("gallery-nothing", "No plates yet.");
            program.keys("ctrl 6");
            Seen paper = program.until("paper-nothing", "shows", Seen::showing);
            Rectangle corner = new Rectangle(paper.middle().x - 100, paper.middle().y + 140, 200, 60);
            try (FileManager files = new FileManager(corner, pages)) {
                program.fingers().drag(files.files(), new Point(paper.middle().x, paper.middle().y - 60));
                program.until("paper-files", "shows", Seen::showing);
            }
            program.keys("ENTER");
            program.says("paper-counter", "1 of 2");
            new Work(program).close();
        }
        assertThat(desks.git(WENNA, "log", "-1", "--format=%s").strip()).isEqualTo("2 scans brought in");
    }

    private void whatCameOfIt() throws Exception {
        assertThat(desks.git(WENNA, "log", "--format=%s").lines().limit(2))
                .containsExactly("Facts of 3 plates", "3 scans brought in");
        assertThat(desks.git(WENNA, "show", "HEAD:plates/p/page-1.json"))
                .contains("\"title\": \"Crab Pot\"", "\"place\": \"binder 3, page 8\"", "\"toddler\"", "\"crabs\"")
                .doesNotContain("\"pleats\"");
        assertThat(desks.git(WENNA, "show", "HEAD:plates/p/page-2.json"))
                .contains("\"title\": \"Net Loft\"", "\"place\": \"binder 3, page 9\"");
        assertThat(desks.git(WENNA, "show", "HEAD:plates/p/page-10.json"))
                .contains("\"title\": \"Mending Bench\"", "\"place\": \"binder 3, page 10\"");
        List<String> scans = desks.git(WENNA, "ls-tree", "-r", "--name-only", "HEAD")
                .lines()
                .filter(path -> path.contains(".scan-"))
                .toList();
        assertThat(scans).hasSize(3);
        for (String scan : scans) {
            byte[] bytes = Files.readAllBytes(desks.library(WENNA).resolve(scan));
            assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).doesNotContain("Tarrow Quay", "GPS");
        }
        assertThat(desks.git(WENNA, "status", "--porcelain")).isEmpty();
        assertThat(desks.git(WENNA, "fsck", "--strict", "--full")).doesNotContain("error", "warning");
    }
}
