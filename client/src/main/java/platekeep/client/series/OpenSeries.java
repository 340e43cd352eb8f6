package platekeep.client.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** How much of a library was read. */
    enum Extent {
        /** Single plates that are looked at. */
        SOME,
        /** All plates. */
        ALL
    }

    /**
     * What is known of a library.
     *
     * @param seen its newest version
     * @param extent how much of it was read
     * @param looked ids of plates that were looked for, where not all was read
     * @param entries its readable plates by id
     * @param pictures their scans and photos by plate
     */
    record Stock(
            Library library,
            Optional<String> seen,
            Extent extent,
            Set<String> looked,
            Map<String, Entry> entries,
            Map<String, List<Picture>> pictures) {

        Optional<Plate> plate(String id) {
            return Optional.ofNullable(entries.get(id)).flatMap(Entry::plate);
        }

        /** Whether it is not known yet if there is such a plate. */
        boolean isAwaited(String id) {
            return extent == Extent.SOME && !looked.contains(id);
        }

        /** With plates that were looked for. */
        Stock with(Looked found) {
            Set<String> nowLooked = new HashSet<>(looked);
            nowLooked.addAll(found.ids());
            Map<String, Entry> nowThere = new HashMap<>(entries);
            nowThere.putAll(found.entries());
            return new Stock(library, seen, extent, nowLooked, nowThere, pictures);
        }
    }

    /**
     * Plates that were looked for.
     *
     * @param ids of all of them
     * @param entries those that are there, by id
     */
    record Looked(Library library, List<String> ids, Map<String, Entry> entries) {

        /** Looks for plates; in the background. */
        static Looked at(Library library, List<String> ids) throws LibraryException {
            Map<String, Entry> entries = new HashMap<>();
            for (String id : ids) {
                library.plate(id).filter(entry -> entry.plate().isPresent()).ifPresent(entry -> entries.put(id, entry));
            }
            return new Looked(library, ids, entries);
        }
    }

    /** All series of a library by title, of which no plate was read yet; in the background. */
    static List<OpenSeries> begin(Library library, SeriesDrafts drafts) throws LibraryException {
        return of(drafts, new Stock(library, seen(library), Extent.SOME, Set.of(), Map.of(), pictures(library)));
    }

    /** All series of a library by title, with all plates; in the background. */
    static List<OpenSeries> read(Library library, SeriesDrafts drafts, Progress progress) throws LibraryException {
        Optional<String> seen = seen(library);
        Map<String, Entry> entries = new HashMap<>();
        library.list(progress).forEach(entry -> entry.plate().ifPresent(plate -> entries.put(plate.id(), entry)));
        return of(drafts, new Stock(library, seen, Extent.ALL, Set.of(), entries, pictures(library)));
    }

    private static Optional<String> seen(Library library) throws LibraryException {
        return library.newest().map(Version::id);
    }

    private static Map<String, List<Picture>> pictures(Library library) throws LibraryException {
        return library.pictures().stream().collect(Collectors.groupingBy(Picture::plateId));
    }

    private static List<OpenSeries> of(SeriesDrafts drafts, Stock stock) throws LibraryException {
        List<OpenSeries> all = new ArrayList<>();
        for (Series saved : stock.library().series()) {
            Series now = drafts.of(stock.library().folder(), saved.id())
                    .map(kept -> SeriesEdits.caughtUp(kept.base(), kept.now(), saved))
                    .orElse(saved);
            all.add(new OpenSeries(stock, saved, now));
        }
        all.sort(Comparator.comparing(series -> series.saved().title().toLowerCase(Locale.ROOT)));
        return all;
    }

    OpenSeries with(Looked found) {
        return stock.extent() == Extent.SOME && stock.library() == found.library()
                ? new OpenSeries(stock.with(found), saved, now)
                : this;
    }

    /** Its plates that are to be looked for, in order. */
    List<String> awaited() {
        return now.plates().stream().filter(stock::isAwaited).toList();
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
