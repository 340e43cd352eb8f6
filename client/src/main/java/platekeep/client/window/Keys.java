package platekeep.client.window;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** The keys of the screen in front, as its menus have them, so that the list is never out of date. */
final class Keys {
    private static final String[] HEADINGS = {"Menu", "What", "Key"};

    private Keys() {}

    /**
     * A line of a menu.
     *
     * @param key as people write it; empty where it has none
     */
    record Line(String menu, String what, String key) {}

    /** All lines of a menu bar, in order. */
    static List<Line> of(JMenuBar bar) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < bar.getMenuCount(); i++) {
            collect(bar.getMenu(i), bar.getMenu(i).getText(), lines);
        }
        return lines;
    }

    private static void collect(JMenu menu, String name, List<Line> into) {
        for (Component part : menu.getMenuComponents()) {
            if (part instanceof JMenu inner) {
                collect(inner, name + " › " + inner.getText(), into);
            } else if (part instanceof JMenuItem item) {
                into.add(new Line(name, item.getText(), words(Optional.ofNullable(item.getAccelerator()))));
            }
        }
    }

    private static String words(Optional<KeyStroke> stroke) {
        return stroke.map(key -> {
                    String modifiers = InputEvent.getModifiersExText(key.getModifiers());
                    String text = KeyEvent.getKeyText(key.getKeyCode());
                    return modifiers.isEmpty() ? text : modifiers + "+" + text;
                })
                .orElse("");
    }

    /** Shows them; what is typed narrows them down. */
    static void show(Component over, JMenuBar bar) {
        List<Line> all = of(bar);
        DefaultTableModel model = new DefaultTableModel(HEADINGS, 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        JTextField asked = new JTextField();
        asked.setName("keys-search");
        asked.putClientProperty("JTextField.placeholderText", "Find what you want to do, or a key");
        asked.getAccessibleContext().setAccessibleName("Find what you want to do, or a key");
        asked.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                fill(model, all, asked.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                fill(model, all, asked.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
        fill(model, all, "");
        JTable table = new JTable(model);
        table.setName("keys");
        table.getInputMap(JTable.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Widgets.stroke("ENTER"), "none");
        table.getColumnModel().getColumn(0).setPreferredWidth(100);
        table.getColumnModel().getColumn(1).setPreferredWidth(270);
        table.getColumnModel().getColumn(2).setPreferredWidth(160);
        JPanel form = new JPanel(new MigLayout("insets 0, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        form.add(asked);
        form.add(Widgets.scroll("keys-scroll", table), "w 540!, h 380!");
        form.add(Widgets.faint("keys-more", "Alt with the underlined letter opens a menu; Tab and F6 to F8 go round."));
        Ask.ask(over, "Keys of this screen", form, "Close", Optional::empty);
    }

    private static void fill(DefaultTableModel model, List<Line> all, String asked) {
        String wanted = asked.strip().toLowerCase(Locale.ROOT);
        model.setRowCount(0);
        all.stream()
                .filter(line -> (line.menu() + " " + line.what() + " " + line.key())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .forEach(line -> model.addRow(new Object[] {line.menu(), line.what(), line.key()}));
    }
}
