package platekeep.client.room;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;

/** A screen of the window. All calls come on the event thread. */
public interface Screen {

    /** Its word on the rail and in the menu. */
    String word();

    /** Its sign on the rail. */
    Icon icon();

    /** What it shows; the same at every call. */
    JComponent panel();

    /** Whether a place is one of its own. */
    boolean takes(Place place);

    /** Shows a place of its own; it comes to the front right after. */
    void show(Place place);

    /** It comes to the front, by {@link #show} or from the rail; the focus goes to where the keys are of use. */
    default void entered() {}

    /** Menus of its own, shown while it is in front. */
    default List<JMenu> menus() {
        return List.of();
    }

    /** The window closes: what is not safe yet is made so before this returns. */
    default void closing() {}
}
