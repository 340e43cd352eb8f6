package platekeep.client.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.file.PlateTexts;

/**
 * Native Git driven on a library through the finished jar: merge, rebase, cherry-pick and diff. What Git hands over and
 * expects back is from its own documentation: gitattributes(5), "Defining a custom merge driver", "Defining an external
 * diff driver", "Performing text diffs of binary files"; git(1), GIT_EXTERNAL_DIFF.
 */
@Tag("packaged")
class NativeGitTest {
    private static final String PLATE = "plates/q/quay-lamp.json";
    private static final String TOP = "aa01 ...bbbbb...";
    private static final String LAMP = "aa02 ..ccccccc..";
    private static final String BASE = "aa03 .bbbbbbbbb.";

    @TempDir
    Path home;

    private Path library;
    private Shell shell;
    private String plate;
    private String trunk;

    @BeforeEach
    void makeALibraryWithOnePlate() throws Exception {
        assumeTrue(Shell.hasGit(), "native Git is not on this machine");
        shell = new Shell(home);
        library = home.resolve("patterns");
        plate = PlateTexts.LAMP;
        Files.writeString(home.resolve("new.json"), plate);
        done(shell.platekeep(
                home, "create", "patterns", "--name", "Ours", "--hand", "Wenna Tarrow <wenna@harbour.example>"));
        done(shell.platekeep(library, "save", "../new.json", "--reason", "A lamp for the quay"));
        done(shell.platekeep(library, "setup-git", "on"));
        trunk = git("symbolic-ref", "--short", "HEAD").strip();
        assertThat(library.resolve(PLATE)).hasContent(plate);
    }

    @Test
    void mergeJoinsTwoEditsOfOneRow() throws Exception {
        branchesWith(plate.replace(LAMP, "aa02 ..bbccccc.."), plate.replace(LAMP, "aa02 ..cccccbb.."));
        git("merge", "--no-edit", "other");
        assertThat(library.resolve(PLATE)).hasContent(plate.replace(LAMP, "aa02 ..bbcccbb.."));
        assertThat(git("rev-list", "--parents", "-1", "HEAD").strip().split(" "))
                .hasSize(3);
        assertThat(git("show", "HEAD:" + PLATE)).isEqualTo(plate.replace(LAMP, "aa02 ..bbcccbb.."));
    }

    @Test
    void mergeStopsAtAClashAndLeavesAPlateThatHoldsIt() throws Exception {
        branchesWith(plate.replace(LAMP, "aa02 ..bcccccc.."), plate.replace(LAMP, "aa02 ...cccccc.."));
        assertThat(shell.git(library, "merge", "--no-edit", "other").exit()).isEqualTo(1);
        assertThat(read()).contains("\"clashes\": [", LAMP).doesNotContain("<<<<<<<");
        assertThat(shell.platekeep(library, "check", PLATE).exit()).isEqualTo(1);
    }

    @Test
    void mergeOfAPlateThatBothPutThereJoinsFromNothing() throws Exception {
        String path = "plates/p/pier-lamp.json";
        String born = plate.replace("7a9a01", "7a9a02").replace("Quay Lamp", "Pier Lamp");
        git("checkout", "-q", "-b", "other");
        commit(path, born.replace("    \"lighthouses\"", "    \"lighthouses\",\n    \"piers\""));
        git("checkout", "-q", trunk);
        commit(path, born.replace("    \"lighthouses\"", "    \"lighthouses\",\n    \"seaside\""));
        git("merge", "--no-edit", "other");
        assertThat(library.resolve(path))
                .hasContent(
                        born.replace("    \"lighthouses\"", "    \"lighthouses\",\n    \"piers\",\n    \"seaside\""));
    }

