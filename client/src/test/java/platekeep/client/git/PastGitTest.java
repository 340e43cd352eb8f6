package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Library;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** Everything that plates ever said, against what native Git finds in the same library. */
class PastGitTest {
    @TempDir
    private Path root;

    @Test
    void everyTextOfEveryVersionIsListedOnceWithTheNewestVersionThatGaveIt() throws Exception {
        assumeTrue(Workshop.hasNativeGit());
        Workshop workshop = new Workshop(root);
        Plate kite = Workshop.plate(1, "Kite", "kites");
        Plate boat = Workshop.plate(2, "Boat", "boats");
        try (Library library = workshop.create("workshop")) {
            Workshop.save(library, "Both drawn", kite, boat);
            Workshop.save(library, "Renamed", kite.edit().title("Red Kite").build());
            String back = Workshop.save(library, "As it was", kite).id();
            Workshop.putAway(library, boat);
            List<PastPlate> past = library.past();
            Set<String> inGit = workshop.git(library.folder(), "rev-list", "--objects", "--all", "--", "plates")
                    .lines()
                    .filter(line -> line.endsWith(".json"))
                    .map(line -> line.substring(0, 40))
                    .collect(Collectors.toSet());
            assertThat(past).extracting(PastPlate::content).containsExactlyInAnyOrderElementsOf(inGit);
            assertThat(past)
                    .filteredOn(PastPlate::isNow)
                    .hasSize(1)
                    .allMatch(p -> p.versionId().equals(back));
            List<String> titles = new ArrayList<>();
            library.readPast(
                    past,
                    Progress.NONE,
                    (which, entry) -> titles.add(entry.plate().orElseThrow().title()));
            assertThat(titles).containsExactlyInAnyOrder("Kite", "Red Kite", "Boat");
        }
    }

    @Test
    void aNewLibraryHasNoPast() throws Exception {
        try (Library library = new Workshop(root).create("workshop")) {
            assertThat(library.past()).isEmpty();
        }
    }
}
