package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Library;
import platekeep.client.library.Telling;
import platekeep.client.room.Latest;
import platekeep.client.room.LibraryNames;
import platekeep.client.room.Workroom;
import platekeep.client.task.Progress;
import platekeep.client.task.Tasks;
import platekeep.model.find.Told;

/**
 * Reads the open libraries and whatever else plates are found by, and keeps an index of it all up to date, away from the
 * event thread. First a screenful of plates; only when that is seen the others, so that nothing takes the processors from
 * it; then drafts and what waits to be sent, then what versions tell and what the check finds: each is there as soon as it
 * is known.
 */
final class Holdings {
    private final Workroom room;
    private final Drafts drafts;
    private final Runnable changed;
    private final Map<Library, Stock> stocks = new HashMap<>();
    private final Map<Library, Set<String>> unsent = new HashMap<>();
    private final Map<Library, List<KeptDraft>> drawn = new HashMap<>();
    private final Map<Library, Map<String, Told>> told = new HashMap<>();
    private final Map<Library, Tasks.Running> reading = new HashMap<>();
    /** Those of which not all can be seen yet. */
    private final Set<Library> begun = new HashSet<>();

    /** Those of which the first plates were read and are not in the index yet. */
    private final Set<Library> fresh = new HashSet<>();

    /** Those of which the first plates can be seen, or soon can, and the others wait for that. */
    private final Set<Library> halted = new HashSet<>();

    private final Set<Library> whole = new HashSet<>();

    /** Those whose plates were all read and cannot be seen yet: what else they are found by waits for that. */
    private final Map<Library, Stock> further = new HashMap<>();

    private final Set<Library> greeted = new HashSet<>();
    private final Checked checked = new Checked();
    private final Latest<Held> making;
    private Held held = Held.NOTHING;

    /**
     * @param changed told when there is something new to be seen
     */
    Holdings(Workroom room, Drafts drafts, Runnable changed) {
        this.room = room;
        this.drafts = drafts;
        this.changed = changed;
        this.making = new Latest<>(room);
    }

    Held held() {
        return held;
    }

    /** Whether a library is being read of which nothing is to be seen yet, or only the first plates. */
    boolean isReading() {
        return !begun.isEmpty();
    }

    void librariesChanged() {
        List<Library> open = room.open();
        List.of(stocks, unsent, drawn, told, reading, further)
                .forEach(known -> known.keySet().retainAll(open));
        greeted.retainAll(open);
        List.of(begun, fresh, halted, whole).forEach(known -> known.retainAll(open));
        open.stream().filter(library -> !isKnown(library)).forEach(this::read);
        make();
    }

    private boolean isKnown(Library library) {
        return stocks.containsKey(library) || isUnderWay(library);
    }

    private boolean isUnderWay(Library library) {
        Tasks.Running running = reading.get(library);
        return running != null && !running.over();
    }

    /** Reads a library anew. */
    void read(Library library) {
        Tasks.Running before = reading.get(library);
        if (before != null) {
            before.cancel();
        }
        if (whole.contains(library)) {
            readAll(library);
        } else {
            begun.add(library);
            reading.put(
                    library,
                    room.work(
                            (Progress progress) -> Stock.first(library),
                            first -> showFirst(library, first),
                            () -> stopped(library)));
        }
        changed.run();
    }

    /** While a library is read for the first time, its first plates are shown. */
    private void showFirst(Library library, Stock first) {
        if (room.open().contains(library)) {
            stocks.putIfAbsent(library, first);
            fresh.add(library);
            make();
        }
    }

    /** What is held has been seen: reads on where only first plates were read. */
    void seen() {
        List<Library> waiting = List.copyOf(halted);
        halted.clear();
        waiting.forEach(this::readAll);
    }

    private void readAll(Library library) {
        reading.put(
                library,
                room.work(
                        progress -> Stock.read(library, new Steps(progress)),
                        stock -> {
                            reading.remove(library);
                            whole.add(library);
                            stocks.put(library, stock);
                            further.put(library, stock);
                            make();
                        },
                        () -> stopped(library)));
    }

    /** Reading did not come to its end, or newer reading took its place. */
    private void stopped(Library library) {
        if (!isUnderWay(library)) {
            begun.remove(library);
        }
        room.front().busy("");
        changed.run();
    }

    /** Tells in the window how far a long reading has come, a few times. */
    private final class Steps implements Progress {
        private static final int LONG = 1000;

        private final Progress asked;
        private int told;

        Steps(Progress asked) {
            this.asked = asked;
        }

        @Override
        public void at(int done, int total, String what) {
            int now = total < LONG ? told : (int) (20L * done / total);
            if (now != told) {
                told = now;
                String words = done == total ? "" : "Reading plates: " + done + " of " + total;
                room.tasks().onEventThread(() -> room.front().busy(words));
            }
        }

        @Override
        public boolean cancelled() {
            return asked.cancelled();
        }
    }

    /** One after the other, so that other work finds its way between them. */
    private void readMore(Library library, Stock stock) {
        room.work((Progress progress) -> library.unsent(), ids -> {
            unsent.put(library, ids);
            make();
            room.work((Progress more) -> Telling.of(library), all -> {
                told.put(library, all);
                make();
                check(stock);
            });
        });
    }

    private void check(Stock stock) {
        room.work(
                progress -> {
                    checked.check(stock, progress);
                    return stock;
                },
                done -> make());
    }

    void readDrafts(Library library) {
        room.work((Progress progress) -> drafts.all(library.folder()), found -> {
            drawn.put(library, found);
            make();
            if (greeted.add(library) && !found.isEmpty()) {
                room.front().say(words(found));
            }
        });
    }

    private static String words(List<KeptDraft> found) {
        String titles =
                found.stream().map(draft -> "\"" + draft.plate().title() + "\"").collect(Collectors.joining(", "));
        return found.size() == 1
                ? "A draft is not saved as a version yet: " + titles + "."
                : found.size() + " drafts are not saved as versions yet: " + titles + ".";
    }

    private void make() {
        List<Held.Part> parts = new ArrayList<>();
        for (Library library : room.open()) {
            if (stocks.containsKey(library)) {
                parts.add(new Held.Part(
                        stocks.get(library),
                        drawn.getOrDefault(library, List.of()),
                        unsent.getOrDefault(library, Set.of()),
                        told.getOrDefault(library, Map.of()),
                        checked.errors()));
            }
        }
        Held before = held;
        Set<Library> read = Set.copyOf(whole);
        Set<Library> first = Set.copyOf(fresh);
        LibraryNames names = room.names();
        making.ask(progress -> before.with(parts, names), now -> {
            held = now;
            begun.removeAll(read);
            first.stream().filter(fresh::remove).forEach(halted::add);
            changed.run();
            making.ask(progress -> now.ready(), same -> {});
            read.forEach(library -> Optional.ofNullable(further.remove(library)).ifPresent(stock -> {
                readDrafts(library);
                readMore(library, stock);
            }));
        });
    }
}
