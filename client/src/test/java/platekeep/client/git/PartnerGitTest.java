package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static platekeep.client.git.Workshop.now;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.putAway;
import static platekeep.client.git.Workshop.reasons;
import static platekeep.client.git.Workshop.save;
import static platekeep.client.git.Workshop.titles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

class PartnerGitTest {
    private static final Plate KITE = plate(0x20, "Kite", "kites");
    private static final Plate SNAIL = plate(0x30, "Snail", "snails");
    private static final Plate GULL = plate(0x40, "Gull", "birds");

    private final Workshop shop;
    private Library wenna;
    private Library isolde;

    PartnerGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    @BeforeEach
    void twoLibrariesWithThreePlates() throws LibraryException {
        wenna = shop.create("wenna");
        save(wenna, "three plates", KITE, SNAIL, GULL);
        wenna.share(shop.root.resolve("shared"));
        wenna.send(Progress.NONE);
        isolde = shop.libraries.copyFrom(shop.root.resolve("shared"), shop.root.resolve("isolde"), Workshop.ISOLDE);
    }

    @AfterEach
    void close() {
        wenna.close();
        isolde.close();
    }

    private static BroughtIn bringIn(Library library) throws LibraryException {
        return library.bringIn(library.look(Progress.NONE), List.of(), Progress.NONE);
    }

    /** One round: this one brings in and sends, the other one takes it over. */
    private BroughtIn exchange(Library first, Library second) throws LibraryException {
        first.send(Progress.NONE);
        BroughtIn result = bringIn(second);
        second.send(Progress.NONE);
        bringIn(first);
        return result;
    }

    private String tree(Library library) throws Exception {
        return shop.git(library.folder(), "rev-parse", "HEAD^{tree}").strip();
    }

    private void agree() throws Exception {
        assertThat(tree(wenna)).isEqualTo(tree(isolde));
        for (Library library : List.of(wenna, isolde)) {
            assertThat(shop.git(library.folder(), "fsck", "--strict")).doesNotContain("error", "warning");
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEmpty();
            assertThat(library.handEdits()).isEmpty();
        }
    }

    @Test
    void aFirstCopyHoldsTheSamePlatesAndVersions() throws Exception {
        assertThat(titles(isolde)).containsExactly("Gull", "Kite", "Snail");
        assertThat(isolde.newest()).isEqualTo(wenna.newest());
        assertThat(isolde.hand()).contains(Workshop.ISOLDE);
        assertThat(isolde.name()).isEqualTo(wenna.name());
        agree();
    }

    @Test
    void lookingTellsWhatCameAndWhatWaitsAndChangesNothing() throws LibraryException {
        Version before = isolde.newest().orElseThrow();
        Plate red = KITE.edit().title("Red Kite").build();
        save(wenna, "red", red);
        wenna.send(Progress.NONE);
        save(isolde, "bigger", SNAIL.edit().title("Big Snail").build());
        Arrivals arrivals = isolde.look(Progress.NONE);
        assertThat(arrivals.incoming()).extracting(Version::reason).containsExactly("red");
        assertThat(arrivals.waiting()).extracting(Version::reason).containsExactly("bigger");
        assertThat(arrivals.plates()).singleElement().satisfies(arrival -> {
            assertThat(arrival.base()).contains(KITE);
            assertThat(arrival.mine()).contains(KITE);
            assertThat(arrival.theirs()).contains(red);
            assertThat(arrival.bothChanged()).isFalse();
            assertThat(arrival.changedHere()).isEmpty();
            assertThat(arrival.changedThere().map(Version::reason)).contains("red");
        });
        assertThat(isolde.newest().orElseThrow().parents()).containsExactly(before.id());
    }

    @Test
    void whereNothingWasChangedHereBringingInMovesOnToThePartnersVersion() throws Exception {
        Version red = save(wenna, "red", KITE.edit().title("Red Kite").build());
        wenna.send(Progress.NONE);
        BroughtIn result = bringIn(isolde);
        assertThat(result.newest()).isEqualTo(red);
        assertThat(result.tookOver()).containsExactly(KITE.id());
        assertThat(titles(isolde)).containsExactly("Gull", "Red Kite", "Snail");
        agree();
    }

