package platekeep.client.room;

import java.util.Optional;
import platekeep.client.library.Hand;

/** The window as presenters see it. All calls come on the event thread. */
public interface Front {

    /** Brings the screen to the front that takes the place, and shows it there. */
    void show(Place place);

    /** Tells in one line what was done. */
    void say(String sentence);

    /** Tells what went wrong: what happened, what is untouched, what to do. Stays until she has seen it. */
    void trouble(String sentences);

    /** Tells how far something has come that she waits for; an empty text ends it. */
    void busy(String what);

    /**
     * Asks for her name and address.
     *
     * @param library the library's name, for the question
     * @param before what she answered the last time; both may be empty texts
     * @return empty when she would rather not say now
     */
    Optional<Hand> askHand(String library, Hand before);
}
