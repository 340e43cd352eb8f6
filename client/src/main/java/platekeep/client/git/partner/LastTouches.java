package platekeep.client.git.partner;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.history.Step;
import platekeep.client.library.Version;

/** Which of some versions changed each plate last. */
final class LastTouches {
    private final Map<String, ObjectId> last = new HashMap<>();

    LastTouches(List<Step> newestFirst) {
        newestFirst.forEach(step -> step.touches().forEach(touch -> last.putIfAbsent(touch.plateId(), step.version())));
    }

    /** The version that changed a plate last; empty when none of them did. */
    Optional<Version> of(Workroom room, String plateId) throws IOException {
        ObjectId version = last.get(plateId);
        return version == null ? Optional.empty() : Optional.of(room.version(version));
    }
}