    @Test
    void editsOfDifferentPlatesComeTogetherInAVersionWithTwoParents() throws Exception {
        save(wenna, "red", KITE.edit().title("Red Kite").build());
        save(isolde, "bigger", SNAIL.edit().title("Big Snail").build());
        BroughtIn result = exchange(wenna, isolde);
        assertThat(result.newest().isJoin()).isTrue();
        assertThat(result.tookOver()).containsExactly(KITE.id());
        assertThat(titles(wenna)).containsExactly("Gull", "Red Kite", "Big Snail");
        assertThat(wenna.newest()).contains(result.newest());
        agree();
    }

    @Test
    void twoEditsOfOnePlateAreJoinedAndTheJoinStandsInItsHistory() throws Exception {
        save(wenna, "harbour", KITE.edit().themes(List.of("harbour", "kites")).build());
        save(isolde, "seaside", KITE.edit().themes(List.of("kites", "seaside")).build());
        BroughtIn result = exchange(wenna, isolde);
        assertThat(result.joined()).containsExactly(KITE.id());
        assertThat(now(wenna, KITE).themes()).containsExactly("harbour", "kites", "seaside");
        assertThat(reasons(wenna, KITE))
                .containsExactly("Joined with the versions of Wenna Tarrow", "seaside", "harbour", "three plates");
        assertThat(reasons(wenna, SNAIL)).containsExactly("three plates");
        agree();
    }

    @Test
    void whoeverJoinsTheSameFilesComeOut() throws Exception {
        save(wenna, "w1", KITE.edit().themes(List.of("harbour", "kites")).build(), plate(0x90, "New One"));
        putAway(wenna, GULL);
        save(isolde, "i1", KITE.edit().themes(List.of("kites", "seaside")).build(), plate(0x80, "New One"));
        save(isolde, "i2", GULL.edit().title("Black Gull").build());
        Path other = shop.root.resolve("other-shared");
        isolde.share(other);
        isolde.send(Progress.NONE);
        isolde.share(shop.root.resolve("shared"));
        wenna.send(Progress.NONE);
        BroughtIn isoldes = bringIn(isolde);
        wenna.share(other);
        BroughtIn wennas = bringIn(wenna);
        assertThat(isoldes.kept()).containsExactly(GULL.id());
        assertThat(wennas.kept()).containsExactly(GULL.id());
        assertThat(wennas.newest().id()).isNotEqualTo(isoldes.newest().id());
        agree();
    }

    @Test
    void aPlatePutAwayHereAndUntouchedThereGoes() throws Exception {
        putAway(wenna, GULL);
        save(isolde, "bigger", SNAIL.edit().title("Big Snail").build());
        exchange(wenna, isolde);
        assertThat(titles(isolde)).containsExactly("Kite", "Big Snail");
        agree();
    }

    @Test
    void aPlatePutAwayHereAndChangedThereStaysAndIsTold() throws Exception {
        putAway(wenna, GULL);
        Plate black = GULL.edit().title("Black Gull").build();
        save(isolde, "black", black);
        BroughtIn result = exchange(wenna, isolde);
        assertThat(result.kept()).containsExactly(GULL.id());
        assertThat(now(wenna, GULL)).isEqualTo(black);
        assertThat(wenna.putAway()).isEmpty();
        assertThat(wenna.history(GULL.id()).get(0).entry()).isPresent();
        agree();
    }

    @Test
    void twoPlatesTakenForOnePlaceBothStayAndTheGreaterIdGivesWay() throws Exception {
        Plate lesser = plate(0x50, "Lantern", "hers");
        Plate greater = plate(0x60, "Lantern", "partner's");
        save(wenna, "lantern", greater);
        save(isolde, "lantern", lesser);
        exchange(wenna, isolde);
        for (Library library : List.of(wenna, isolde)) {
            assertThat(library.plate(lesser.id())).map(Entry::path).contains("plates/l/lantern.json");
            assertThat(library.plate(greater.id())).map(Entry::path).contains("plates/l/lantern-00000060.json");
        }
        agree();
    }

