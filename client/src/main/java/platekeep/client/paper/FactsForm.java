package platekeep.client.paper;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Column;
import platekeep.client.ui.Widgets;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Age;
import platekeep.model.plate.Origin;

/** The facts as a form in which Enter goes on to the next plate. */
final class FactsForm extends Column {
    private static final long serialVersionUID = 1L;

    private static final String NOT_SAID = "";
    private static final Map<String, String> KINDS =
            Map.of("own", "own", "bought", "bought", "given", "given", "adapted", "adapted from another");
    private static final Map<String, String> USES = Map.of(
            "mine", "for me only",
            "partner", "with my partner",
            "class", "in classes",
            "publish", "may be published");

    private final JTextField title = new JTextField();
    private final JTextField number = new JTextField();
    private final JTextField themes = new JTextField();
    private final Map<Age, JCheckBox> ages = new EnumMap<>(Age.class);
    private final JComboBox<String> kind = choice("paper-kind", Origin.KINDS, KINDS);
    private final JTextField by = new JTextField();
    private final JTextField place = new JTextField();
    private final JComboBox<String> use = choice("paper-use", Origin.USES, USES);
    private final JLabel offered = Widgets.faint("paper-offered", "As for the one before; Enter takes it.");
    private final ManyTicks many = new ManyTicks();
    private final JPanel oneAges = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]", "[]2[]"));
    private final Runnable takeAndGoOn;
    private transient Shared shared = Shared.NONE;
    private transient Facts filled = Facts.NOTHING;
    private transient String filledFor = "";
    private transient Optional<Facts> before = Optional.empty();

    FactsForm(Runnable takeAndGoOn) {
        super(new MigLayout("insets 12 14 10 14, fillx, wrap 1, hidemode 3", "[grow, fill]", "[]2[]8[]"));
        setName("paper-form");
        this.takeAndGoOn = takeAndGoOn;
        title.setName("paper-title");
        number.setName("paper-number");
        pair(new String[] {"Title", "Number"}, "[grow 3, fill]8[70:90, grow 1, fill]", title, number);
        field("Themes, with commas between", "paper-themes", themes);
        addAges();
        Widgets.styled(offered, "foreground: $Platekeep.accent");
        add(offered, "gaptop 8");
        by.setName("paper-by");
        pair(new String[] {"It comes from", "By whom"}, "[50%, fill]8[50%, fill]", kind, by);
        field("Where the paper lies", "paper-place", place);
        labelled("What may be done with it", use);
        for (JComponent part : List.of(title, number, themes, kind, by, place, use)) {
            Widgets.onOwnKey(part, "ENTER", () -> {
                kind.hidePopup();
                use.hidePopup();
                takeAndGoOn.run();
            });
        }
        ages.values().forEach(box -> Widgets.onOwnKey(box, "ENTER", takeAndGoOn));
    }

    private static JComboBox<String> choice(String name, List<String> words, Map<String, String> said) {
        JComboBox<String> box = new JComboBox<>();
        box.setName(name);
        box.addItem("not said");
        words.forEach(word -> box.addItem(said.get(word)));
        return box;
    }

    private void field(String word, String name, JTextField field) {
        field.setName(name);
        labelled(word, field);
    }

    /** Two parts side by side, each under its word. */
    private void pair(String[] words, String columns, JComponent left, JComponent right) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, wrap 2", columns, "[]2[]"));
        for (int i = 0; i < 2; i++) {
            JLabel label = Widgets.heading(words[i]);
            label.setLabelFor(i == 0 ? left : right);
            row.add(label, "wmin 0");
        }
        row.add(left, "wmin 0");
        row.add(right, "wmin 0");
        add(row, "wmin 0, gapbottom 6");
    }

    private void labelled(String word, JComponent part) {
        JLabel label = Widgets.heading(word);
        label.setLabelFor(part);
        add(label);
        add(part, "wmin 0");
    }

    private void addAges() {
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 2, wrap 2", "[grow, fill][grow, fill]"));
        for (Age age : Age.values()) {
            JCheckBox box = new JCheckBox((age.ordinal() + 1) + "  " + age.word());
            box.setName("paper-age-" + age.word());
            box.setToolTipText("Alt+" + (age.ordinal() + 1));
            KeyStroke key = KeyStroke.getKeyStroke(KeyEvent.VK_1 + age.ordinal(), KeyEvent.ALT_DOWN_MASK);
            getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, age);
            getActionMap().put(age, new AbstractAction() {
                private static final long serialVersionUID = 1L;

                @Override
                public void actionPerformed(ActionEvent e) {
                    press(age);
                }
            });
            ages.put(age, box);
            boxes.add(box);
        }
        oneAges.add(Widgets.heading("Ages, Alt+1 to Alt+6"));
        oneAges.add(boxes);
        add(oneAges);
        add(many);
    }

    private void press(Age age) {
        if (shared.count() > 0) {
            many.press(age);
        } else {
            ages.get(age).doClick();
        }
    }

    /** Fills the form, unless it holds these facts of this plate already and she goes on typing. */
    void show(PaperState state) {
        before = state.before();
        String whose = state.many() > 0
                ? "many " + state.many()
                : state.line().map(PaperState.Line::key).orElse("");
        boolean isSame = whose.equals(filledFor)
                && state.facts().equals(filled)
                && state.shared().equals(shared);
        boolean isOne = state.many() == 0;
        if (!state.shared().equals(shared)) {
            shared = state.shared();
            many.show(shared);
            many.onEnter(takeAndGoOn);
        }
        oneAges.setVisible(isOne);
        many.setVisible(!isOne);
        offered.setVisible(state.offered());
        title.setEnabled(isOne);
        number.setEnabled(isOne);
        title.putClientProperty("JTextField.placeholderText", isOne ? "" : "each keeps its own");
        number.putClientProperty("JTextField.placeholderText", isOne ? "" : "each keeps its own");
        for (JTextField field : List.of(by, place)) {
            field.putClientProperty("JTextField.placeholderText", isOne ? "" : "as it is, or for all of them");
        }
        themes.putClientProperty("JTextField.placeholderText", themesHint(state));
        if (!isSame) {
            filledFor = whose;
            filled = state.facts();
            fill(filled);
        }
        repaint();
    }

    private static String themesHint(PaperState state) {
        if (state.many() > 0) {
            return "more, put to those that each has";
        }
        return state.before()
                .map(Facts::themes)
                .filter(t -> !t.isEmpty())
                .map(t -> "F4: " + t)
                .orElse("");
    }

    private void fill(Facts facts) {
        title.setText(facts.title());
        number.setText(facts.number());
        themes.setText(facts.themes());
        by.setText(facts.by());
        place.setText(facts.place());
        for (JTextField field : List.of(title, number, themes, by, place)) {
            field.setCaretPosition(0);
        }
        ages.forEach((age, box) -> box.setSelected(facts.ages().contains(age)));
        kind.setSelectedIndex(1 + Origin.KINDS.indexOf(facts.kind()));
        use.setSelectedIndex(1 + Origin.USES.indexOf(facts.use()));
    }

    /** Takes themes and ages over from the plate before. */
    void asBefore() {
        before.ifPresent(last -> {
            themes.setText(last.themes());
            if (shared.count() > 0) {
                return;
            }
            ages.forEach((age, box) -> box.setSelected(last.ages().contains(age)));
        });
    }

    Facts typed() {
        if (shared.count() > 0) {
            return forMany();
        }
        Set<Age> chosen = ages.entrySet().stream()
                .filter(e -> e.getValue().isSelected())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(HashSet::new));
        return facts(themes.getText(), chosen);
    }

    private Facts forMany() {
        List<String> given = new ArrayList<>(many.givenThemes());
        if (!themes.getText().isBlank()) {
            given.add(themes.getText());
        }
        return facts(String.join(", ", given), many.givenAges());
    }

    /** What is to be taken from many. */
    Tags lost() {
        return shared.count() > 0 ? many.lost() : Tags.NONE;
    }

    private Facts facts(String saidThemes, Set<Age> saidAges) {
        return new Facts(
                title.getText(),
                number.getText(),
                saidThemes,
                saidAges,
                word(kind, Origin.KINDS, filled.kind()),
                by.getText(),
                place.getText(),
                word(use, Origin.USES, filled.use()));
    }

    /** A word that this form does not know stays while nothing else is chosen. */
    private static String word(JComboBox<String> box, List<String> words, String before) {
        if (box.getSelectedIndex() > 0) {
            return words.get(box.getSelectedIndex() - 1);
        }
        return words.contains(before) ? NOT_SAID : before;
    }

    void toTitle() {
        JTextField first = title.isEnabled() ? title : themes;
        first.requestFocusInWindow();
        first.selectAll();
    }
}
