package platekeep.client.join;

import java.util.Optional;
import platekeep.client.plate.edit.Steps;
import platekeep.model.plate.Plate;

/** A plate on the table: what was found, and the steps that were taken since. Lives on the event thread. */
final class Sitting {
    private final Case of;
    private final Steps steps;
    private final Plate begun;
    private int selected;

    /**
     * @param kept what was decided before the window was closed, if anything
     */
    Sitting(Case of, Optional<Plate> kept) {
        this.of = of;
        this.steps = new Steps(of.before());
        if (isArrived()) {
            steps.take("Join", of.joined());
        }
        kept.ifPresent(plate -> steps.take("Go on where you stopped", plate));
        this.begun = steps.now();
        this.selected = firstOpen();
    }

    private int firstOpen() {
        for (int i = 0; i < of.clashes().size(); i++) {
            if (ClashAnswers.isOpen(of.clashes().get(i), begun)) {
                return i;
            }
        }
        return of.clashes().size() + of.settlements().size() > 0 ? 0 : -1;
    }

    Case of() {
        return of;
    }

    Steps steps() {
        return steps;
    }

    boolean isArrived() {
        return of.origin() == Case.Origin.ARRIVED;
    }

    /** The plate as decided so far. */
    Plate now() {
        return steps.now();
    }

    /** Whether the join stands; she may have gone back to before it. */
    boolean isJoined() {
        return !isArrived()
                || of.joined().equals(of.before())
                || steps.undoName().isPresent();
    }

    /** Whether there is something to save. */
    boolean isChanged() {
        return isArrived() ? isJoined() : !now().equals(of.before());
    }

    /** What is to be kept for the case that the window closes; before the join, what it made. */
    Plate toKeep() {
        return isJoined() ? now() : of.joined();
    }

    int selected() {
        return selected;
    }

    void select(int matter) {
        selected = matter;
    }

    int open() {
        Plate now = now();
        return isJoined()
                ? (int) of.clashes().stream()
                        .filter(c -> ClashAnswers.isOpen(c, now))
                        .count()
                : of.clashes().size();
    }

    Boards.Standing standing() {
        return new Boards.Standing(of, now(), isJoined(), isChanged(), steps.undoName(), steps.redoName());
    }
}
