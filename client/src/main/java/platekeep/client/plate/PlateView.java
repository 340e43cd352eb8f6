package platekeep.client.plate;

import java.util.List;
import java.util.Optional;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;

/** The Plate screen as its presenters see it. */
public interface PlateView {

    void show(PlateState state);

    /** Says in words what lies under the pointer or the cursor; an empty text says nothing. */
    void place(String words);

    /** Scrolls so that a spot is seen, and points it out. */
    void pointOut(Spot spot);

    /**
     * Asks why a version is saved.
     *
     * @param suggestion what was changed, in words
     * @param hands names of those in whose name it can be; the first is her own
     * @return empty when she gave it up
     */
    Optional<SaveAnswer> askReason(String suggestion, List<String> hands);

    /** Asks why a plate is put away; empty when she gave it up. */
    Optional<String> askPutAway(String title);

    /** Asks for a name for a version; empty when she gave it up. */
    Optional<String> askVersionName(String versionWords);

    /** Asks for a colour; empty when she gave it up. */
    Optional<Colour> askColour(String title, Colour before);

    /** Asks whether to go ahead with something. */
    Consent askConsent(String question, String yes);

    /**
     * An answer to why a version is saved.
     *
     * @param reason not blank
     * @param hand which of the hands
     */
    record SaveAnswer(String reason, int hand) {}

    /** An answer to a question for yes or no. */
    enum Consent {
        YES,
        NO
    }
}