    @Test
    void aFileMovedHereAndEditedThereIsMovedAndEdited() throws Exception {
        Files.createDirectories(wenna.folder().resolve("plates/r"));
        shop.git(wenna.folder(), "mv", "plates/k/kite.json", "plates/r/red.json");
        shop.git(wenna.folder(), "commit", "-q", "-m", "moved by another program");
        Plate red = KITE.edit().title("Red Kite").build();
        save(isolde, "red", red);
        exchange(wenna, isolde);
        assertThat(wenna.plate(KITE.id())).map(Entry::path).contains("plates/r/red.json");
        assertThat(now(isolde, KITE)).isEqualTo(red);
        agree();
    }

    @Test
    void seriesAreJoinedAsOrderedLists() throws Exception {
        Series days = new Series(
                Workshop.id(0x100),
                "Harbour Days",
                List.of(KITE.id(), SNAIL.id()),
                Palette.EMPTY,
                List.of(),
                Unknown.NONE);
        putSeries(wenna, days);
        wenna.send(Progress.NONE);
        bringIn(isolde);
        putSeries(wenna, withPlates(days, KITE.id(), GULL.id(), SNAIL.id()));
        Plate lantern = plate(0x50, "Lantern");
        save(isolde, "lantern", lantern);
        putSeries(isolde, withPlates(days, KITE.id(), SNAIL.id(), lantern.id()));
        exchange(wenna, isolde);
        assertThat(wenna.series())
                .singleElement()
                .extracting(Series::plates)
                .isEqualTo(List.of(KITE.id(), GULL.id(), SNAIL.id(), lantern.id()));
        agree();
    }

    private static void putSeries(Library library, Series series) throws LibraryException {
        library.save(new Saving(List.of(new Change.PutSeries(series)), "series", Optional.empty(), Optional.empty()));
    }

    private static Series withPlates(Series series, String... plates) {
        return new Series(
                series.id(), series.title(), List.of(plates), series.colours(), series.notes(), series.unknown());
    }

    @Test
    void picturesAndOtherFilesTravelAndNoneIsLost() throws Exception {
        Path drawer = wenna.folder().resolve("plates/k");
        Files.write(drawer.resolve(KITE.id() + ".scan-0123456789abcdef.png"), new byte[] {1, 2, 3, '\r', '\n', 0});
        wenna.takeIn(wenna.handEdits(), "Scanned");
        Files.writeString(wenna.folder().resolve("readme.txt"), "hers\n");
        shop.git(wenna.folder(), "add", "readme.txt");
        shop.git(wenna.folder(), "commit", "-q", "-m", "by another program");
        Files.writeString(isolde.folder().resolve("readme.txt"), "the partner's\n");
        shop.git(isolde.folder(), "add", "readme.txt");
        shop.git(isolde.folder(), "commit", "-q", "-m", "by another program");
        exchange(wenna, isolde);
        assertThat(isolde.folder().resolve("plates/k/" + KITE.id() + ".scan-0123456789abcdef.png"))
                .hasBinaryContent(new byte[] {1, 2, 3, '\r', '\n', 0});
        try (var files = Files.list(isolde.folder())) {
            assertThat(files.filter(file -> file.getFileName().toString().startsWith("readme")))
                    .extracting(Files::readString)
                    .containsExactlyInAnyOrder("hers\n", "the partner's\n");
        }
        agree();
    }

    @Test
    void theThemeListIsJoined() throws Exception {
        wenna.save(new Saving(
                List.of(new Change.PutFacts(wenna.facts().withThemes(Map.of("boats", List.of("ships"))))),
                "themes",
                Optional.empty(),
                Optional.empty()));
        isolde.save(new Saving(
                List.of(new Change.PutFacts(
                        isolde.facts().withThemes(Map.of("boats", List.of("sails"), "gulls", List.of())))),
                "themes",
                Optional.empty(),
                Optional.empty()));
        exchange(wenna, isolde);
        assertThat(wenna.facts().themes()).isEqualTo(Map.of("boats", List.of("sails", "ships"), "gulls", List.of()));
        agree();
    }

