package platekeep.client.window;

import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JFrame;
import platekeep.client.task.Tasks;

/**
 * Sees to it that some part of the window has the keyboard while the window is in front. Where the part that had it
 * goes (a page of cards is turned, a dialog closes), the platform leaves the keyboard with nobody at times, and then no
 * key works until the next click.
 */
final class FocusKeeper {
    private final JFrame frame;
    private final Tasks tasks;

    private FocusKeeper(JFrame frame, Tasks tasks) {
        this.frame = frame;
        this.tasks = tasks;
    }

    static void keepIn(JFrame frame, Tasks tasks) {
        FocusKeeper keeper = new FocusKeeper(frame, tasks);
        frame.getRootPane().setFocusable(true);
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener("focusOwner", e -> keeper.later());
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener("focusedWindow", e -> keeper.later());
    }

    /** Between two owners there is none for a moment, so this looks when what is under way is over. */
    private void later() {
        tasks.onEventThread(() -> {
            boolean isNobodys = frame.isFocused() && frame.getFocusOwner() == null;
            if (isNobodys) {
                JComponent root = frame.getRootPane();
                root.requestFocusInWindow();
            }
        });
    }
}