    @Test
    void rebaseCarriesAnEditOverAnother() throws Exception {
        branchesWith(plate.replace(TOP, "aa01 ...bbcbb..."), plate.replace(BASE, "aa03 .bbbbcbbbb."));
        git("rebase", "other");
        assertThat(library.resolve(PLATE))
                .hasContent(plate.replace(TOP, "aa01 ...bbcbb...").replace(BASE, "aa03 .bbbbcbbbb."));
        assertThat(git("rev-list", "--parents", "-1", "HEAD").strip().split(" "))
                .hasSize(2);
    }

    @Test
    void cherryPickTakesOneEditOver() throws Exception {
        branchesWith(plate.replace(LAMP, "aa02 ..bbccccc.."), plate.replace(LAMP, "aa02 ..cccccbb.."));
        git("cherry-pick", "other");
        assertThat(library.resolve(PLATE)).hasContent(plate.replace(LAMP, "aa02 ..bbcccbb.."));
    }

    @Test
    void diffTellsTheChangeInWords() throws Exception {
        write(PLATE, plate.replace(LAMP, "aa02 ..bbccccc.."));
        Files.writeString(home.resolve("changed.json"), read());
        Files.writeString(home.resolve("before.json"), plate);
        String words =
                shell.platekeep(home, "compare", "before.json", "changed.json").text();
        assertThat(words.lines()).isNotEmpty();
        assertThat(git("diff").lines().map(String::strip))
                .containsAll(words.lines().toList());
    }

    @Test
    void theLogShowsChangedLinesOfThePlainText() throws Exception {
        commit(PLATE, plate.replace(LAMP, "aa02 ..bbccccc.."));
        assertThat(git("log", "-p", "-1").lines()).contains("-  aa02  ..ccccccc..", "+  aa02  ..bbccccc..");
    }

    @Test
    void troubleLeavesATextThatIsNoPlate() throws Exception {
        branchesWith("{\"format\": \"plate 7\"}\n", plate.replace(LAMP, "aa02 ..cccccbb.."));
        assertThat(shell.git(library, "merge", "--no-edit", "other").exit()).isNotZero();
        assertThat(read()).startsWith("This is no plate").contains(PLATE);
        assertThat(git("ls-files", "--unmerged")).contains(PLATE);
    }

    @Test
    void withoutTheSetUpNoToolJoinsPlatesAsLines() throws Exception {
        done(shell.platekeep(library, "setup-git", "off"));
        branchesWith(plate.replace(TOP, "aa01 ...bbcbb..."), plate.replace(BASE, "aa03 .bbbbcbbbb."));
        assertThat(shell.git(library, "merge", "--no-edit", "other").exit()).isEqualTo(1);
        assertThat(library.resolve(PLATE)).hasContent(plate.replace(TOP, "aa01 ...bbcbb..."));
    }

    @Test
    void takingTheSetUpBackLeavesNoTrace() throws Exception {
        String on = git("config", "--list");
        done(shell.platekeep(library, "setup-git", "off"));
        String off = git("config", "--list");
        assertThat(on).containsIgnoringCase("platekeep.jar");
        assertThat(off).doesNotContainIgnoringCase("platekeep.jar");
        assertThat(git("check-attr", "merge", "diff", "--", PLATE))
                .contains("merge: unset")
                .contains("diff: unspecified");
    }

    /** Two branches from one plate: an edit of it where we are, another on the branch {@code other}. */
    private void branchesWith(String mine, String theirs) throws Exception {
        git("checkout", "-q", "-b", "other");
        commit(PLATE, theirs);
        git("checkout", "-q", trunk);
        commit(PLATE, mine);
    }

    private void commit(String path, String text) throws Exception {
        write(path, text);
        git("add", "-A");
        git("commit", "-q", "-m", "Edit");
    }

    private void write(String path, String text) throws IOException {
        Files.createDirectories(library.resolve(path).getParent());
        Files.writeString(library.resolve(path), text);
    }

    private String read() throws IOException {
        return Files.readString(library.resolve(PLATE));
    }

    private String git(String... words) throws Exception {
        return done(shell.git(library, words));
    }

    private static String done(Shell.Done done) {
        assertThat(done.exit()).as(done.text()).isZero();
        return done.text();
    }
}
