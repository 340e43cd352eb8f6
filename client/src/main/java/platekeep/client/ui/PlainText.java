package platekeep.client.ui;

import com.formdev.flatlaf.ui.FlatButtonUI;
import com.formdev.flatlaf.ui.FlatCheckBoxMenuItemUI;
import com.formdev.flatlaf.ui.FlatCheckBoxUI;
import com.formdev.flatlaf.ui.FlatLabelUI;
import com.formdev.flatlaf.ui.FlatMenuItemUI;
import com.formdev.flatlaf.ui.FlatMenuUI;
import com.formdev.flatlaf.ui.FlatRadioButtonMenuItemUI;
import com.formdev.flatlaf.ui.FlatRadioButtonUI;
import com.formdev.flatlaf.ui.FlatToggleButtonUI;
import com.formdev.flatlaf.ui.FlatToolTipUI;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * Makes every label, button, menu item, tool tip and list cell show its text as it is. Swing reads a text that begins
 * with an html tag as mark-up, and would fetch pictures for it from the network; a plate's title comes from somebody
 * else's file, so it must never be read so. What a component looks like is set up before its text is, which is why this
 * sits in the look and reaches also components that Swing makes by itself.
 */
public final class PlainText {
    private static final String OFF = "html.disable";

    private PlainText() {}

    /** Takes the place of the look's own delegates; after each change of theme. */
    static void install() {
        for (Class<?> delegate : PlainText.class.getDeclaredClasses()) {
            UIManager.put(delegate.getSimpleName() + "UI", delegate.getName());
        }
    }

    private static void off(JComponent c) {
        c.putClientProperty(OFF, Boolean.TRUE);
    }

    /** For labels and the cells of lists, tables and trees. */
    public static final class Label extends FlatLabelUI {
        private Label() {
            super(false);
        }

        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new Label();
        }
    }

    /** For buttons. */
    public static final class Button extends FlatButtonUI {
        private Button() {
            super(false);
        }

        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new Button();
        }
    }

    /** For toggle buttons. */
    public static final class ToggleButton extends FlatToggleButtonUI {
        private ToggleButton() {
            super(false);
        }

        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new ToggleButton();
        }
    }

    /** For check boxes. */
    public static final class CheckBox extends FlatCheckBoxUI {
        private CheckBox() {
            super(false);
        }

        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new CheckBox();
        }
    }

    /** For radio buttons. */
    public static final class RadioButton extends FlatRadioButtonUI {
        private RadioButton() {
            super(false);
        }

        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new RadioButton();
        }
    }

    /** For menu items. */
    public static final class MenuItem extends FlatMenuItemUI {
        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new MenuItem();
        }
    }

    /** For menus. */
    public static final class Menu extends FlatMenuUI {
        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new Menu();
        }
    }

    /** For menu items with a tick. */
    public static final class CheckBoxMenuItem extends FlatCheckBoxMenuItemUI {
        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new CheckBoxMenuItem();
        }
    }

    /** For menu items of which one is on. */
    public static final class RadioButtonMenuItem extends FlatRadioButtonMenuItemUI {
        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new RadioButtonMenuItem();
        }
    }

    /** For tool tips. */
    public static final class ToolTip extends FlatToolTipUI {
        public static ComponentUI createUI(JComponent c) {
            off(c);
            return new ToolTip();
        }
    }
}
