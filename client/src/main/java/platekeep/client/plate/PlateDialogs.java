package platekeep.client.plate;

import java.awt.Color;
import java.awt.Component;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JColorChooser;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.ThreadSwatch;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;

/** The questions of the Plate screen. */
final class PlateDialogs {
    private static final String HEX = "#?[0-9a-fA-F]{6}";

    private PlateDialogs() {}

    static Optional<PlateView.SaveAnswer> reason(Component over, String suggestion, List<String> hands) {
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

    static Optional<String> line(Component over, String title, String text, String word, String yes, String missing) {
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

    static PlateView.Consent consent(Component over, String question, String yes) {
        JPanel form = Forms.form();
        form.add(Widgets.prose("consent-text", question), "span 2, growx, wmin 400");
        return Ask.ask(over, yes, form, yes, Optional::empty) == Ask.Answer.YES
                ? PlateView.Consent.YES
                : PlateView.Consent.NO;
    }

    static Optional<Colour> colour(Component over, String title, Colour before) {
        JTextField name = Forms.field("colour-name", before.name());
        JTextField hex = Forms.field("colour-hex", before.srgb());
        JSpinner strands = new JSpinner(new SpinnerNumberModel(before.strands(), 1, 6, 1));
        strands.setName("colour-strands");
        JTextField floss = Forms.field("colour-floss", before.floss().orElse(""));
        ThreadSwatch swatch = new ThreadSwatch(before.rgb());
        JButton choose = Widgets.button("colour-choose", "Choose…", () -> choose(hex));
        hex.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                rgb(hex).ifPresent(swatch::show);
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                rgb(hex).ifPresent(swatch::show);
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
        JPanel form = Forms.form();
        Forms.row(form, "Name", name);
        JPanel shade = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]8[60!]8[]"));
        shade.add(hex);
        shade.add(swatch, "h 30!");
        shade.add(choose);
        Forms.row(form, "Shade, as #RRGGBB", shade);
        Forms.row(form, "Strands", strands);
        Forms.row(form, "Floss", floss);
        Ask.Answer answer = Ask.ask(over, title, form, "Take it", () -> {
            if (name.getText().isBlank()) {
                return Optional.of("Give the colour a name.");
            }
            return rgb(hex).isEmpty()
                    ? Optional.of("\"" + hex.getText() + "\" is no shade: write # and six digits of 0-9 and A-F.")
                    : Optional.empty();
        });
        if (answer == Ask.Answer.GIVEN_UP) {
            return Optional.empty();
        }
        return Optional.of(new Colour(
                name.getText().strip(),
                String.format(Locale.ROOT, "#%06X", rgb(hex).orElseThrow()),
                (Integer) strands.getValue(),
                Optional.of(floss.getText().strip()).filter(text -> !text.isEmpty()),
                before.unknown()));
    }

    private static void choose(JTextField hex) {
        Color chosen = JColorChooser.showDialog(hex, "Choose a shade", new Color(rgb(hex).orElse(0x808080)));
        if (chosen != null) {
            hex.setText(String.format(Locale.ROOT, "#%06X", chosen.getRGB() & 0xFFFFFF));
        }
    }

    private static Optional<Integer> rgb(JTextField hex) {
        String text = hex.getText().strip();
        return text.matches(HEX) ? Optional.of(Integer.parseInt(text.replace("#", ""), 16)) : Optional.empty();
    }
}
