package platekeep.client.git.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Function;
import org.eclipse.jgit.lib.ObjectId;

/**
 * Finds what one of two lines of versions has and the other has not. Both are walked back together, the newest version
 * first, each marked with the lines that lead to it, until all that is left was common before the lines parted: the
 * cost is that of the part where they differ, not of the whole history.
 */
final class Sides {
    private static final int FIRST = 1;
    private static final int SECOND = 2;
    private static final int BOTH = FIRST | SECOND;

    private final Function<ObjectId, Step> steps;
    private final Map<ObjectId, Integer> marks = new HashMap<>();
    private final PriorityQueue<Step> queue;
    private int undecided;

    Sides(Function<ObjectId, Step> steps, Comparator<Step> newestFirst) {
        this.steps = steps;
        this.queue = new PriorityQueue<>(newestFirst);
    }

    /** The versions that lead to {@code first} but not to {@code second}, newest first. */
    List<Step> onlyFirst(ObjectId first, ObjectId second) {
        mark(first, FIRST);
        mark(second, SECOND);
        List<Step> out = new ArrayList<>();
        while (undecided > 0) {
            Step step = queue.remove();
            int mark = marks.get(step.version());
            if (mark != BOTH) {
                undecided--;
            }
            if (mark == FIRST) {
                out.add(step);
            }
            step.parents().forEach(parent -> mark(parent, mark));
        }
        return out;
    }

    private void mark(ObjectId version, int mark) {
        int old = marks.getOrDefault(version, 0);
        int now = old | mark;
        if (old == 0) {
            queue.add(steps.apply(version));
            undecided += now == BOTH ? 0 : 1;
        } else if (old != BOTH && now == BOTH) {
            undecided--;
        }
        marks.put(version, now);
    }
}
