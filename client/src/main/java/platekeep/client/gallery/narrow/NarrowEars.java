package platekeep.client.gallery.narrow;

import java.util.Optional;
import platekeep.model.find.Group;

/** Hears what she chooses to narrow the gallery down by. */
public interface NarrowEars {

    /** Asks for a value, or no longer. */
    void turn(Group group, String value);

    /** Leaves a group open again. */
    void open(Group group);

    /** One of the chosen values instead of all, or the other way round. */
    void turnMatch(Group group);

    /** Something was typed for a group; says what is wrong with it. */
    Optional<String> typed(Group group, String text);
}
