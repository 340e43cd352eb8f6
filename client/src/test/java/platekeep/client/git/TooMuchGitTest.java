package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;
import static platekeep.client.git.Workshop.titles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Arrivals;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** A shared copy that holds more than a library of people's hands ever would, put there by another program. */
class TooMuchGitTest {
    private static final Plate KITE = plate(0x20, "Kite", "kites");

    private final Workshop shop;
    private final Path shared;
    private Library wenna;
    private Path other;

    TooMuchGitTest(@TempDir Path root) {
        shop = new Workshop(root);
        shared = root.resolve("shared");
    }

    @BeforeEach
    void somebodyElseCanWriteThere() throws Exception {
        assumeTrue(Workshop.hasNativeGit(), "native Git is not on this machine");
        wenna = shop.create("wenna");
        save(wenna, "a kite", KITE);
        wenna.share(shared);
        wenna.send(Progress.NONE);
        other = shop.root.resolve("other");
        shop.git(shop.root, "clone", "-q", shared.toString(), other.toString());
    }

    @AfterEach
    void close() {
        wenna.close();
    }

    private void pushAll() throws Exception {
        shop.git(other, "add", "-A");
        shop.git(other, "commit", "-q", "-m", "by another program");
        shop.git(other, "push", "-q");
    }

    private void isRefused(String sentence) throws Exception {
        for (int i = 0; i < 2; i++) {
            assertThatThrownBy(() -> wenna.look(Progress.NONE))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining(sentence)
                    .hasMessageEndingWith("Nothing was changed.");
        }
        assertThat(titles(wenna)).containsExactly("Kite");
        assertThatThrownBy(() -> shop.libraries.copyFrom(shared, shop.root.resolve("isolde"), Workshop.ISOLDE))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining(sentence);
        assertThat(shop.root.resolve("isolde")).doesNotExist();
    }

    @Test
    void aFileOfMoreThan64MegabytesIsNotRead() throws Exception {
        Path file = other.resolve("plates/k/" + KITE.id() + ".scan-0123456789abcdef.png");
        Files.write(file, new byte[(64 << 20) + 1]);
        pushAll();
        isRefused("is larger than 64 MB, which is more than a library holds.");
    }

    @Test
    void foldersThatLieTooDeepAreNotRead() throws Exception {
        Path deep = other.resolve("plates/a/b/c/d/e/f/g/h/i/j/k/l/m/n/o/p/q/r");
        Files.createDirectories(deep);
        Files.writeString(deep.resolve("deep.json"), "{}\n");
        pushAll();
        isRefused("folders lie too deep in each other");
    }

    @Test
    void namesThatCannotBeTakenOverLeaveWhatWasBroughtIn() throws Exception {
        try (Library isolde = shop.libraries.copyFrom(shared, shop.root.resolve("isolde"), Workshop.ISOLDE)) {
            save(
                    isolde,
                    "a kite over the pier",
                    KITE.edit().title("Kite over the Pier").build());
            isolde.nameVersion(KITE.id(), isolde.newest().orElseThrow().id(), "Spring class");
            isolde.send(Progress.NONE);
        }
        String name = shop.git(shared, "for-each-ref", "--format=%(refname)", "refs/tags")
                .strip();
        // a file in the place where the name's folder would be
        Path inTheWay = wenna.folder().resolve(".git").resolve(name).getParent();
        Files.createDirectories(inTheWay.getParent());
        Files.writeString(inTheWay, "in the way\n");
        Arrivals seen = wenna.look(Progress.NONE);
        assertThatThrownBy(() -> wenna.bringIn(seen, List.of(), Progress.NONE))
                .isInstanceOf(LibraryException.class)
                .hasMessageStartingWith("Your partner's versions were brought in")
                .hasMessageNotContaining("Nothing was changed");
        assertThat(titles(wenna)).containsExactly("Kite over the Pier");
        Files.delete(inTheWay);
        wenna.send(Progress.NONE);
        assertThat(wenna.history(KITE.id()).get(0).names()).containsExactly("Spring class");
    }
}
