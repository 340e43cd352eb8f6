package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Changed;
import platekeep.client.library.Library;
import platekeep.client.library.PastPlate;
import platekeep.client.library.Saving;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

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
    void whatAVersionChangedIsTheFilesThatGitSaysItChanged() throws Exception {
        assumeTrue(Workshop.hasNativeGit());
        Workshop workshop = new Workshop(root);
        Plate kite = Workshop.plate(1, "Kite", "kites");
        Plate boat = Workshop.plate(2, "Boat", "boats");
        Plate gull = Workshop.plate(3, "Gull", "gulls");
        try (Library library = workshop.create("workshop")) {
            Workshop.save(library, "All drawn", kite, boat);
            Plate tagged = kite.edit().themes(List.of("kites", "summer")).build();
            LibraryFacts facts = library.facts();
            LibraryFacts listed = facts.withThemes(Map.of("summer", List.of("sun")));
            String version = library.save(new Saving(
                            List.of(
                                    new Change.PutPlate(tagged),
                                    new Change.PutPlate(gull),
                                    new Change.PutAway(boat.id()),
                                    new Change.PutFacts(listed)),
                            "Tagged",
                            Optional.empty(),
                            Optional.empty()))
                    .id();
            Workshop.save(library, "Renamed", tagged.edit().title("Red Kite").build());

            Changed changed = library.changed(version, Integer.MAX_VALUE);

            assertThat(changed.plates()).containsExactly(new Changed.Pair(kite, tagged));
            assertThat(changed.before()).contains(facts);
            assertThat(changed.after()).contains(listed);
            long inGit = workshop.git(
                            library.folder(),
                            "diff",
                            "--no-renames",
                            "--name-only",
                            version + "^",
                            version,
                            "--",
                            "plates")
                    .lines()
                    .count();
            assertThat(changed.plates().size() + changed.others()).isEqualTo((int) inGit);
            assertThat(library.changed(version, 1).plates().size()
                            + library.changed(version, 1).others())
                    .isEqualTo(1);
        }
    }

    @Test
    void whatAVersionChangedIsTheSameWhetherFewPlatesAreAskedForOrMany() throws Exception {
        Workshop workshop = new Workshop(root);
        List<Plate> drawn = new ArrayList<>();
        List<Plate> renamed = new ArrayList<>();
        List<Plate> tagged = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            Plate plate = Workshop.plate(i, "Kite " + i, "kites");
            drawn.add(plate);
            renamed.add(plate.edit().title("Red Kite " + i).build());
            tagged.add(renamed.get(i - 1).edit().themes(List.of("summer")).build());
        }
        try (Library library = workshop.create("workshop")) {
            Workshop.save(library, "Drawn", drawn.toArray(Plate[]::new));
            Workshop.save(library, "Renamed", renamed.subList(0, 9).toArray(Plate[]::new));
            String version = Workshop.save(library, "Tagged", tagged.toArray(Plate[]::new))
                    .id();
            Workshop.save(library, "As before", drawn.toArray(Plate[]::new));

            List<Changed.Pair> all = library.changed(version, Integer.MAX_VALUE).plates();

            assertThat(all).hasSize(12);
            for (int i = 0; i < 12; i++) {
                assertThat(all.get(i).before()).isEqualTo(i < 9 ? renamed.get(i) : drawn.get(i));
                assertThat(all.get(i).after()).isEqualTo(tagged.get(i));
            }
            for (int most = 1; most < 12; most++) {
                assertThat(library.changed(version, most).plates()).isEqualTo(all.subList(0, most));
            }
        }
    }

    @Test
    void aNewLibraryHasNoPast() throws Exception {
        try (Library library = new Workshop(root).create("workshop")) {
            assertThat(library.past()).isEmpty();
        }
    }
}
