package platekeep.client.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** A library made by a seed is a good one: for the client, and for native Git, which knows nothing of plates. */
class ManyPlatesTest {
    private static final TwentyYears.Size SMALL = new TwentyYears.Size(120, 260, 7);

    @TempDir
    static Path root;

    private static String newest;

    @BeforeAll
    static void made() throws Exception {
        assumeTrue(NativeGit.isThere(), "native git is not installed");
        newest = ManyPlates.make(root.resolve("lib"), SMALL);
    }

    @Test
    void theSameSeedMakesTheSameVersionsAndAnotherSeedOthers() throws Exception {
        assertThat(ManyPlates.make(root.resolve("again"), SMALL)).isEqualTo(newest);
        assertThat(ManyPlates.make(root.resolve("other"), new TwentyYears.Size(120, 260, 8)))
                .isNotEqualTo(newest);
    }

    @Test
    void nativeGitFindsNothingWrongAndCountsWhatWasAskedFor() throws Exception {
        NativeGit git = new NativeGit(root.resolve("lib"));
        assertThat(git.says("fsck", "--strict", "--full")).isEmpty();
        assertThat(git.says("status", "--porcelain")).isEmpty();
        assertThat(git.says("rev-list", "--count", "HEAD").strip()).isEqualTo("260");
        assertThat(git.says("rev-list", "--merges", "HEAD")).isNotBlank();
        assertThat(git.says("tag")).isNotBlank();
        assertThat(git.says("ls-files", "plates").lines()).hasSize(120);
        assertThat(git.says("log", "--format=%an").lines().distinct())
                .containsExactlyInAnyOrder("Wenna Tarrow", "Isolde Marsh");
        Set<String> years = new HashSet<>(
                git.says("log", "--format=%ad", "--date=format:%Y").lines().toList());
        assertThat(years).hasSizeBetween(19, 21);
    }

    @Test
    void theClientReadsAllOfIt() throws Exception {
        Cache cache = new Cache(root.resolve("cache"));
        try (Library library = new GitLibraries(Clock.systemUTC(), cache, Runnable::run).open(root.resolve("lib"))) {
            List<Plate> plates = library.list(Progress.NONE).stream()
                    .map(Entry::plate)
                    .map(plate -> plate.orElseThrow())
                    .toList();
            assertThat(plates).hasSize(120);
            assertThat(plates.stream().map(Plate::id).distinct()).hasSize(120);
            assertThat(plates.stream().map(Plate::positions).distinct()).hasSizeGreaterThan(20);
            assertThat(plates.stream().flatMap(plate -> plate.themes().stream()).distinct())
                    .hasSizeGreaterThan(30);
            assertThat(library.series()).isNotEmpty();
            assertThat(library.putAway()).isNotEmpty();
            assertThat(library.versions(1000)).hasSize(260).anyMatch(Version::isJoin);
            assertThat(library.handEdits()).isEmpty();
        }
    }

    /** Native {@code git log --raw} is asked for every version but joins, whose part in a history is a rule of our own. */
    @Test
    void theIndexOfVersionsTellsWhatNativeGitTells() throws Exception {
        NativeGit git = new NativeGit(root.resolve("lib"));
        Set<String> theirs = new HashSet<>();
        String version = "";
        for (String line : git.says("log", "--no-merges", "--raw", "--no-abbrev", "--no-renames", "--format=%H")
                .split("\n")) {
            if (line.startsWith(":") && line.contains("\tplates/")) {
                theirs.add(version + " " + line.split(" ")[3]);
            } else if (!line.isBlank() && !line.startsWith(":")) {
                version = line;
            }
        }
        Cache cache = new Cache(root.resolve("cache-of-index"));
        Set<String> ours = new HashSet<>();
        try (Library library = new GitLibraries(Clock.systemUTC(), cache, Runnable::run).open(root.resolve("lib"))) {
            Set<String> ids = new HashSet<>();
            library.past().forEach(past -> ids.add(past.plateId()));
            for (String id : ids) {
                for (PlateVersion step : library.history(id)) {
                    if (!step.version().isJoin()) {
                        String content = step.entry().map(Entry::content).orElse("0".repeat(40));
                        ours.add(step.version().id() + " " + content);
                    }
                }
            }
        }
        assertThat(ours).isEqualTo(theirs);
    }
}