    @Test
    void namesOfVersionsTravelBothWaysAndOneGivenByBothAgrees() throws Exception {
        String version = wenna.newest().orElseThrow().id();
        wenna.nameVersion(KITE.id(), version, "Spring class");
        isolde.nameVersion(KITE.id(), version, "Spring class");
        isolde.nameVersion(SNAIL.id(), version, "For the market");
        exchange(wenna, isolde);
        wenna.send(Progress.NONE);
        for (Library library : List.of(wenna, isolde)) {
            assertThat(library.history(KITE.id()).get(0).names()).containsExactly("Spring class");
            assertThat(library.history(SNAIL.id()).get(0).names()).containsExactly("For the market");
        }
        String tags = shop.git(wenna.folder(), "for-each-ref", "refs/tags");
        assertThat(shop.git(isolde.folder(), "for-each-ref", "refs/tags")).isEqualTo(tags);
        assertThat(shop.git(shop.root.resolve("shared"), "for-each-ref", "refs/tags"))
                .isEqualTo(tags);
    }

    @Test
    void sendingIsRefusedWhileThereIsSomethingToBringIn() throws Exception {
        save(wenna, "red", KITE.edit().title("Red Kite").build());
        wenna.send(Progress.NONE);
        save(isolde, "bigger", SNAIL.edit().title("Big Snail").build());
        assertThatThrownBy(() -> isolde.send(Progress.NONE))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("Bring them in first");
        assertThat(wenna.look(Progress.NONE).incoming()).isEmpty();
        bringIn(isolde);
        assertThat(isolde.send(Progress.NONE).versions()).isEqualTo(2);
        assertThat(isolde.send(Progress.NONE).versions()).isZero();
    }

    @Test
    void unsentIsWhatWasChangedHereSinceItWasSentOrBroughtIn() throws Exception {
        assertThat(wenna.unsent()).isEmpty();
        assertThat(isolde.unsent()).isEmpty();
        save(wenna, "red", KITE.edit().title("Red Kite").build());
        Plate fresh = plate(0x77, "Crab");
        save(wenna, "new", fresh);
        putAway(wenna, GULL);
        assertThat(wenna.unsent()).containsExactlyInAnyOrder(KITE.id(), fresh.id());
        save(isolde, "bigger", SNAIL.edit().title("Big Snail").build());
        wenna.send(Progress.NONE);
        assertThat(wenna.unsent()).isEmpty();
        bringIn(isolde);
        assertThat(isolde.unsent()).containsExactly(SNAIL.id());
        try (Library alone = shop.create("alone")) {
            save(alone, "not shared", KITE);
            assertThat(alone.unsent()).isEmpty();
        }
    }

    @Test
    void whatWasSettledBeforehandStandsInTheJoin() throws Exception {
        save(wenna, "harbour", KITE.edit().themes(List.of("harbour")).build());
        save(isolde, "seaside", KITE.edit().themes(List.of("seaside")).build());
        wenna.send(Progress.NONE);
        Arrivals arrivals = isolde.look(Progress.NONE);
        assertThat(arrivals.plates().get(0).isToJoin()).isTrue();
        assertThat(arrivals.plates().get(0).changedHere().map(Version::inNameOf))
                .isEqualTo(isolde.hand());
        assertThat(arrivals.plates().get(0).changedThere().map(Version::inNameOf))
                .isEqualTo(wenna.hand());
        Plate settled = KITE.edit().themes(List.of("both")).build();
        BroughtIn result = isolde.bringIn(arrivals, List.of(settled), Progress.NONE);
        assertThat(result.joined()).containsExactly(KITE.id());
        assertThat(now(isolde, KITE)).isEqualTo(settled);
        isolde.send(Progress.NONE);
        bringIn(wenna);
        agree();
    }

