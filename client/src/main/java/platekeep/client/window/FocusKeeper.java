package platekeep.client.window;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JFrame;
import javax.swing.Timer;

/**
 * Sees to it that some part of the window has the keyboard while the window is in front. Where the part that had it
 * goes (a page of cards is turned, a dialog closes), the platform leaves the keyboard with nobody at times, and then no
 * key works until the next click.
 */
final class FocusKeeper {
    /** Between two owners there is none for a moment; milliseconds until that is over for certain. */
    private static final int MOMENT = 250;

    private final JFrame frame;
    private final Timer look = new Timer(MOMENT, e -> look());

    private FocusKeeper(JFrame frame) {
        this.frame = frame;
        look.setRepeats(false);
    }

    static void keepIn(JFrame frame) {
        FocusKeeper keeper = new FocusKeeper(frame);
        frame.getRootPane().setFocusable(true);
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.addPropertyChangeListener("focusOwner", e -> keeper.look.restart());
        manager.addPropertyChangeListener("focusedWindow", e -> keeper.look.restart());
    }

    private void look() {
        if (frame.isFocused() && frame.getFocusOwner() == null) {
            Component last = frame.getMostRecentFocusOwner();
            boolean isThere = last != null && last != frame && last.isShowing() && last.isEnabled();
            (isThere ? last : frame.getRootPane()).requestFocusInWindow();
        }
    }
}
