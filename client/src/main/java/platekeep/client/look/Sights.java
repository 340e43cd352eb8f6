package platekeep.client.look;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.InParts;
import platekeep.client.task.Progress;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.look.Signature;
import platekeep.model.look.Trace;
import platekeep.model.plate.Plate;

/**
 * What plates look like, and what they were once and were found by, remembered by the id of their content so that each is made out once
 * and each text that is no more is read at most once for its words and once for its looks. Kept in memory only, about a kilobyte a text. For many threads.
 */
final class Sights {
    /** So many plates are looked at before it is told how far that has come. */
    private static final int TOGETHER = 256;

    private static final int SMALL_PART = 16;

    private final Map<String, Optional<Signature>> signatures = new ConcurrentHashMap<>();
    private final Map<String, Optional<Summary>> summaries = new ConcurrentHashMap<>();
    private final Map<String, Trace> traces = new ConcurrentHashMap<>();
    private final Set<String> damaged = ConcurrentHashMap.newKeySet();
    private final InParts inParts;

    /**
     * @param helpers look at plates too
     */
    Sights(Executor helpers) {
        this.inParts = InParts.working(helpers);
    }

    /** Forgets everything, as when libraries were closed. */
    void forget() {
        signatures.clear();
        traces.clear();
        damaged.clear();
        summaries.clear();
    }

    /** All plates of some libraries as they are now, with what they look like. */
    List<Sight> now(List<Library> libraries, Progress progress) throws LibraryException {
        return now(libraries, progress, soFar -> {});
    }

    /**
     * The same.
     *
     * @param soFar hears, while they are read and looked at, of those that are known: soon some, then more and more
     */
    List<Sight> now(List<Library> libraries, Progress progress, Consumer<List<Sight>> soFar) throws LibraryException {
        List<Sight> sights = new ArrayList<>();
        for (Library library : libraries) {
            List<Sight> before = List.copyOf(sights);
            Telling telling = new Telling(before, soFar);
            telling.all(library, library.list(progress, some -> telling.all(library, some, progress)), progress);
            sights.addAll(telling.seen);
        }
        return sights;
    }

    /** Looks at the plates of a library as they are read. */
    private final class Telling {
        private static final int FIRST = 250;

        private final List<Sight> before;
        private final Consumer<List<Sight>> soFar;
        private List<Sight> seen = List.of();
        private int next = FIRST;

        Telling(List<Sight> before, Consumer<List<Sight>> soFar) {
            this.before = before;
            this.soFar = soFar;
        }

        /** Looks at all of these; what was looked at before costs nothing. */
        void all(Library library, List<Entry> entries, Progress progress) {
            List<Sight> all = new ArrayList<>();
            for (int i = 0; i < entries.size(); i++) {
                Entry entry = entries.get(i);
                if (i % TOGETHER == 0) {
                    look(progress, i, entries.size());
                    together(entries.subList(i, Math.min(entries.size(), i + TOGETHER)));
                }
                entry.plate()
                        .ifPresent(plate ->
                                all.add(new Sight(library, plate, entry.content(), signature(entry.content(), plate))));
                if (all.size() == next && all.size() > seen.size()) {
                    next *= 2;
                    tell(all);
                }
            }
            seen = all;
        }

        private void tell(List<Sight> all) {
            List<Sight> told = new ArrayList<>(before);
            told.addAll(all);
            soFar.accept(told);
        }
    }

    private static void look(Progress progress, int done, int total) {
        if (progress.cancelled()) {
            throw new CancellationException();
        }
        progress.at(done, total, "looking at plates");
    }

    /** Looks at some plates on several threads. */
    private void together(List<Entry> entries) {
        List<Entry> unknown = entries.stream()
                .filter(entry -> !signatures.containsKey(entry.content()))
                .toList();
        try {
            inParts.by(SMALL_PART)
                    .each(
                            unknown.size(),
                            done -> {},
                            (from, to) -> unknown.subList(from, to)
                                    .forEach(entry ->
                                            entry.plate().ifPresent(plate -> signature(entry.content(), plate))));
        } catch (IOException e) {
            // nothing is read here, so the thread was asked to stop
            throw new CancellationException();
        }
    }

    private Optional<Signature> signature(String content, Plate plate) {
        return signatures.computeIfAbsent(content, c -> Signature.of(plate));
    }

    /** Does something for many on helpers too. */
    InParts inParts() {
        return inParts;
    }

    /** What patches a plate's chart has. */
    Trace trace(String content, Plate plate) {
        return traces.computeIfAbsent(content, c -> Trace.of(plate));
    }

    /** The texts that plates of a library have no more, the newest first; what they look like is known afterwards. */
    List<PastPlate> past(Library library, Progress progress) throws LibraryException {
        List<PastPlate> past =
                library.past().stream().filter(one -> !one.isNow()).toList();
        List<PastPlate> unknown = past.stream()
                .filter(one -> !traces.containsKey(one.content()) && !damaged.contains(one.content()))
                .toList();
        library.readPast(unknown, progress, (one, entry) -> {
            entry.plate()
                    .ifPresentOrElse(
                            plate -> traces.put(one.content(), Trace.of(plate)), () -> damaged.add(one.content()));
            signatures.put(one.content(), entry.plate().flatMap(Signature::of));
        });
        return past;
    }

    /** Reads what texts that are not known yet are found by. */
    void learn(Library library, List<PastPlate> which, Progress progress) throws LibraryException {
        List<PastPlate> unknown = which.stream()
                .filter(one -> !summaries.containsKey(one.content()))
                .toList();
        library.readPast(
                unknown,
                progress,
                (one, entry) -> summaries.put(
                        one.content(),
                        entry.plate().map(plate -> Summary.of(one.content(), plate, Surroundings.NONE))));
    }

    /** What a text that was read is found by, in no surroundings; empty where it is damaged. */
    Optional<Summary> summary(PastPlate past) {
        return summaries.getOrDefault(past.content(), Optional.empty());
    }

    /** What a text that was read looks like. */
    Optional<Signature> signature(PastPlate past) {
        return signatures.getOrDefault(past.content(), Optional.empty());
    }

    /** What patches a text that was read has; empty where it is damaged. */
    Optional<Trace> trace(PastPlate past) {
        return Optional.ofNullable(traces.get(past.content()));
    }
}
