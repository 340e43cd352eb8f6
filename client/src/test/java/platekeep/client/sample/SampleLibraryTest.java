package platekeep.client.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Entry;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Severity;
import platekeep.model.text.PlateText;
import platekeep.model.text.SeriesText;
import platekeep.sample.Happening;
import platekeep.sample.SampleStory;

class SampleLibraryTest {
    @TempDir
    static Path root;

    private static Libraries libraries;
    private static SampleLibrary sample;

    @BeforeAll
    static void make() throws LibraryException {
        libraries = new GitLibraries(Clock.systemDefaultZone(), new Cache(root.resolve("cache")), Runnable::run);
        sample = SampleLibrary.make(root.resolve("one"), libraries);
    }

    private static List<Plate> plates(Library library) throws LibraryException {
        return library.list(Progress.NONE).stream()
                .map(entry -> entry.plate().orElseThrow())
                .toList();
    }

    @Test
    void itHoldsThirtyPlatesAndMoreInThreeSeriesWithNinetyVersionsAndMoreByTwoHands() throws LibraryException {
        try (Library library = libraries.open(sample.workshop())) {
            assertThat(plates(library)).hasSizeGreaterThanOrEqualTo(30);
            assertThat(library.series())
                    .hasSize(3)
                    .allSatisfy(series -> assertThat(series.plates()).hasSizeGreaterThanOrEqualTo(5));
            List<Version> versions = library.versions(1000);
            assertThat(versions).hasSizeGreaterThanOrEqualTo(90);
            assertThat(versions.stream().map(v -> v.inNameOf().name()).distinct())
                    .containsExactlyInAnyOrder("Wenna Tarrow", "Isolde Marsh");
            assertThat(versions).anySatisfy(v -> assertThat(v.inNameOf()).isNotEqualTo(v.enteredBy()));
            assertThat(library.putAway()).isNotEmpty();
            assertThat(library.hand()).map(hand -> hand.name()).contains("Wenna Tarrow");
        }
    }

    @Test
    void everyPlateOfASeriesIsThere() throws LibraryException {
        try (Library library = libraries.open(sample.workshop())) {
            Set<String> ids = new HashSet<>();
            plates(library).forEach(plate -> ids.add(plate.id()));
            assertThat(library.series()).allSatisfy(series -> assertThat(ids).containsAll(series.plates()));
        }
    }

    @Test
    void everyPlateIsFortyToOneHundredAndTenPleatsWide() throws LibraryException {
        try (Library library = libraries.open(sample.workshop())) {
            assertThat(plates(library))
                    .allSatisfy(plate -> assertThat(plate.positions() + 1).isBetween(40, 110));
        }
    }

    @Test
    void everyPlateLiesWhereTheStorySays() throws LibraryException {
        Set<String> told = new HashSet<>();
        for (Happening happening : SampleStory.read().happenings()) {
            happening.put().keySet().stream()
                    .filter(path -> path.startsWith("plates/"))
                    .forEach(told::add);
            happening.away().forEach(told::remove);
        }
        try (Library library = libraries.open(sample.workshop())) {
            assertThat(library.list(Progress.NONE)).extracting(Entry::path).containsExactlyInAnyOrderElementsOf(told);
        }
    }

    @Test
    void twoPlatesWereEditedApartAndAreNotJoinedYet() throws LibraryException {
        try (Library library = libraries.open(sample.workshop())) {
            Arrivals arrivals = library.look(Progress.NONE);
            assertThat(arrivals.incoming()).hasSize(2);
            assertThat(arrivals.waiting()).hasSize(2);
            assertThat(arrivals.plates()).hasSize(2).allMatch(Arrivals.Arrival::bothChanged);
        }
    }

    @Test
    void everyPlatePassesTheCheckAtEveryVersion() throws LibraryException {
        SampleStory story = SampleStory.read();
        Set<String> texts = new TreeSet<>();
        story.happenings()
                .forEach(h -> h.put().values().stream()
                        .filter(text -> text.startsWith("plates/"))
                        .forEach(texts::add));
        for (String text : texts) {
            Plate plate = PlateText.read(text, story.text(text)).value().orElseThrow();
            assertThat(Check.of(plate, CheckSettings.DEFAULT))
                    .as(text)
                    .noneMatch(finding -> finding.severity() == Severity.ERROR);
        }
        assertThat(texts).hasSizeGreaterThanOrEqualTo(90);
    }

    @Test
    void everyTextIsCanonical() {
        SampleStory story = SampleStory.read();
        for (Happening happening : story.happenings()) {
            for (String text : happening.put().values()) {
                byte[] bytes = story.text(text);
                byte[] again = text.startsWith("plates/")
                        ? PlateText.bytes(PlateText.read(text, bytes).value().orElseThrow())
                        : SeriesText.bytes(SeriesText.read(text, bytes).value().orElseThrow());
                assertThat(again).as(text).isEqualTo(bytes);
            }
        }
    }

    @Test
    void oneOfTheTwoPlatesJoinsCleanAndTheOtherHasTwoClashes() throws LibraryException {
        SampleLibrary joined = SampleLibrary.make(root.resolve("four"), libraries);
        try (Library library = libraries.open(joined.workshop())) {
            BroughtIn result = library.bringIn(library.look(Progress.NONE), List.of(), Progress.NONE);
            assertThat(result.newest().isJoin()).isTrue();
            assertThat(result.joined()).hasSize(1);
            assertThat(result.clashing()).hasSize(1);
            Plate clashing = library.plate(result.clashing().get(0))
                    .flatMap(Entry::plate)
                    .orElseThrow();
            assertThat(clashing.clashes()).hasSize(2);
        }
    }

    @Test
    void madeAgainItHasTheSameVersionIds() throws LibraryException {
        SampleLibrary again = SampleLibrary.make(root.resolve("two"), libraries);
        for (List<Path> pair :
                List.of(List.of(sample.workshop(), again.workshop()), List.of(sample.partner(), again.partner()))) {
            try (Library one = libraries.open(pair.get(0));
                    Library two = libraries.open(pair.get(1))) {
                assertThat(two.newest()).isEqualTo(one.newest());
            }
        }
    }

    @Test
    void aMakingThatWasCutShortIsBegunAgainAndWhatIsNotOursIsLeftAlone() throws Exception {
        Path parent = root.resolve("three");
        Files.createDirectories(parent.resolve("workshop"));
        Files.writeString(parent.resolve("workshop/letter.txt"), "mine");
        assertThatThrownBy(() -> SampleLibrary.make(parent, libraries))
                .isInstanceOf(LibraryException.class)
                .hasMessageContaining("is there already");
        assertThat(parent.resolve("workshop/letter.txt")).exists();
        Files.createFile(parent.resolve("being made"));
        assertThat(SampleLibrary.in(parent).isThere()).isFalse();
        assertThat(SampleLibrary.make(parent, libraries).isThere()).isTrue();
    }
}
