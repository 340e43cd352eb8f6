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
 * Plates are found with a slip of typing, tagged together, narrowed down by the new tag and found again by a search that
 * was kept, by keys; git-show(1) tells that tagging was one version of both plates.
 */
@Tag("packaged")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class GalleryGuiTest {
    private static final String PLATE = """
            {
              "format": "plate 1",
              "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9b0%d",
              "title": "%s",
              "themes": [
                "%s"
              ],
              "ages": [],
              "designers": [],
              "notes": [],
              "colours": {
                "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4}
              },
              "pleats": {"from": 1, "to": 6},
              "rows": [
                "aa01 .bbb."
              ]
            }
            """;

    @TempDir
    Path room;

    @BeforeEach
    void needADisplay() {
        Fingers.needDisplayAndGit();
    }

    @Test
    void platesAreFoundTaggedNarrowedDownAndFoundAgainByKeys() throws Exception {
        TwoDesks desks = new TwoDesks(room);
        desks.makeAnEmptyLibrary();
        desks.keep(PLATE.formatted(1, "Row Boat", "boats"), "Drawn");
        desks.keep(PLATE.formatted(2, "Sail Boat", "boats"), "Drawn");
        desks.keep(PLATE.formatted(3, "Fox", "foxes"), "Drawn");
        try (Program program = desks.open(TwoDesks.WENNA)) {
            shows(program, 3);
            find(program);
            tag(program);
            narrow(program);
            keepTheSearch(program);
            new Work(program).close();
        }
        assertThat(desks.git(TwoDesks.WENNA, "show", "--format=%s", "--name-only", "HEAD"))
                .contains("Tagged summer", "plates/r/row-boat.json", "plates/s/sail-boat.json")
                .doesNotContain("fox");
    }

    private static void shows(Program program, int plates) {
        program.until("gallery-plates", "holds " + plates, seen -> seen.items().size() == plates);
    }

    private static void find(Program program) {
        program.keys("ctrl F");
        program.focus("gallery-search");
        program.fingers().type("baot");
        shows(program, 2);
        program.says("gallery-hint", "No plate says \"baot\"");
        program.keys("ENTER");
        program.focus("gallery-plates");
    }

    private static void tag(Program program) {
        program.keys("ctrl A", "ctrl T");
        program.until("tag-theme-more", "shows", Seen::showing);
        program.fill("tag-theme-more", "summer");
        program.keys("ENTER");
        program.says("status", "Saved: Tagged summer (2 plates).");
    }

    private static void narrow(Program program) {
        program.keys("ctrl shift F");
        shows(program, 3);
        program.keys("ctrl G");
        program.focus("narrow-pick");
        program.fingers().type("summ");
        program.until("narrow-THEME-summer", "shows", Seen::showing);
        program.keys("TAB", "TAB");
        program.focus("narrow-THEME-summer");
        program.keys("SPACE");
        shows(program, 2);
        program.until("chip-THEME-summer", "shows", Seen::showing);
    }

    private static void keepTheSearch(Program program) {
        program.keys("ctrl K");
        program.fill("search-name", "Summer boats");
        program.keys("ENTER");
        program.until("search-name", "is gone", seen -> !seen.showing());
        program.keys("ctrl shift F");
        shows(program, 3);
        program.menu("S", "menu-search-1");
        shows(program, 2);
    }
}
