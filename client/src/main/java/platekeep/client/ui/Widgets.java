package platekeep.client.ui;

import java.awt.Color;
import java.awt.Component;
import java.awt.Cursor;
import java.awt.LayoutManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SpinnerNumberModel;
import javax.swing.border.Border;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultFormatter;

/** Makes the small parts that all screens share, so that they look and behave alike. Each gets a name for tests. */
public final class Widgets {
    private Widgets() {}

    /** A label that follows the theme. */
    public static JLabel label(String name, String text) {
        JLabel label = new JLabel(text);
        label.setName(name);
        return label;
    }

    /** A large label. */
    public static JLabel title(String name, String text) {
        return styled(label(name, text), "font: +7");
    }

    /** A label over a group. */
    public static JLabel heading(String text) {
        return styled(new JLabel(text), "font: bold -1; foreground: $Platekeep.faintInk");
    }

    /** A label that may be overlooked. */
    public static JLabel faint(String name, String text) {
        return styled(label(name, text), "foreground: $Platekeep.faintInk");
    }

    /** A text that wraps, to be read and copied but not changed. */
    public static JTextArea prose(String name, String text) {
        JTextArea area = new JTextArea(text);
        area.setName(name);
        if (area.getCaret() instanceof DefaultCaret caret) {
            // a new text must not scroll whatever it stands in
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setOpaque(false);
        area.setFocusable(false);
        area.setBorder(null);
        return area;
    }

    /** A button. */
    public static JButton button(String name, String text, Runnable press) {
        JButton button = new JButton(action(text, press));
        button.setName(name);
        return button;
    }

    /** The button that a reader is most likely to want. */
    public static JButton mainButton(String name, String text, Runnable press) {
        JButton button = button(name, text, press);
        styled(
                button,
                "background: $Platekeep.accent; foreground: $Platekeep.card; borderColor: $Platekeep.accent;"
                        + " hoverBackground: darken($Platekeep.accent,4%); pressedBackground: darken($Platekeep.accent,8%);"
                        + " focusedBackground: $Platekeep.accent");
        return button;
    }

    /** A flat button with an icon and a tool tip. */
    public static JButton iconButton(String name, Icon icon, String tip, Runnable press) {
        JButton button = new JButton(icon);
        button.setName(name);
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleName(tip);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.addActionListener(e -> press.run());
        return button;
    }

    /** A flat button that stays down. */
    public static JToggleButton iconToggle(String name, Icon icon, String tip) {
        JToggleButton button = new JToggleButton(icon);
        button.setName(name);
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleName(tip);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        return button;
    }

    /** Something to do, with its words. */
    public static Action action(String text, Runnable press) {
        return new AbstractAction(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                press.run();
            }
        };
    }

    /** A menu item with its key; an empty key is none. */
    public static JMenuItem item(String name, String text, String key, Runnable press) {
        JMenuItem item = new PromptItem(action(text, press));
        item.setName(name);
        if (!key.isEmpty()) {
            item.setAccelerator(stroke(key));
        }
        return item;
    }

    /** Does at once what its key asks for; by itself it would look pressed for 68 ms, in which nothing else is done. */
    private static final class PromptItem extends JMenuItem {
        private static final long serialVersionUID = 1L;

        PromptItem(Action action) {
            super(action);
        }

        @Override
        public void doClick(int pressTime) {
            super.doClick(0);
        }
    }

    /** Lets a key do something while the focus is in a component or in anything inside it. */
    public static void onKey(JComponent where, String key, Runnable press) {
        where.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(stroke(key), key);
        where.getActionMap().put(key, action(key, press));
    }

    /** Lets a key do something while the focus is on this very component. */
    public static void onOwnKey(JComponent where, String key, Runnable press) {
        where.getInputMap(JComponent.WHEN_FOCUSED).put(stroke(key), key);
        where.getActionMap().put(key, action(key, press));
    }

    /** The key that a text such as {@code ctrl shift Z} names. */
    public static KeyStroke stroke(String key) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        if (stroke == null) {
            throw new IllegalArgumentException("no key: " + key);
        }
        return stroke;
    }

    /** A panel that paints no ground of its own. */
    public static JPanel clear(LayoutManager layout) {
        JPanel panel = new JPanel(layout);
        panel.setOpaque(false);
        return panel;
    }

    /** A scroll pane without a frame that scrolls at a good pace. */
    public static JScrollPane scroll(String name, Component inside) {
        JScrollPane pane = new JScrollPane(inside);
        pane.setName(name);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.getVerticalScrollBar().setUnitIncrement(24);
        pane.getHorizontalScrollBar().setUnitIncrement(24);
        return pane;
    }

    /** A fine line at one side. */
    public static Border edge(int top, int left, int bottom, int right) {
        return new ThemedEdge(top, left, bottom, right);
    }

    /**
     * A whole number between two, both included; each key that makes it another good number is heard at once.
     *
     * @param value kept between the two
     */
    public static JSpinner number(String name, int value, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(Math.max(least, Math.min(most, value)), least, most, 1));
        spinner.setName(name);
        JSpinner.NumberEditor editor = (JSpinner.NumberEditor) spinner.getEditor();
        ((DefaultFormatter) editor.getTextField().getFormatter()).setCommitsOnValidEdit(true);
        return spinner;
    }

    /** Air on all sides. */
    public static Border air(int top, int left, int bottom, int right) {
        return BorderFactory.createEmptyBorder(top, left, bottom, right);
    }

    /** Styles a component by the theme's own words, which survive a change of theme. */
    public static <T extends JComponent> T styled(T component, String style) {
        component.putClientProperty("FlatLaf.style", style);
        return component;
    }

    /** Shows that a component can be clicked. */
    public static void clickable(JComponent component) {
        component.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    }

    /** Black or white, whichever stands out more from a colour. */
    public static Color readableOn(Color ground) {
        double luminance = 0.2126 * linear(ground.getRed())
                + 0.7152 * linear(ground.getGreen())
                + 0.0722 * linear(ground.getBlue());
        return luminance > 0.179 ? Color.BLACK : Color.WHITE;
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
