package platekeep.client.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;

/**
 * A series of an open library.
 *
 * @param saved as the library has it
 * @param now as she has it
 */
record OpenSeries(Stock stock, Series saved, Series now) {

    /**
     * What is known of a library.
     *
     * @param seen its newest version
     * @param entries its readable plates by id
     * @param pictures their scans and photos by plate
     */
    record Stock(
            Library library, Optional<String> seen, Map<String, Entry> entries, Map<String, List<Picture>> pictures) {

        Optional<Plate> plate(String id) {
            return Optional.ofNullable(entries.get(id)).flatMap(Entry::plate);
        }
    }

    /** All series of a library by title; in the background. */
    static List<OpenSeries> read(Library library, SeriesDrafts drafts, Progress progress) throws LibraryException {
        Optional<String> seen = library.newest().map(Version::id);
        Map<String, Entry> entries = new HashMap<>();
        library.list(progress).forEach(entry -> entry.plate().ifPresent(plate -> entries.put(plate.id(), entry)));
        Map<String, List<Picture>> pictures =
                library.pictures().stream().collect(Collectors.groupingBy(Picture::plateId));
        Stock stock = new Stock(library, seen, entries, pictures);
        List<OpenSeries> all = new ArrayList<>();
        for (Series saved : library.series()) {
            Series now = drafts.of(library.folder(), saved.id())
                    .map(kept -> SeriesEdits.caughtUp(kept.base(), kept.now(), saved))
                    .orElse(saved);
            all.add(new OpenSeries(stock, saved, now));
        }
        all.sort(Comparator.comparing(series -> series.saved().title().toLowerCase(Locale.ROOT)));
        return all;
    }

    OpenSeries with(Series changed) {
        return new OpenSeries(stock, saved, changed);
    }

    Library library() {
        return stock.library();
    }

    String key() {
        return library().folder() + "\n" + saved.id();
    }

    boolean isChanged() {
        return !now.equals(saved);
    }

    /** Its plates that are in the library, in order. */
    List<Plate> plates() {
        return now.plates().stream().flatMap(id -> stock.plate(id).stream()).toList();
    }
}
