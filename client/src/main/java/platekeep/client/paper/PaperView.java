package platekeep.client.paper;

import java.util.Optional;

/** The Paper screen as its presenter sees it. */
public interface PaperView {

    void show(PaperState state);

    /** Puts the cursor into the title, ready to be typed over. */
    void toTitle();

    /** What the form holds now. */
    Facts typed();

    /** Asks why the version is saved; empty when she gave it up. */
    Optional<String> askReason(String suggestion);
}
