package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** Reading all plates of a library: what is read, in what order it is told, and what is read again. */
class ListingGitTest {
    private final Workshop shop;

    ListingGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    private static Plate[] plates(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> plate(i + 1, "Boat " + (char) ('a' + i / 26) + (char) ('a' + i % 26)))
                .toArray(Plate[]::new);
    }

    @Test
    void whatLiesInTheFolderIsReadOnlyWhereItIsWhatTheNewestVersionHas() throws Exception {
        Plate kite = plate(0x20, "Kite");
        Plate snail = plate(0x30, "Snail");
        Plate boat = plate(0x40, "Boat");
        try (Library library = shop.create("lib")) {
            save(library, "three", kite, snail, boat);
            Path folder = library.folder().resolve("plates");
            Files.write(
                    folder.resolve("k/kite.json"),
                    PlateText.bytes(kite.edit().title("Kita").build()));
            Files.delete(folder.resolve("s/snail.json"));
            Files.createSymbolicLink(folder.resolve("s/snail.json"), folder.resolve("b/boat.json"));
            Files.delete(folder.resolve("b/boat.json"));
            Files.createDirectory(folder.resolve("b/boat.json"));
        }
        try (Library library = shop.libraries.open(shop.root.resolve("lib"))) {
            assertThat(library.list(Progress.NONE))
                    .flatExtracting(e -> e.plate().stream().toList())
                    .containsExactly(boat, kite, snail);
        }
    }

    @Test
    void theFirstOnesAreToldOfBeforeAllAreReadInTheOrderOfTheList() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "many", plates(600));
        }
        try (Library library = shop.libraries.open(shop.root.resolve("lib"))) {
            List<List<Entry>> told = new ArrayList<>();
            List<Entry> all = library.list(Progress.NONE, told::add);
            assertThat(all).hasSize(600);
            assertThat(told).isNotEmpty();
            assertThat(told.get(0)).hasSizeBetween(40, 100);
            assertThat(told).allSatisfy(soFar -> assertThat(all).startsWith(soFar.toArray(Entry[]::new)));
        }
    }

    @Test
    void theFirstOnesAloneAreThoseOfTheListAndAreReadOnce() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "many", plates(600));
        }
        try (Library library = shop.libraries.open(shop.root.resolve("lib"))) {
            List<Entry> first = library.first(70);
            assertThat(library.facts().name()).isEqualTo(library.name());
            List<Entry> all = library.list(Progress.NONE);
            assertThat(library.first(600)).isEqualTo(all);
            assertThat(first).hasSize(70);
            for (int i = 0; i < first.size(); i++) {
                assertThat(all.get(i)).isSameAs(first.get(i));
            }
        }
    }

    @Test
    void afterASaveOnlyWhatChangedIsReadAnew() throws Exception {
        Plate[] plates = plates(100);
        try (Library library = shop.create("lib")) {
            save(library, "many", plates);
            List<Entry> before = library.list(Progress.NONE);
            save(
                    library,
                    "one",
                    plates[3].edit().title("Boat of the other kind").build());
            List<Entry> after = library.list(Progress.NONE);
            assertThat(after).hasSize(100);
            long same = IntStream.range(0, 100)
                    .filter(i -> after.get(i) == before.get(i))
                    .count();
            assertThat(same).isEqualTo(99);
            assertThat(after.get(3).plate().orElseThrow().title()).isEqualTo("Boat of the other kind");
        }
    }
}
