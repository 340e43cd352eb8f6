package platekeep.client.gallery;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;

/** The questions of the gallery. */
final class GalleryDialogs {
    private static final int FIRST_PLEATS = 60;
    private static final int FIRST_ROWS = 30;

    private GalleryDialogs() {}

    static Optional<GalleryView.NewPlate> newPlate(Component over, List<String> libraries, List<String> palettes) {
        JTextField title = field("new-plate-title", "");
        JSpinner pleats = number("new-plate-pleats", FIRST_PLEATS, 2, Pleats.MOST_POSITIONS + 1);
        JSpinner rows = number("new-plate-rows", FIRST_ROWS, 1, Plate.MOST_ROWS);
        JComboBox<String> library = choice("new-plate-library", libraries);
        library.setSelectedIndex(libraries.size() - 1);
        JComboBox<String> colours = choice(
                "new-plate-colours",
                Stream.concat(
                                Stream.of("A few to begin with"),
                                palettes.stream().map(p -> "Those of " + p))
                        .toList());
        JPanel form = form();
        row(form, "Title", title);
        row(form, "Pleats", pleats);
        row(form, "Rows", rows);
        row(form, "Colours", colours);
        if (libraries.size() > 1) {
            row(form, "Library", library);
        }
        form.add(
                Widgets.faint("new-plate-hint", "An even number of pleats puts a valley in the centre."), "skip, wrap");
        Ask.Answer answer = Ask.ask(
                over,
                "New plate",
                form,
                "Begin drawing",
                () -> title.getText().isBlank() ? Optional.of("Give the plate a title.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new GalleryView.NewPlate(
                        library.getSelectedIndex(),
                        title.getText().strip(),
                        (Integer) pleats.getValue(),
                        (Integer) rows.getValue(),
                        Optional.of(colours.getSelectedIndex() - 1).filter(i -> i >= 0)));
    }

    static Optional<String> putAway(Component over, String title) {
        JTextField reason = field("put-away-reason", "");
        JPanel form = form();
        form.add(
                Widgets.prose(
                        "put-away-text",
                        "\"" + title
                                + "\" leaves the gallery. Its history stays, and it can be brought back at any time."),
                "span 2, growx, wmin 380, wrap, gapbottom 8");
        row(form, "Reason", reason);
        Ask.Answer answer = Ask.ask(
                over,
                "Put away",
                form,
                "Put away",
                () -> reason.getText().isBlank()
                        ? Optional.of("Say why; it stands in the history.")
                        : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(reason.getText().strip());
    }

    static Optional<Integer> putAwayPlate(Component over, List<String> lines) {
        JList<String> list = new JList<>(lines.toArray(new String[0]));
        list.setName("put-away-plates");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(0);
        JPanel form = form();
        form.add(
                new JLabel(lines.isEmpty() ? "Nothing was put away." : "Plates that were put away:"),
                "span 2, wrap, gapbottom 4");
        form.add(Widgets.scroll("put-away-scroll", list), "span 2, grow, w 460!, h 260!");
        Ask.Answer answer = Ask.ask(
                over,
                "Bring back a plate",
                form,
                "Bring back",
                () -> list.getSelectedIndex() < 0 ? Optional.of("Choose a plate first.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP ? Optional.empty() : Optional.of(list.getSelectedIndex());
    }

    private static JPanel form() {
        return new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
    }

    private static void row(JPanel form, String word, javax.swing.JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    private static JTextField field(String name, String text) {
        JTextField field = new JTextField(text, 28);
        field.setName(name);
        return field;
    }

    private static JSpinner number(String name, int value, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(value, least, most, 1));
        spinner.setName(name);
        return spinner;
    }

    private static JComboBox<String> choice(String name, List<String> words) {
        JComboBox<String> box = new JComboBox<>(words.toArray(new String[0]));
        box.setName(name);
        return box;
    }
}
