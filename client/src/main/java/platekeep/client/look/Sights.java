package platekeep.client.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.look.Signature;
import platekeep.model.plate.Plate;

/**
 * What plates look like, and what they once said, remembered by the id of their content so that each is made out once.
 * Kept in memory only: reading a plate costs as much as making its signature out. For many threads.
 */
final class Sights {
    private final Map<String, Optional<Signature>> signatures = new ConcurrentHashMap<>();
    private final Map<String, String> texts = new ConcurrentHashMap<>();

    /** Forgets everything, as when libraries were closed. */
    void forget() {
        signatures.clear();
        texts.clear();
    }

    /** All plates of some libraries as they are now. */
    List<Sight> now(List<Library> libraries, Progress progress) throws LibraryException {
        List<Sight> sights = new ArrayList<>();
        for (Library library : libraries) {
            List<Entry> entries = library.list(progress);
            for (int i = 0; i < entries.size(); i++) {
                Entry entry = entries.get(i);
                look(progress, i, entries.size());
                entry.plate()
                        .ifPresent(plate -> sights.add(
                                new Sight(library, plate, entry.content(), signature(entry.content(), plate))));
            }
        }
        return sights;
    }

    private static void look(Progress progress, int done, int total) {
        if (progress.cancelled()) {
            throw new CancellationException();
        }
        if (done % 100 == 0) {
            progress.at(done, total, "looking at plates");
        }
    }

    private Optional<Signature> signature(String content, Plate plate) {
        return signatures.computeIfAbsent(content, c -> Signature.of(plate));
    }

    /** The texts that plates of a library have no more; of each the signature and the words are known afterwards. */
    List<PastPlate> past(Library library, Progress progress) throws LibraryException {
        List<PastPlate> past =
                library.past().stream().filter(one -> !one.isNow()).toList();
        List<PastPlate> unknown =
                past.stream().filter(one -> !texts.containsKey(one.content())).toList();
        library.readPast(unknown, progress, (one, entry) -> {
            signatures.put(one.content(), entry.plate().flatMap(Signature::of));
            texts.put(one.content(), entry.plate().map(PlateWords::of).orElse(""));
        });
        return past;
    }

    /** What a text that was read looks like. */
    Optional<Signature> signature(PastPlate past) {
        return signatures.getOrDefault(past.content(), Optional.empty());
    }

    /** The words of a text that was read, in the form of {@link PlateWords}. */
    String words(PastPlate past) {
        return texts.getOrDefault(past.content(), "");
    }

    /** The ids of the plates that are there. */
    static Set<String> ids(List<Sight> now) {
        return Set.copyOf(
                now.stream().map(sight -> sight.plate().id()).distinct().toList());
    }
}
