package platekeep.client.plate.ask;

import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Rows of a word and a field, as the questions of this screen are laid out. */
final class Forms {
    private Forms() {}

    static JPanel form() {
        return new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
    }

    static void row(JPanel form, String word, JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    static JTextField field(String name, String text) {
        JTextField field = new JTextField(text, 34);
        field.setName(name);
        return field;
    }
}
