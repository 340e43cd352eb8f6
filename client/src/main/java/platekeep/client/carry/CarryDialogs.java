package platekeep.client.carry;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** The questions as dialogs. */
public final class CarryDialogs implements CarryView {
    private final Component over;

    /**
     * @param over where the questions are asked
     */
    public CarryDialogs(Component over) {
        this.over = over;
    }

    @Override
    public Optional<Integer> askTarget(Way way, String from, List<Target> targets) {
        JComboBox<String> library =
                new JComboBox<>(targets.stream().map(Target::name).toArray(String[]::new));
        library.setName("carry-library");
        JTextArea words = Widgets.prose("carry-words", "");
        words.setRows(8);
        Ask.Yes yes = new Ask.Yes(way.word());
        library.addActionListener(e -> {
            Target target = targets.get(library.getSelectedIndex());
            words.setText(text(target));
            yes.says(target.does() == Does.COMPARE ? "Compare…" : way.word());
            yes.canBe(target.does() != Does.NOTHING);
        });
        library.setSelectedIndex(0);
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]10[]"));
        JLabel label = new JLabel("From \"" + from + "\" to");
        label.setLabelFor(library);
        form.add(label);
        form.add(library, "wrap");
        form.add(words, "span 2, grow, wmin 480, hmin 170");
        return Ask.ask(over, way.word() + " to another library", form, yes, Optional::empty) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(library.getSelectedIndex());
    }

    private static String text(Target target) {
        return String.join("\n\n", target.words())
                + (target.does() == Does.CARRY ? "" : "\n\nSo there is nothing to be carried.");
    }

    @Override
    public Answer askCompare(String sentence) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]"));
        form.add(Widgets.prose("carry-different", sentence), "wmin 420");
        return Ask.ask(over, "There already", form, "Compare", Optional::empty) == Ask.Answer.YES
                ? Answer.COMPARE
                : Answer.LEAVE;
    }
}
