package platekeep.client.plate.ask;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.GatheringRow;
import platekeep.model.plate.Line;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.stitch.LineRepeat;

/** Asks for a line of geometric smocking, and says at once whether its pleats are whole repeats. */
public final class LineDialog {
    private final Line before;
    private final List<Character> keys;
    private final JComboBox<String> stitch = new JComboBox<>(ExtraEdits.LINES.toArray(new String[0]));
    private final JTextField on;
    private final JTextField toRow;
    private final JSpinner steps;
    private final JComboBox<String> colour = new JComboBox<>();
    private final JSpinner strands;
    private final JSpinner from;
    private final JSpinner to;
    private final JComboBox<CableKind> start = new JComboBox<>(CableKind.values());
    private final JLabel words = Widgets.faint("line-words", " ");

    public LineDialog(Plate plate, Line before) {
        this.before = before;
        this.keys = new ArrayList<>(plate.palette().entries().keySet());
        this.on = Forms.field("line-on", before.on());
        this.toRow = Forms.field("line-to-row", before.toRow().orElse(""));
        this.steps = number("line-steps", before.steps().orElse(0), 0, 40);
        this.strands = number("line-strands", before.strands(), 1, 6);
        this.from = number("line-from", before.from(), -Pleats.FARTHEST, Pleats.FARTHEST);
        this.to = number("line-to", before.to(), -Pleats.FARTHEST, Pleats.FARTHEST);
        stitch.setName("line-stitch");
        stitch.setEditable(true);
        stitch.setSelectedItem(before.stitch());
        plate.palette().entries().values().forEach(c -> colour.addItem(c.name()));
        colour.setName("line-colour");
        Shade.beside(colour, at -> plate.palette().get(keys.get(at)).map(Colour::rgb));
        colour.setSelectedIndex(Math.max(0, keys.indexOf(before.colour())));
        start.setName("line-start");
        start.setSelectedItem(before.start());
        List.of(steps, from, to).forEach(spinner -> spinner.addChangeListener(e -> tell()));
        stitch.addActionListener(e -> tell());
        tell();
    }

    private static JSpinner number(String name, int value, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(Math.max(least, Math.min(most, value)), least, most, 1));
        spinner.setName(name);
        return spinner;
    }

    public Optional<Line> ask(Component over) {
        JPanel form = Forms.form();
        Forms.row(form, "Stitch", stitch);
        Forms.row(form, "On gathering row, from the top", on);
        Forms.row(form, "Travels to row, such as 2 1/2", toRow);
        Forms.row(form, "Steps of a trellis", steps);
        Forms.row(form, "Colour", colour);
        Forms.row(form, "Strands", strands);
        Forms.row(form, "From pleat", from);
        Forms.row(form, "To pleat", to);
        Forms.row(form, "First cable", start);
        form.add(words, "span 2, wrap");
        return Ask.ask(over, "Geometric line", form, "Take it", this::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(line());
    }

    private Line line() {
        return new Line(
                on.getText().strip(),
                Optional.of(toRow.getText().strip()).filter(t -> !t.isEmpty()),
                String.valueOf(stitch.getSelectedItem()).strip(),
                Optional.of(value(steps)).filter(n -> n > 0),
                keys.get(Math.max(0, colour.getSelectedIndex())),
                value(strands),
                value(from),
                value(to),
                (CableKind) start.getSelectedItem(),
                before.unknown());
    }

    private Optional<String> wrong() {
        String row = on.getText().strip();
        String other = toRow.getText().strip();
        if (!GatheringRow.isGatheringRow(row)) {
            return Optional.of("\"" + row + "\" is no gathering row: write a number, such as 2 or 2 1/2.");
        }
        if (!other.isEmpty() && !GatheringRow.isGatheringRow(other)) {
            return Optional.of(
                    "\"" + other + "\" is no gathering row: write a number, such as 2 or 2 1/2, or nothing.");
        }
        if (String.valueOf(stitch.getSelectedItem()).isBlank()) {
            return Optional.of("Say which stitch it is.");
        }
        return value(from) >= value(to)
                ? Optional.of("It ends at pleat " + value(to) + ", before it begins. Turn the two round.")
                : Optional.empty();
    }

    /** How its pleats go into repeats. */
    private void tell() {
        Line line = line();
        String every = LineRepeat.pleats(line)
                .map(n -> n == 1 ? "1 pleat a repeat" : n + " pleats a repeat")
                .orElse("");
        boolean isRange = line.from() < line.to();
        if (every.isEmpty() || !isRange) {
            words.setText(" ");
        } else if (LineRepeat.fits(line)) {
            words.setText(every + ": whole repeats and a closing cable.");
        } else {
            String below = LineRepeat.fittingBelow(line).map(n -> n + " or ").orElse("");
            words.setText(every + ", so not whole: " + (line.to() - line.from() + 1) + " pleats; " + below
                    + LineRepeat.fittingAbove(line).orElseThrow() + " would be.");
        }
    }

    private static int value(JSpinner spinner) {
        return (Integer) spinner.getValue();
    }
}
