package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Plate;

class GitSetupGitTest {
    private static final Plate KITE = plate(0x20, "Kite", "kites");

    private final Workshop shop;

    GitSetupGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    @BeforeAll
    static void nativeGit() {
        assumeTrue(Workshop.hasNativeGit(), "native git is not installed");
    }

    @Test
    void setUpNativeGitAsksTheProgramToJoinAndCompareAndTakenBackItDoesNot() throws Exception {
        try (Library library = shop.create("lib")) {
            Path folder = library.folder();
            save(library, "first", KITE);
            Path calls = shop.root.resolve("calls");
            Path program = shop.root.resolve("program");
            Files.writeString(program, "#!/bin/sh\necho \"$1 $2\" >> '" + calls + "'\nexit 0\n");
            new GitSetup().on(folder, "sh '" + program + "'");
            new GitSetup().on(folder, "sh '" + program + "'");
            shop.git(folder, "checkout", "-q", "-b", "side");
            save(library, "side", KITE.edit().title("Side Kite").build());
            shop.git(folder, "checkout", "-q", "main");
            save(library, "main", KITE.edit().title("Main Kite").build());
            shop.git(folder, "merge", "-q", "side", "-m", "by native git");
            shop.git(folder, "diff", "HEAD~1", "HEAD^2");
            assertThat(calls).content().contains("join --git\n", "compare --git\n");
            String asked = Files.readString(calls);
            new GitSetup().off(folder);
            shop.git(folder, "diff", "HEAD~1", "HEAD^2");
            assertThat(calls).hasContent(asked.strip());
            assertThat(shop.git(folder, "check-attr", "merge", "--", "plates/k/kite.json"))
                    .contains("merge: unset");
        }
    }

    @Test
    void withoutTheSetUpNativeGitJoinsNoPlateAsLines() throws Exception {
        try (Library library = shop.create("lib")) {
            Path folder = library.folder();
            save(library, "first", KITE);
            shop.git(folder, "checkout", "-q", "-b", "side");
            save(library, "side", KITE.edit().themes(List.of("far", "kites")).build());
            shop.git(folder, "checkout", "-q", "main");
            save(library, "main", KITE.edit().title("Main Kite").build());
            assertThat(shop.gitRan(folder, "merge", "side").code()).isNotZero();
        }
    }

    @Test
    void whatElseStandsInTheSettingsStays() throws Exception {
        try (Library library = shop.create("lib")) {
            Path attributes = library.folder().resolve(".git/info/attributes");
            Files.createDirectories(attributes.getParent());
            Files.writeString(attributes, "*.txt diff=mine\n");
            new GitSetup().on(library.folder(), "platekeep");
            assertThat(attributes).content().startsWith("*.txt diff=mine\n").contains("merge=platekeep");
            new GitSetup().off(library.folder());
            assertThat(attributes).hasContent("*.txt diff=mine");
            assertThat(shop.git(library.folder(), "config", "--get", "user.name"))
                    .contains("Wenna Tarrow");
        }
    }

    @Test
    void aFolderWithoutALibraryIsRefused() {
        assertThatThrownBy(() -> new GitSetup().on(shop.root, "platekeep"))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("no library");
    }
}
