package platekeep.client.paper;

import java.util.Optional;
import platekeep.model.find.tag.Tags;

/** The Paper screen as its presenter sees it. */
public interface PaperView {

    void show(PaperState state);

    /** Puts the cursor into the title, ready to be typed over. */
    void toTitle();

    /** What the form holds now. */
    Facts typed();

    /** What is to be taken from many that are chosen; {@link Tags#NONE} where one is. */
    Tags lost();

    /** Asks why the version is saved; empty when she gave it up. */
    Optional<String> askReason(String suggestion);
}
