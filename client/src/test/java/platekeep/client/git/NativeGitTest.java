package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.putAway;
import static platekeep.client.git.Workshop.save;
import static platekeep.client.git.Workshop.titles;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** What the client says about versions, against what native Git says about the same folder. */
class NativeGitTest {
    private static final Plate KITE = plate(0x20, "Kite", "kites");
    private static final Plate SNAIL = plate(0x30, "Snail", "snails");

    private final Workshop shop;

    NativeGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    @BeforeAll
    static void nativeGit() {
        assumeTrue(Workshop.hasNativeGit(), "native git is not installed");
    }

    @Test
    void nativeGitFindsNothingWrongAndNothingChanged() throws Exception {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE, SNAIL);
            library.nameVersion(KITE.id(), first.id(), "Spring class");
            putAway(library, SNAIL);
            assertThat(shop.git(library.folder(), "fsck", "--strict", "--full")).doesNotContain("error", "warning");
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEmpty();
        }
    }

    @Test
    void nativeLogTellsTheSameVersionsHandsTimesAndReasons() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "Sail recoloured: brick reads better", KITE);
            save(library, "second \u2013 mit \u00dcmlaut\n\nand more lines", SNAIL);
            List<String> ours = library.versions(10).stream()
                    .map(v -> String.join(
                            "|",
                            v.id(),
                            v.inNameOf().name(),
                            v.inNameOf().address(),
                            v.on().toOffsetDateTime().toString().replace("+01:00", ":00+01:00"),
                            v.reason().lines().findFirst().orElseThrow()))
                    .toList();
            assertThat(shop.git(library.folder(), "log", "--format=%H|%an|%ae|%aI|%s")
                            .lines())
                    .containsExactlyElementsOf(ours);
        }
    }

    @Test
    void nativeShowGivesThePlatesBytes() throws Exception {
        try (Library library = shop.create("lib")) {
            Version version = save(library, "first", KITE);
            assertThat(shop.git(library.folder(), "show", version.id() + ":plates/k/kite.json"))
                    .isEqualTo(new String(PlateText.bytes(KITE), StandardCharsets.UTF_8));
        }
    }

    @Test
    void aNameOfAVersionIsAnAnnotatedTagWithTheNameAndTheHand() throws Exception {
        try (Library library = shop.create("lib")) {
            Version version = save(library, "first", KITE);
            library.nameVersion(KITE.id(), version.id(), "Spring class 2025");
            String tag = KITE.id() + "/spring-class-2025-" + version.id().substring(0, 8);
            assertThat(shop.git(library.folder(), "tag", "-l").strip()).isEqualTo(tag);
            assertThat(shop.git(library.folder(), "cat-file", "-p", "refs/tags/" + tag))
                    .contains("object " + version.id(), "tagger Wenna Tarrow <wenna@workshop.example>")
                    .endsWith("\n\nSpring class 2025\n");
        }
    }

    @Test
    void platesAreNeverJoinedAsLinesAndPicturesAreBinaryByDefault() throws Exception {
        try (Library library = shop.create("lib")) {
            assertThat(shop.git(
                                    library.folder(),
                                    "check-attr",
                                    "merge",
                                    "eol",
                                    "text",
                                    "--",
                                    "plates/k/kite.json",
                                    "series/x.json",
                                    "plates/k/a.scan-0.png")
                            .lines())
                    .contains(
                            "plates/k/kite.json: merge: unset",
                            "plates/k/kite.json: eol: lf",
                            "series/x.json: merge: unset",
                            "plates/k/a.scan-0.png: merge: unset",
                            "plates/k/a.scan-0.png: text: unset");
        }
    }

    @Test
    void settingsHooksAndFiltersOfAFolderAreNotRun() throws Exception {
        try (Library library = shop.create("lib")) {
            Path folder = library.folder();
            Path ran = shop.root.resolve("ran");
            for (String hook : List.of(
                    "pre-commit",
                    "commit-msg",
                    "post-commit",
                    "reference-transaction",
                    "pre-push",
                    "post-checkout",
                    "post-merge",
                    "post-index-change")) {
                Path file = folder.resolve(".git/hooks").resolve(hook);
                Files.createDirectories(file.getParent());
                Files.writeString(file, "#!/bin/sh\necho " + hook + " >> '" + ran + "'\n");
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
            }
            shop.git(folder, "config", "filter.evil.clean", "echo clean >> '" + ran + "'");
            shop.git(folder, "config", "filter.evil.smudge", "echo smudge >> '" + ran + "'");
            shop.git(folder, "config", "core.fsmonitor", "echo fsmonitor >> '" + ran + "'");
            Files.createDirectories(folder.resolve(".git/info"));
            Files.writeString(folder.resolve(".git/info/attributes"), "*.json filter=evil\n");
            save(library, "first", KITE);
            library.share(shop.root.resolve("shared"));
            library.send(Progress.NONE);
            library.look(Progress.NONE);
            Files.writeString(folder.resolve("plates/k/kite.json"), "x");
            library.handEdits();
            assertThat(ran).doesNotExist();
        }
    }

    @Test
    void aWorkTreeThatTheSettingsNameElsewhereIsNotWrittenTo() throws Exception {
        Path outside = Files.createDirectory(shop.root.resolve("outside"));
        try (Library library = shop.create("lib")) {
            shop.git(library.folder(), "config", "core.worktree", outside.toString());
            save(library, "first", KITE);
            assertThat(outside).isEmptyDirectory();
            assertThat(library.folder().resolve("plates/k/kite.json")).exists();
        }
    }

    @Test
    void aVersionSavedByNativeGitIsSeenAtOnce() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            Path file = library.folder().resolve("plates/s/snail.json");
            Files.createDirectories(file.getParent());
            Files.write(file, PlateText.bytes(SNAIL));
            shop.git(library.folder(), "add", "-A");
            shop.git(library.folder(), "commit", "-q", "-m", "by another program");
            assertThat(titles(library)).containsExactly("Kite", "Snail");
            assertThat(library.newest()).map(Version::reason).contains("by another program");
            assertThat(library.handEdits()).isEmpty();
        }
    }

    @Test
    void whatIsPreparedInNativeGitForOtherFilesStaysPrepared() throws Exception {
        try (Library library = shop.create("lib")) {
            Files.writeString(library.folder().resolve("notes.txt"), "mine\n");
            shop.git(library.folder(), "add", "notes.txt");
            save(library, "first", KITE);
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEqualTo("A  notes.txt\n");
        }
    }

    @Test
    void whileAnotherProgramWritesInTheFolderSavingIsRefusedAndNothingChanges() throws Exception {
        try (Library library = shop.create("lib")) {
            Version before = library.newest().orElseThrow();
            Path lock = Files.createFile(library.folder().resolve(".git/index.lock"));
            assertThatThrownBy(() -> save(library, "first", KITE))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("another program is writing");
            assertThat(library.newest()).contains(before);
            assertThat(library.folder().resolve("plates")).doesNotExist();
            assertThat(lock).exists();
        }
    }

    @Test
    void whatAKilledProgramLeftBehindIsFinishedByTheNextSaving() throws Exception {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE);
            Version second =
                    save(library, "second", KITE.edit().title("Red Kite").build());
            Path git = library.folder().resolve(".git");
            Path file = library.folder().resolve("plates/k/kite.json");
            Files.write(file, PlateText.bytes(KITE));
            Files.writeString(git.resolve("platekeep.saving"), first.id() + " " + second.id() + "\n");
            FileTime killed = FileTime.from(Instant.now().minusSeconds(60));
            for (String lock : List.of("index.lock", "refs/heads/main.lock")) {
                Files.setLastModifiedTime(Files.createFile(git.resolve(lock)), killed);
            }
            Files.setLastModifiedTime(git.resolve("platekeep.saving"), killed);
            save(library, "third", SNAIL);
            assertThat(file)
                    .hasBinaryContent(
                            PlateText.bytes(KITE.edit().title("Red Kite").build()));
            assertThat(git.resolve("platekeep.saving")).doesNotExist();
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEmpty();
        }
    }

    @Test
    void aLockOlderThanTheKilledProgramsNoteIsNotTouched() throws Exception {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE);
            Path git = library.folder().resolve(".git");
            Files.writeString(git.resolve("platekeep.saving"), "none " + first.id() + "\n");
            Path lock = Files.createFile(git.resolve("index.lock"));
            Files.setLastModifiedTime(lock, FileTime.from(Instant.now().minusSeconds(600)));
            assertThatThrownBy(() -> save(library, "second", SNAIL)).isInstanceOf(LibraryException.class);
            assertThat(lock).exists();
        }
    }

    @Test
    void aListOfFilesThatCannotBeReadIsMadeAnew() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            Files.writeString(library.folder().resolve(".git/index"), "");
            save(library, "second", SNAIL);
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEmpty();
        }
    }

    @Test
    void theSameChangesAtTheSameTimesMakeTheSameVersionIds(@TempDir Path other) throws Exception {
        try (Library one = shop.create("lib");
                Library two = new Workshop(other).create("elsewhere")) {
            save(one, "first", KITE);
            save(two, "first", KITE);
            assertThat(two.newest()).isEqualTo(one.newest());
        }
    }
}
