package platekeep.client.compare;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.room.Place;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** Two lists beside each other, plates and the versions of the one chosen, each narrowed down by typing above it. */
final class PickerDialog {
    private final JTextField plateWords = field("compare-pick-plate-words", "Words in title, number or themes");
    private final JTextField versionWords = field("compare-pick-version-words", "Words in day, name or reason");
    private final DefaultListModel<String> plates = new DefaultListModel<>();
    private final DefaultListModel<String> versions = new DefaultListModel<>();
    private final JList<String> plateList = list("compare-pick-plates", "Plates", plates);
    private final JList<String> versionList = list("compare-pick-versions", "Versions", versions);
    private final SidePicker picker;
    private List<String> shownPlates = List.of();
    private List<String> shownVersions = List.of();
    private boolean isFilling;

    private PickerDialog(SidePicker picker) {
        this.picker = picker;
        versionList.setFixedCellHeight(46);
        versionList.setCellRenderer(new VersionCell());
        onWords(plateWords, picker::plateWords);
        onWords(versionWords, picker::versionWords);
        onChoice(plateList, picker::choosePlate);
        onChoice(versionList, picker::chooseVersion);
        intoList(plateWords, plateList);
        intoList(versionWords, versionList);
    }

    static Optional<Place.Side> ask(Component over, String word, SidePicker picker) {
        PickerDialog dialog = new PickerDialog(picker);
        picker.begin(dialog::show);
        Ask.Answer answer = Ask.ask(
                over,
                word + ": which plate, and which version of it",
                dialog.inside(),
                "Compare",
                () -> picker.answer().isPresent()
                        ? Optional.empty()
                        : Optional.of("Choose a plate first; where there are too many, type a word of its title."));
        return answer == Ask.Answer.YES ? picker.answer() : Optional.empty();
    }

    private JPanel inside() {
        JPanel inside = Widgets.clear(
                new MigLayout("insets 0, gap 8, fill", "[300, grow, fill][380, grow, fill]", "[][][grow, fill]"));
        inside.add(Widgets.heading("Plate"));
        inside.add(Widgets.heading("Version"), "wrap");
        inside.add(plateWords);
        inside.add(versionWords, "wrap");
        inside.add(Widgets.scroll("compare-pick-plates-scroll", plateList));
        inside.add(Widgets.scroll("compare-pick-versions-scroll", versionList));
        inside.setPreferredSize(new Dimension(720, 420));
        return inside;
    }

    private void show(PickerState state) {
        isFilling = true;
        fill(plates, shownPlates, state.plates());
        fill(versions, shownVersions, state.versions());
        shownPlates = state.plates();
        shownVersions = state.versions();
        choose(plateList, state.plate());
        choose(versionList, state.version());
        isFilling = false;
    }

    private static void fill(DefaultListModel<String> model, List<String> was, List<String> is) {
        if (!was.equals(is)) {
            model.clear();
            model.addAll(is);
        }
    }

    private static void choose(JList<String> list, int index) {
        if (index < 0) {
            list.clearSelection();
        } else if (list.getSelectedIndex() != index) {
            list.setSelectedIndex(index);
            list.ensureIndexIsVisible(index);
        }
    }

    private static JTextField field(String name, String words) {
        JTextField field = new JTextField();
        field.setName(name);
        field.putClientProperty("JTextField.placeholderText", words);
        field.getAccessibleContext().setAccessibleName(words);
        return field;
    }

    private static JList<String> list(String name, String words, DefaultListModel<String> model) {
        JList<String> list = new JList<>(model);
        list.setName(name);
        list.getAccessibleContext().setAccessibleName(words);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFixedCellHeight(26);
        return list;
    }

    private void onChoice(JList<String> list, IntConsumer choose) {
        list.addListSelectionListener(e -> {
            if (!isFilling && list.getSelectedIndex() >= 0) {
                choose.accept(list.getSelectedIndex());
            }
        });
    }

    private static void onWords(JTextField field, Consumer<String> words) {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                words.accept(field.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                words.accept(field.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                words.accept(field.getText());
            }
        });
    }

    /** The down key goes from the words into the list below them. */
    private static void intoList(JTextField field, JList<String> list) {
        Widgets.onOwnKey(field, "DOWN", () -> {
            if (list.getModel().getSize() > 0) {
                list.requestFocusInWindow();
                list.setSelectedIndex(Math.max(0, list.getSelectedIndex()));
            }
        });
    }
}
