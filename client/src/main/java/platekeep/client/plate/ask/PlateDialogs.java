package platekeep.client.plate.ask;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import platekeep.client.plate.work.PlateView;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** The questions of the Plate screen. */
public final class PlateDialogs {
    private PlateDialogs() {}

    public static Optional<PlateView.SaveAnswer> reason(Component over, String suggestion, List<String> hands) {
        JTextField reason = Forms.field("save-reason", suggestion);
        reason.selectAll();
        JComboBox<String> hand = new JComboBox<>(hands.toArray(new String[0]));
        hand.setName("save-hand");
        JPanel form = Forms.form();
        Forms.row(form, "Reason", reason);
        if (hands.size() > 1) {
            Forms.row(form, "In whose name", hand);
        }
        form.add(
                Widgets.faint("save-hint", "One line that will tell you later why this version is there."),
                "skip, wrap");
        Ask.Answer answer = Ask.ask(
                over,
                "Save version",
                form,
                "Save version",
                () -> reason.getText().isBlank() ? Optional.of("Say why this version is there.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new PlateView.SaveAnswer(reason.getText().strip(), Math.max(0, hand.getSelectedIndex())));
    }

    public static Optional<String> line(
            Component over, String title, String text, String word, String yes, String missing) {
        JTextField line = Forms.field("line", "");
        JPanel form = Forms.form();
        form.add(Widgets.prose("line-text", text), "span 2, growx, wmin 400, wrap, gapbottom 8");
        Forms.row(form, word, line);
        Ask.Answer answer = Ask.ask(
                over, title, form, yes, () -> line.getText().isBlank() ? Optional.of(missing) : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(line.getText().strip());
    }

    public static PlateView.Consent consent(Component over, String question, String yes) {
        JPanel form = Forms.form();
        form.add(Widgets.prose("consent-text", question), "span 2, growx, wmin 400");
        return Ask.ask(over, yes, form, yes, Optional::empty) == Ask.Answer.YES
                ? PlateView.Consent.YES
                : PlateView.Consent.NO;
    }
}
