package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** A library that somebody gave her may be set up so that saving writes over files in other places. It must not. */
class LeadingOutGitTest {
    private static final Plate KITE = Workshop.plate(1, "Kite", "kites");

    @TempDir
    private Path root;

    private Workshop shop;
    private Path library;
    private Path outside;

    @BeforeEach
    void aLibraryAndAFolderOutsideIt() throws Exception {
        shop = new Workshop(root);
        try (Library made = shop.create("lib")) {
            library = made.folder();
            Workshop.save(made, "Drawn", KITE);
        }
        outside = Files.createDirectory(root.resolve("outside"));
        Files.writeString(outside.resolve("letters.txt"), "dear Isolde");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "platekeep.noting",
                "platekeep-listing",
                "platekeep-naming",
                "platekeep-writing-0",
                "platekeep.lock",
                "platekeep.saving",
                "index",
                "index.lock",
                "config",
                "HEAD",
                "refs/heads/main",
                "refs/heads/main.lock",
                "logs/refs/heads/main"
            })
    void aFileThatIsALinkIsNotWrittenThrough(String name) throws Exception {
        Path file = library.resolve(".git").resolve(name);
        Path elsewhere = outside.resolve("letters.txt");
        if (Files.exists(file)) {
            elsewhere = Files.copy(file, outside.resolve("copied"));
            Files.delete(file);
        }
        Files.createDirectories(file.getParent());
        Files.createSymbolicLink(file, elsewhere);
        stays(() -> refused(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"objects", "objects/pack", "objects/00", "refs", "refs/heads", "refs/tags", "logs"})
    void aFolderThatIsALinkIsNotWrittenThrough(String name) throws Exception {
        Path folder = library.resolve(".git").resolve(name);
        Path elsewhere = outside.resolve("moved");
        if (Files.exists(folder)) {
            Files.move(folder, elsewhere);
        } else {
            Files.createDirectory(elsewhere);
        }
        Files.createSymbolicLink(folder, elsewhere);
        stays(() -> refused(name));
    }

    @Test
    void aNoteThatThePartsLieElsewhereIsNotFollowed() throws Exception {
        shop.git(
                root,
                "clone",
                "-q",
                "--bare",
                library.toString(),
                outside.resolve("parts").toString());
        Files.writeString(library.resolve(".git/commondir"), "../../outside/parts\n");
        stays(() -> refused("commondir"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"HEAD", "refs/heads/main", "refs/remotes/partner/main", "refs/tags/one"})
    void aNameThatStandsForOneOutsideIsNotMoved(String name) throws Exception {
        String newest = shop.git(library, "rev-parse", "refs/heads/main");
        Files.writeString(outside.resolve("letters.txt"), newest);
        Path file = library.resolve(".git").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "ref: refs/heads/../../../../outside/letters.txt\n");
        stays(() -> refused(name));
    }

    @Test
    void aNameInTheListOfNamesThatLeadsOutIsNotMoved() throws Exception {
        String newest = shop.git(library, "rev-parse", "refs/heads/main").strip();
        Files.writeString(outside.resolve("letters.txt"), newest + "\n");
        Files.delete(library.resolve(".git/refs/heads/main"));
        String out = "refs/heads/../../../../outside/letters.txt";
        Files.writeString(
                library.resolve(".git/packed-refs"),
                "# pack-refs with: peeled fully-peeled sorted \n" + newest + " " + out + "\n" + newest
                        + " refs/heads/main\n");
        Files.writeString(library.resolve(".git/HEAD"), "ref: " + out + "\n");
        stays(() -> refused("HEAD"));
    }

    @Test
    void namesThatAPartnerLetsLeadOutAreNotTakenOver() throws Exception {
        Path shared = root.resolve("shared");
        try (Library mine = shop.libraries.open(library)) {
            mine.share(shared);
            mine.send(Progress.NONE);
            String newest = shop.git(library, "rev-parse", "refs/heads/main").strip();
            Files.writeString(
                    shared.resolve("packed-refs"),
                    "# pack-refs with: peeled fully-peeled sorted \n" + newest
                            + " refs/tags/../../../../../outside/letters.txt\n");
            stays(() -> {
                try {
                    mine.look(Progress.NONE);
                } catch (LibraryException e) {
                    assertThat(e).hasMessageContaining("shared copy");
                }
            });
        }
    }

    @Test
    void aSharedCopyThatLeadsOutIsNeitherReadNorSentTo() throws Exception {
        Path shared = root.resolve("shared");
        try (Library mine = shop.libraries.open(library)) {
            mine.share(shared);
            mine.send(Progress.NONE);
            Workshop.save(mine, "Red", KITE.edit().title("Red Kite").build());
            Files.move(shared.resolve("objects"), outside.resolve("moved"));
            Files.createSymbolicLink(shared.resolve("objects"), outside.resolve("moved"));
            stays(() -> assertThatThrownBy(() -> mine.send(Progress.NONE))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("\"objects\""));
        }
    }

    private void refused(String name) {
        assertThatThrownBy(this::save)
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("\"" + name + "\"")
                .hasMessageContaining("leads to another place");
    }

    private void save() throws LibraryException {
        try (Library opened = shop.libraries.open(library)) {
            Workshop.save(opened, "Red", KITE.edit().title("Red Kite").build());
        }
    }

    private interface Deed {
        void run() throws Exception;
    }

    /** Whatever is done, the folder outside holds the same files with the same bytes afterwards. */
    private void stays(Deed deed) throws Exception {
        TreeMap<String, String> before = outside();
        deed.run();
        assertThat(outside()).isEqualTo(before);
    }

    private TreeMap<String, String> outside() throws IOException {
        TreeMap<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(outside)) {
            for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
                files.put(outside.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }
}
