package platekeep.client.gallery;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.client.library.Arrivals;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;

/** Which plates have versions that were not sent to the partner yet. */
final class Unsent {

    private Unsent() {}

    /** Ids of these plates; none where the library is not shared. In the background. */
    static Set<String> plates(Library library, Progress progress) throws LibraryException {
        if (library.sharedCopy().isEmpty()) {
            return Set.of();
        }
        Arrivals seen = library.look(progress);
        Set<String> waiting = seen.waiting().stream().map(Version::id).collect(Collectors.toSet());
        Set<String> unsent = new HashSet<>();
        if (waiting.isEmpty()) {
            return unsent;
        }
        for (Entry entry : library.list(progress)) {
            String id = entry.plate().map(plate -> plate.id()).orElse("");
            if (!id.isEmpty() && isAmong(library, id, waiting)) {
                unsent.add(id);
            }
        }
        return unsent;
    }

    private static boolean isAmong(Library library, String plateId, Set<String> versions) throws LibraryException {
        for (PlateVersion version : library.history(plateId)) {
            if (versions.contains(version.version().id())) {
                return true;
            }
        }
        return false;
    }
}
