package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static platekeep.client.git.Workshop.id;
import static platekeep.client.git.Workshop.now;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.putAway;
import static platekeep.client.git.Workshop.reasons;
import static platekeep.client.git.Workshop.save;
import static platekeep.client.git.Workshop.titles;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.HandEdit;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.NamedVersion;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.RowIds;
import platekeep.model.text.PlateText;

class LibraryGitTest {
    private static final Plate KITE = plate(0x20, "Kite over the Pier", "kites");
    private static final Plate SNAIL = plate(0x30, "Snail on a Leaf", "snails");

    private final Workshop shop;

    LibraryGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    @Test
    void aNewLibraryHasAFirstVersionAndKnowsItsNameAndHand() throws LibraryException {
        try (Library library = shop.create("new")) {
            assertThat(library.name()).isEqualTo("Harbour and Orchard");
            assertThat(library.hand()).contains(Workshop.WENNA);
            assertThat(library.versions(10)).hasSize(1);
            assertThat(library.newest()).map(Version::reason).contains("New library Harbour and Orchard");
            assertThat(library.list(Progress.NONE)).isEmpty();
        }
    }

    @Test
    void aFolderThatHoldsSomethingIsRefusedAndLeftAsItIs() throws IOException {
        Path folder = Files.createDirectory(shop.root.resolve("full"));
        Files.writeString(folder.resolve("letter.txt"), "hello");
        assertThatThrownBy(() -> shop.create("full"))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("not empty");
        assertThat(folder).isDirectoryContaining(file -> file.endsWith("letter.txt"));
        assertThat(folder.toFile().list()).hasSize(1);
    }

    @Test
    void aSavedPlateLiesInItsDrawerAsItsCanonicalText() throws Exception {
        try (Library library = shop.create("lib")) {
            Version version = save(library, "Drawn from the photo", KITE);
            assertThat(library.folder().resolve("plates/k/kite-over-the-pier.json"))
                    .hasBinaryContent(PlateText.bytes(KITE));
            assertThat(version.inNameOf()).isEqualTo(Workshop.WENNA);
            assertThat(version.reason()).isEqualTo("Drawn from the photo");
            assertThat(now(library, KITE)).isEqualTo(KITE);
            assertThat(library.handEdits()).isEmpty();
        }
    }

    @Test
    void aVersionCanBeEnteredInAnotherHandsName() throws LibraryException {
        try (Library library = shop.create("lib")) {
            Version version = library.save(new Saving(
                    List.of(new Change.PutPlate(KITE)),
                    "As pencilled",
                    Optional.of(Workshop.ISOLDE),
                    Optional.empty()));
            assertThat(version.inNameOf()).isEqualTo(Workshop.ISOLDE);
            assertThat(version.enteredBy()).isEqualTo(Workshop.WENNA);
        }
    }

