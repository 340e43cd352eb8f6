package platekeep.client.git.history;

import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;

/**
 * A version as the index knows it. All of it follows from the version's id alone, so it never gets old.
 *
 * @param version its id
 * @param parents the versions it was made from
 * @param order its time in seconds, put right so that it is later than each parent's whatever the clocks said: sorted
 *     by this, a version never comes before one that it was made from
 * @param touches what it did to plates
 */
public record Step(ObjectId version, List<ObjectId> parents, long order, List<Touch> touches) {
    public Step {
        parents = List.copyOf(parents);
        touches = List.copyOf(touches);
    }

    /** What it did to one plate, if anything. */
    public Optional<Touch> touch(String plateId) {
        return touches.stream().filter(touch -> touch.plateId().equals(plateId)).findFirst();
    }
}
