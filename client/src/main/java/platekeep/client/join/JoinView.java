package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Spot;

/** The Join screen as its presenter sees it. */
interface JoinView {
    void show(JoinState state);

    /** Brings a place of the joined chart into sight. */
    void reveal(Area area);

    /** Points out a cable of the joined chart. */
    void pointOut(Spot spot);

    /** Tells which changes a new finding comes from. */
    void causes(List<String> words);

    /** Tells what lies under the pointer or the cursor. */
    void place(String words);

    /** Asks why this version; empty when she would rather not save now. */
    Optional<String> askReason(String suggestion);

    /** Asks before something that she might not mean. */
    Consent askConsent(String question, String yes);

    /** An answer to a question. */
    enum Consent {
        YES,
        NO
    }
}