    @Test
    void whatWasSettledFromAnOlderStateIsRefused() throws Exception {
        save(wenna, "harbour", KITE.edit().themes(List.of("harbour")).build());
        save(isolde, "seaside", KITE.edit().themes(List.of("seaside")).build());
        wenna.send(Progress.NONE);
        Arrivals arrivals = isolde.look(Progress.NONE);
        save(isolde, "meanwhile", KITE.edit().themes(List.of("meanwhile")).build());
        assertThatThrownBy(() -> isolde.bringIn(arrivals, List.of(KITE), Progress.NONE))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("was changed here since you looked");
        assertThat(now(isolde, KITE).themes()).containsExactly("meanwhile");
    }

    @Test
    void joinsMadeCrosswiseByBothAreJoinedOverTheirCommonVersions() throws Exception {
        whoeverJoinsTheSameFilesComeOut();
        wenna.share(shop.root.resolve("shared"));
        isolde.send(Progress.NONE);
        save(
                wenna,
                "after",
                KITE.edit()
                        .themes(List.of("after", "harbour", "kites", "seaside"))
                        .build());
        save(
                isolde,
                "too",
                KITE.edit()
                        .themes(List.of("harbour", "kites", "seaside", "too"))
                        .build());
        bringIn(wenna);
        exchange(wenna, isolde);
        assertThat(shop.git(wenna.folder(), "merge-base", "--all", "HEAD~1", "HEAD^2")
                        .lines())
                .isNotEmpty();
        assertThat(now(wenna, KITE).themes()).containsExactly("after", "harbour", "kites", "seaside", "too");
        agree();
    }

    @Test
    void anUnreadableTextOfThePartnersStaysBesideThePlate() throws Exception {
        Path file = wenna.folder().resolve("plates/k/kite.json");
        Files.writeString(
                file, Files.readString(file).replace("\".bb.\"", "\".b.\"").replace(".bb.", ".b"));
        shop.git(wenna.folder(), "commit", "-q", "-a", "-m", "broken by another program");
        Plate red = KITE.edit().title("Red Kite").build();
        save(isolde, "red", red);
        exchange(wenna, isolde);
        assertThat(now(wenna, KITE)).isEqualTo(red);
        assertThat(titles(wenna))
                .hasSize(4)
                .filteredOn(title -> title.startsWith("damaged"))
                .hasSize(1);
        agree();
    }

    @Test
    void aSharedCopyWithALinkInItIsNotBroughtIn() throws Exception {
        Path wild = shop.root.resolve("wild");
        shop.git(shop.root, "clone", "-q", shop.root.resolve("shared").toString(), wild.toString());
        Files.createSymbolicLink(wild.resolve("plates/k/passwd.json"), Path.of("/etc/passwd"));
        shop.git(wild, "add", "-A");
        shop.git(wild, "commit", "-q", "-m", "a link");
        shop.git(wild, "push", "-q", "origin", "HEAD:main");
        Version before = isolde.newest().orElseThrow();
        assertThatThrownBy(() -> bringIn(isolde))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("plates/k/passwd.json");
        assertThat(isolde.newest()).contains(before);
    }

    @Test
    void aFolderThatIsNoSharedCopyIsRefused() throws Exception {
        Path letters = Files.createDirectory(shop.root.resolve("letters"));
        Files.writeString(letters.resolve("a.txt"), "a");
        assertThatThrownBy(() -> wenna.share(letters))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("no shared copy");
        assertThatThrownBy(() -> wenna.share(wenna.folder().resolve("shared")))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("in the library itself");
        try (Library archive = shop.libraries.create(shop.root.resolve("archive"), "Archive", Workshop.WENNA)) {
            assertThatThrownBy(() -> archive.share(shop.root.resolve("shared")))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("another library");
            assertThat(archive.sharedCopy()).isEmpty();
        }
    }

    @Test
    void aSharedCopyThatIsGoneIsToldInASentence() throws Exception {
        Files.move(shop.root.resolve("shared"), shop.root.resolve("unplugged"));
        assertThatThrownBy(() -> wenna.look(Progress.NONE))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("Is the drive connected");
    }
}
