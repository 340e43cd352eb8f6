package platekeep.client.series;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import platekeep.client.library.Library;
import platekeep.client.room.Latest;
import platekeep.client.room.Workroom;

/**
 * The series of the open libraries as far as they have been read: their texts at once, then the plates that are looked
 * at, then all others.
 */
final class SeriesOnHand {
    private static final int AT_ONCE = 8;

    private final Workroom room;
    private final SeriesDrafts drafts;
    private final Runnable arrived;
    private final Map<Library, List<OpenSeries>> read = new HashMap<>();
    private final Latest<OpenSeries.Looked> looking;
    private int reading;

    /**
     * @param arrived is called when more has been read, or when reading came to an end
     */
    SeriesOnHand(Workroom room, SeriesDrafts drafts, Runnable arrived) {
        this.room = room;
        this.drafts = drafts;
        this.arrived = arrived;
        this.looking = new Latest<>(room);
    }

    /** Whether something is still to come. */
    boolean isReading() {
        return reading > 0;
    }

    /** Whether the series of a library can be shown. */
    boolean hasBegun(Library library) {
        return read.containsKey(library);
    }

    /** Those of a library; none before it {@link #hasBegun}. */
    List<OpenSeries> of(Library library) {
        return read.getOrDefault(library, List.of());
    }

    /** Those of all open libraries, in the order in which these were opened. */
    List<OpenSeries> all() {
        return room.open().stream().flatMap(library -> of(library).stream()).toList();
    }

    /** Forgets libraries that are no longer open. */
    void retain() {
        read.keySet().retainAll(room.open());
    }

    /** Reads the libraries of which nothing is known yet. */
    void readNew() {
        room.open().stream().filter(library -> !hasBegun(library)).forEach(this::read);
    }

    /** Reads a library, whose plates may have changed. */
    void read(Library library) {
        if (hasBegun(library)) {
            readAll(library);
        } else {
            begin(library);
        }
    }

    /** What she has made of a series takes its place. */
    void put(OpenSeries changed) {
        List<OpenSeries> of = new ArrayList<>(of(changed.library()));
        of.replaceAll(series -> series.key().equals(changed.key()) ? changed : series);
        read.put(changed.library(), of);
    }

    /** Reads the next plates of a series that are not known yet. */
    void look(OpenSeries shown) {
        List<String> ids = shown.awaited().stream().limit(AT_ONCE).toList();
        if (!ids.isEmpty()) {
            Library library = shown.library();
            looking.ask(progress -> OpenSeries.Looked.at(library, ids), found -> {
                read.computeIfPresent(
                        library,
                        (l, all) ->
                                all.stream().map(series -> series.with(found)).toList());
                arrived.run();
            });
        }
    }

    private void readAll(Library library) {
        reading++;
        room.work(
                progress -> OpenSeries.read(library, drafts, progress),
                series -> {
                    reading--;
                    if (room.open().contains(library)) {
                        read.put(library, series.stream().map(this::asShe).toList());
                    }
                    arrived.run();
                },
                () -> {
                    reading--;
                    arrived.run();
                });
    }

    /** Shows the series of a library at once; the plates that are looked at are read first, then all. */
    private void begin(Library library) {
        reading++;
        room.work(
                progress -> OpenSeries.begin(library, drafts),
                series -> {
                    reading--;
                    if (room.open().contains(library)) {
                        read.putIfAbsent(library, series);
                        readAll(library);
                    }
                    arrived.run();
                },
                () -> {
                    reading--;
                    arrived.run();
                });
    }

    /** A series read anew, with what she has made of it here; what lies on disk may be a step behind. */
    private OpenSeries asShe(OpenSeries fresh) {
        return all().stream()
                .filter(before -> before.key().equals(fresh.key()))
                .findFirst()
                .map(before -> fresh.with(
                        before.isChanged()
                                ? SeriesEdits.caughtUp(before.saved(), before.now(), fresh.saved())
                                : fresh.saved()))
                .orElse(fresh);
    }
}
