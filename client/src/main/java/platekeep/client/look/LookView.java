package platekeep.client.look;

import java.util.Optional;

/** The search by look as its presenter sees it. */
public interface LookView {

    void show(LookState state);

    /** Shows more of the chosen hit; empty when none is chosen. */
    void show(Optional<LookState.Detail> detail);

    /**
     * Asks whether to bring a plate back as it was.
     *
     * @param question what would be done
     */
    boolean askBringBack(String question);
}