    @Test
    void theFileKeepsItsNameWhenThePlateGetsAnotherTitle() throws LibraryException {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            save(library, "second", KITE.edit().title("Red Kite").build());
            assertThat(library.plate(KITE.id())).map(Entry::path).contains("plates/k/kite-over-the-pier.json");
            assertThat(reasons(library, KITE)).containsExactly("second", "first");
        }
    }

    @Test
    void ofTwoPlatesWithOneTitleTheGreaterIdGetsDigitsWhicheverCameFirst() throws LibraryException {
        try (Library library = shop.create("lib")) {
            Plate greater = plate(0x99, "Kite over the Pier");
            save(library, "greater", greater);
            save(library, "lesser", KITE);
            assertThat(library.plate(KITE.id())).map(Entry::path).contains("plates/k/kite-over-the-pier.json");
            assertThat(library.plate(greater.id()))
                    .map(Entry::path)
                    .contains("plates/k/kite-over-the-pier-00000099.json");
            Plate third = plate(0xaa, "Kite over the Pier");
            save(library, "third", third);
            assertThat(library.plate(third.id()))
                    .map(Entry::path)
                    .contains("plates/k/kite-over-the-pier-000000aa.json");
        }
    }

    @Test
    void anOldVersionIsReadAndBroughtBackAsANewOne() throws LibraryException {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE);
            save(library, "second", KITE.edit().title("Red Kite").build());
            Plate old =
                    library.plateAt(KITE.id(), first.id()).orElseThrow().plate().orElseThrow();
            assertThat(old).isEqualTo(KITE);
            save(library, "back to the first", old);
            assertThat(now(library, KITE)).isEqualTo(KITE);
            assertThat(library.history(KITE.id())).hasSize(3);
        }
    }

    @Test
    void aVersionIsFoundByTheBeginningOfItsId() throws LibraryException {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE);
            assertThat(library.plateAt(KITE.id(), first.id().substring(0, 8))).isPresent();
            assertThatThrownBy(() -> library.plateAt(KITE.id(), "HEAD"))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("no version \"HEAD\"");
        }
    }

    @Test
    void aPlatePutAwayIsFoundAndComesBackToItsPlace() throws LibraryException {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE, SNAIL);
            Plate red = KITE.edit().title("Red Kite").build();
            Version last = save(library, "red", red);
            putAway(library, KITE);
            assertThat(titles(library)).containsExactly("Snail on a Leaf");
            assertThat(library.plate(KITE.id())).isEmpty();
            List<PlateVersion> away = library.putAway();
            assertThat(away).hasSize(1);
            assertThat(away.get(0).version()).isEqualTo(last);
            assertThat(away.get(0).entry().flatMap(Entry::plate)).contains(red);
            assertThat(library.history(KITE.id()).get(0).entry()).isEmpty();
            save(library, "wanted again", red);
            assertThat(library.plate(KITE.id())).map(Entry::path).contains("plates/k/kite-over-the-pier.json");
            assertThat(library.putAway()).isEmpty();
            assertThat(reasons(library, KITE)).containsExactly("wanted again", "Not needed", "red", "first");
        }
    }

    @Test
    void namesOfVersionsStandAtTheVersionThatTheyShow() throws LibraryException {
        try (Library library = shop.create("lib")) {
            Version first = save(library, "first", KITE);
            Version other = save(library, "another plate", SNAIL);
            save(library, "second", KITE.edit().title("Red Kite").build());
            library.nameVersion(KITE.id(), first.id(), "Spring class 2025");
            library.nameVersion(KITE.id(), other.id(), "Market day");
            library.nameVersion(KITE.id(), first.id(), "Spring class 2025");
            List<PlateVersion> history = library.history(KITE.id());
            assertThat(history.get(0).names()).isEmpty();
            assertThat(history.get(1).names()).containsExactlyInAnyOrder("Spring class 2025", "Market day");
            assertThat(library.names())
                    .containsExactlyInAnyOrder(
                            new NamedVersion(KITE.id(), first.id(), "Spring class 2025"),
                            new NamedVersion(KITE.id(), other.id(), "Market day"));
            assertThat(library.plateAt(KITE.id(), "spring class 2025").flatMap(Entry::plate))
                    .contains(KITE);
            assertThatThrownBy(() -> library.nameVersion(SNAIL.id(), first.id(), "Too early"))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("was not there");
        }
    }

    @Test
    void aSavingMadeFromAnOldStateIsRefusedWhereTheSamePlateMovedOn() throws LibraryException {
        try (Library library = shop.create("lib");
                Library otherWindow = shop.libraries.open(library.folder())) {
            Version seen = save(library, "first", KITE, SNAIL);
            save(otherWindow, "elsewhere", KITE.edit().title("Red Kite").build());
            Saving stale = new Saving(
                    List.of(new Change.PutPlate(KITE.edit().title("Blue Kite").build())),
                    "here",
                    Optional.empty(),
                    Optional.of(seen.id()));
            assertThatThrownBy(() -> library.save(stale))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("Blue Kite")
                    .hasMessageContaining("another window");
            library.save(new Saving(
                    List.of(new Change.PutPlate(SNAIL.edit().title("Old Snail").build())),
                    "another plate",
                    Optional.empty(),
                    Optional.of(seen.id())));
            assertThat(titles(otherWindow)).containsExactly("Red Kite", "Old Snail");
        }
    }

    @Test
    void manyWindowsSavingAtOnceLoseNothing() throws Exception {
        try (Library library = shop.create("lib")) {
            ExecutorService windows = Executors.newFixedThreadPool(4);
            List<Future<Version>> saved = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Plate plate = plate(0x1000 + i, "Gull " + i);
                saved.add(windows.submit(() -> {
                    try (Library window = shop.libraries.open(library.folder())) {
                        return save(window, plate.title(), plate);
                    }
                }));
            }
            for (Future<Version> version : saved) {
                version.get();
            }
            windows.shutdown();
            assertThat(titles(library)).hasSize(12);
            assertThat(library.versions(100)).hasSize(13);
        }
    }

    @Test
    void savingWhatIsThereAlreadyIsRefused() throws LibraryException {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            assertThatThrownBy(() -> save(library, "again", KITE))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("no version to save");
            assertThatThrownBy(() -> save(library, "  ", SNAIL))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("reason");
            assertThat(library.versions(10)).hasSize(2);
        }
    }

    @Test
    void aDamagedFileIsShownAsDamagedAndStopsNothingElse() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE, SNAIL);
            Files.writeString(library.folder().resolve("plates/k/kite-over-the-pier.json"), "{\"id\": \"broken\n");
            shop.git(library.folder(), "commit", "-q", "-a", "-m", "broken by another program");
            assertThat(titles(library)).containsExactly("damaged plates/k/kite-over-the-pier.json", "Snail on a Leaf");
            List<PlateVersion> history = library.history(KITE.id());
            assertThat(history).hasSize(2);
            assertThat(history.get(0).entry()).get().isInstanceOf(Entry.Damaged.class);
            save(library, "put right", KITE);
            assertThat(titles(library)).containsExactly("Kite over the Pier", "Snail on a Leaf");
        }
    }

    @Test
    void ofTwoFilesWithOneIdTheCopyIsShownAsDamaged() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            Path kite = library.folder().resolve("plates/k/kite-over-the-pier.json");
            Files.copy(kite, kite.resolveSibling("kite-over-the-pier-copy.json"));
            shop.git(library.folder(), "add", "-A");
            shop.git(library.folder(), "commit", "-q", "-m", "copied");
            List<Entry> entries = library.list(Progress.NONE);
            assertThat(entries.get(1).plate()).contains(KITE);
            assertThat(entries.get(0))
                    .isInstanceOfSatisfying(
                            Entry.Damaged.class,
                            damaged -> assertThat(damaged.problems())
                                    .singleElement()
                                    .satisfies(problem -> assertThat(problem.text())
                                            .contains("same id as plates/k/kite-over-the-pier.json")));
            assertThat(library.plate(KITE.id()).flatMap(Entry::plate)).contains(KITE);
        }
    }

    @Test
    void historyFollowsAFileThatAnotherProgramMoved() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            Files.createDirectories(library.folder().resolve("plates/p"));
            shop.git(library.folder(), "mv", "plates/k/kite-over-the-pier.json", "plates/p/pier.json");
            shop.git(library.folder(), "commit", "-q", "-m", "moved");
            save(library, "second", KITE.edit().title("Red Kite").build());
            assertThat(library.plate(KITE.id())).map(Entry::path).contains("plates/p/pier.json");
            assertThat(reasons(library, KITE)).containsExactly("second", "moved", "first");
        }
    }

    @Test
    void handEditsAreNoticedAndTakenIn() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE, SNAIL);
            Path folder = library.folder();
            Plate gull = plate(0x40, "Gull");
            String kite = Files.readString(folder.resolve("plates/k/kite-over-the-pier.json"));
            Files.writeString(
                    folder.resolve("plates/k/kite-over-the-pier.json"),
                    kite.replace("Kite over the Pier", "Kite by Hand").replace("\n  \"themes\"", "\n\n    \"themes\""));
            Files.delete(folder.resolve("plates/s/snail-on-a-leaf.json"));
            Files.createDirectories(folder.resolve("plates/g"));
            Files.write(folder.resolve("plates/g/gull.json"), PlateText.bytes(gull));
            List<HandEdit> edits = library.handEdits();
            assertThat(edits)
                    .extracting(HandEdit::path)
                    .containsExactly(
                            "plates/g/gull.json", "plates/k/kite-over-the-pier.json", "plates/s/snail-on-a-leaf.json");
            assertThatThrownBy(() ->
                            save(library, "over it", KITE.edit().title("Other").build()))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("changed outside Platekeep");
            library.takeIn(edits, "Edited in a text editor");
            assertThat(titles(library)).containsExactly("Gull", "Kite by Hand");
            assertThat(folder.resolve("plates/k/kite-over-the-pier.json"))
                    .hasBinaryContent(PlateText.bytes(
                            RowIds.given(KITE.edit().title("Kite by Hand").build())));
            assertThat(library.handEdits()).isEmpty();
        }
    }

    @Test
    void aFileDamagedByHandIsNotTakenInAndStaysAsItIs() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            Path file = library.folder().resolve("plates/k/kite-over-the-pier.json");
            Files.writeString(file, Files.readString(file).replace(".bb.", ".bb"));
            List<HandEdit> edits = library.handEdits();
            assertThatThrownBy(() -> library.takeIn(edits, "edited"))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("line");
            assertThat(library.versions(10)).hasSize(2);
            assertThat(file).content().contains(".bb\"");
        }
    }

    @Test
    void aLibraryIsFoundFromAFolderInsideIt() throws LibraryException {
        try (Library library = shop.create("lib")) {
            save(library, "first", KITE);
            try (Library same = shop.libraries.open(library.folder().resolve("plates/k"))) {
                assertThat(same.folder()).isEqualTo(library.folder());
            }
            assertThatThrownBy(() -> shop.libraries.open(shop.root))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("no library");
        }
    }

    @Test
    void aLinkInThePlaceOfAFolderIsNotWrittenThrough() throws Exception {
        try (Library library = shop.create("lib")) {
            Path outside = Files.createDirectory(shop.root.resolve("outside"));
            Files.createSymbolicLink(library.folder().resolve("plates"), outside);
            assertThatThrownBy(() -> save(library, "first", KITE))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("a link");
            assertThat(outside).isEmptyDirectory();
            assertThat(library.versions(10)).hasSize(1);
        }
    }

    @Test
    void anIdOfAPlateThatIsNotOneIsOurBug() throws LibraryException {
        try (Library library = shop.create("lib")) {
            assertThatThrownBy(() -> save(
                            library, "no", plate(1, "x").edit().id("../../up").build()))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThat(id(1)).startsWith("00000001-");
        }
    }
}
