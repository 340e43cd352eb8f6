package platekeep.client.plate.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * The steps by which a plate was changed, each with a name, to be taken back and done again without limit. Steps of one
 * stroke count as one.
 */
public final class Steps {
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private Plate now;
    private boolean strokeIsOpen;

    private record Step(String name, Plate before, Plate after) {}

    public Steps(Plate start) {
        this.now = start;
    }

    /** The plate as it is now. */
    public Plate now() {
        return now;
    }

    /** Takes a step; one that changes nothing is none. */
    public void take(String name, Plate after) {
        strokeIsOpen = false;
        push(name, after);
    }

    /** Takes a part of a stroke, which until {@link #endStroke} is one step with the parts before it. */
    public void stroke(String name, Plate after) {
        if (strokeIsOpen && !done.isEmpty()) {
            if (!after.equals(now)) {
                Step first = done.pop();
                done.push(new Step(name, first.before(), after));
                now = after;
            }
        } else if (push(name, after)) {
            strokeIsOpen = true;
        }
    }

    /** What the plate was before the stroke that is open; as it is now where none is. */
    public Plate strokeBase() {
        return strokeIsOpen && !done.isEmpty() ? done.peek().before() : now;
    }

    /** Ends a stroke; what follows is a step of its own. A stroke that came back to where it began is none. */
    public void endStroke() {
        if (strokeIsOpen
                && !done.isEmpty()
                && done.peek().before().equals(done.peek().after())) {
            now = done.pop().before();
        }
        strokeIsOpen = false;
    }

    /** Puts a plate in the place of the present one that means the same, without a step. */
    public void settle(Plate same) {
        strokeIsOpen = false;
        now = same;
    }

    private boolean push(String name, Plate after) {
        if (after.equals(now)) {
            return false;
        }
        done.push(new Step(name, now, after));
        undone.clear();
        now = after;
        return true;
    }

    /** The name of the step that {@link #undo} takes back. */
    public Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(Step::name);
    }

    /** The name of the step that {@link #redo} does again. */
    public Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }

    /** Takes the last step back, if there is one. */
    public void undo() {
        strokeIsOpen = false;
        if (!done.isEmpty()) {
            Step step = done.pop();
            undone.push(step);
            now = step.before();
        }
    }

    /** Does the step again that was taken back last, if there is one. */
    public void redo() {
        strokeIsOpen = false;
        if (!undone.isEmpty()) {
            Step step = undone.pop();
            done.push(step);
            now = step.after();
        }
    }
}
