package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.plate.Plate;

/**
 * What was read from one library: its plates with what they are found by, and its damaged files.
 *
 * @param library from which it was read
 * @param items plates by title, then damaged files by path
 */
record Stock(Library library, List<Item> items) {

    /**
     * A plate or a damaged file.
     *
     * @param entry as it was read
     * @param summary empty where it is damaged
     */
    record Item(Library library, Entry entry, Optional<Summary> summary) {

        /** Tells it from all other items of the room. */
        String key() {
            return Stock.key(library, entry);
        }

        Optional<Plate> plate() {
            return entry.plate();
        }
    }

    Stock {
        items = List.copyOf(items);
    }

    private static String key(Library library, Entry entry) {
        return library.folder() + "\n" + entry.path();
    }

    /** Reads as many plates as fill a screen; in the background. */
    static Stock first(Library library) throws LibraryException {
        return of(library, library.first(Library.SCREENFUL));
    }

    /** Reads a library; in the background. */
    static Stock read(Library library, Progress progress) throws LibraryException {
        return of(library, library.list(progress));
    }

    private static Stock of(Library library, List<Entry> entries) throws LibraryException {
        Surroundings around = Surroundings.of(library.facts(), library.series());
        List<Item> items = new ArrayList<>();
        for (Entry entry : entries) {
            items.add(new Item(
                    library, entry, entry.plate().map(plate -> Summary.of(key(library, entry), plate, around))));
        }
        items.sort(Comparator.comparing((Item item) -> item.summary().isEmpty())
                .thenComparing(item -> item.summary()
                        .map(s -> s.title().toLowerCase(Locale.ROOT))
                        .orElse(item.entry().path())));
        return new Stock(library, items);
    }
}
