package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
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

    /**
     * Reads a library; in the background.
     *
     * @param first hears, while the rest is being read, of as many plates as fill a screen
     */
    static Stock read(Library library, Progress progress, Consumer<Stock> first) throws LibraryException {
        Surroundings around = Surroundings.of(library.facts(), library.series());
        AtomicBoolean isTold = new AtomicBoolean();
        List<Entry> all = library.list(progress, soFar -> {
            if (isTold.compareAndSet(false, true)) {
                first.accept(of(library, soFar, around));
            }
        });
        return of(library, all, around);
    }

    private static Stock of(Library library, List<Entry> entries, Surroundings around) {
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
