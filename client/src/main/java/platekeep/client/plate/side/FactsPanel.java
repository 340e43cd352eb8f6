package platekeep.client.plate.side;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Column;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;
import platekeep.model.plate.State;

/** The facts of a plate as a form. A field that is left, or Enter in it, makes a step of what was changed in it. */
public final class FactsPanel extends Column {
    private static final long serialVersionUID = 1L;

    private final transient Ears ears;
    private final JTextField title = new JTextField();
    private final JTextField number = new JTextField();
    private final JTextField themes = new JTextField();
    private final JTextField uses = new JTextField();
    private final JTextField designers = new JTextField();
    private final JTextArea notes = new JTextArea(5, 10);
    private final JComboBox<String> state = new JComboBox<>();
    private final Map<Age, JCheckBox> ages = new EnumMap<>(Age.class);
    private final JLabel size = Widgets.faint("fact-size", "");
    private final JPanel kin = new JPanel(new MigLayout("insets 0, gap 4, fillx, wrap 1", "[grow, fill]"));
    private transient List<Relative> shownKin = List.of();
    private transient Optional<Plate> shown = Optional.empty();
    private boolean isShowing;

    /** Hears of a change: the step's name and what it makes of a plate. */
    public interface Ears {
        void change(String step, UnaryOperator<Plate> change);

        void trouble(String sentence);

        void open(String plateId);
    }

    public FactsPanel(Ears ears) {
        super(new MigLayout("insets 12 14 12 14, fillx, wrap 1", "[grow, fill]", "[]2[]8[]"));
        this.ears = ears;
        setName("facts");
        field("Title", "fact-title", title, this::takeTitle);
        field("Number", "fact-number", number, this::takeNumber);
        field("Themes, with commas between", "fact-themes", themes, this::takeThemes);
        addAges();
        stateBox();
        field("For: yoke, insert, bishop, pillow …", "fact-uses", uses, this::takeUses);
        field("Designers, with commas between", "fact-designers", designers, this::takeDesigners);
        notesArea();
        add(size, "gaptop 6");
        add(kin, "gaptop 2, wmin 0");
    }

    /**
     * A plate that this one was started from, or that was started from it.
     *
     * @param words what it is to this one
     */
    public record Relative(String plateId, String words) {}

    /** Shows which plates were started from which; pressing one opens it. */
    public void kin(List<Relative> relatives) {
        if (!relatives.equals(shownKin)) {
            shownKin = List.copyOf(relatives);
            kin.removeAll();
            for (Relative relative : relatives) {
                JButton button = Widgets.button(
                        "kin-" + relative.plateId(), relative.words(), () -> ears.open(relative.plateId()));
                button.setHorizontalAlignment(JButton.LEADING);
                button.setToolTipText("Open it");
                kin.add(Widgets.styled(button, "margin: 3,8,3,8"), "wmin 0");
            }
            kin.revalidate();
        }
    }

    private void field(String word, String name, JTextField field, Runnable take) {
        field.setName(name);
        field.addActionListener(e -> take.run());
        onLeaving(field, take);
        labelled(word, field);
    }

    private void labelled(String word, JComponent part) {
        JLabel label = Widgets.heading(word);
        label.setLabelFor(part);
        add(label);
        add(part, "wmin 0");
    }

    private static void onLeaving(JTextComponent field, Runnable take) {
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                take.run();
            }
        });
    }

    private void addAges() {
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 2, wrap 2", "[grow, fill][grow, fill]"));
        for (Age age : Age.values()) {
            JCheckBox box = new JCheckBox(age.word());
            box.setName("fact-age-" + age.word());
            box.addActionListener(e -> takeAges());
            ages.put(age, box);
            boxes.add(box);
        }
        labelled("Ages", boxes);
    }

    private void stateBox() {
        state.setName("fact-state");
        state.addItem("not said");
        Arrays.stream(State.values()).map(State::word).forEach(state::addItem);
        state.addActionListener(e -> takeState());
        labelled("State", state);
    }

    private void notesArea() {
        notes.setName("fact-notes");
        notes.setLineWrap(true);
        notes.setWrapStyleWord(true);
        onLeaving(notes, this::takeNotes);
        JScrollPane scroll = new JScrollPane(notes);
        labelled("Notes", scroll);
    }

    /** Shows a plate's facts; what is being typed is left alone. */
    public void show(Plate plate, boolean canChange) {
        isShowing = true;
        boolean isOther = shown.map(Plate::id).filter(plate.id()::equals).isEmpty();
        shown = Optional.of(plate);
        fill(title, plate.title(), isOther);
        fill(number, plate.number().orElse(""), isOther);
        fill(themes, String.join(", ", plate.themes()), isOther);
        fill(uses, String.join(", ", plate.uses()), isOther);
        fill(designers, String.join(", ", plate.designers()), isOther);
        fill(notes, String.join("\n", plate.notes()), isOther);
        state.setSelectedItem(plate.state().map(State::word).orElse("not said"));
        ages.forEach((age, box) -> box.setSelected(plate.ages().contains(age)));
        size.setText(sizeWords(plate));
        for (JComponent part : List.of(title, number, themes, uses, designers, notes, state)) {
            part.setEnabled(canChange);
        }
        ages.values().forEach(box -> box.setEnabled(canChange));
        isShowing = false;
    }

    private static void fill(JTextComponent field, String text, boolean isOther) {
        if ((isOther || !field.isFocusOwner()) && !field.getText().equals(text)) {
            field.setText(text);
            field.setCaretPosition(0);
        }
    }

    private static String sizeWords(Plate plate) {
        if (plate.pleats().isEmpty()) {
            return "No chart yet";
        }
        var pleats = plate.pleats().get();
        return "Pleats " + pleats.from() + " to " + pleats.to() + " (" + pleats.count() + "), "
                + plate.rows().size() + " rows";
    }

    private void take(String step, UnaryOperator<Plate> change) {
        if (!isShowing) {
            ears.change(step, change);
        }
    }

    private void takeTitle() {
        String text = title.getText().strip();
        if (text.isEmpty()) {
            ears.trouble("A plate needs a title; the old one stays.");
            shown.ifPresent(plate -> title.setText(plate.title()));
        } else {
            take("Change the title", plate -> plate.edit().title(text).build());
        }
    }

    private void takeNumber() {
        Optional<String> text = Optional.of(number.getText().strip()).filter(t -> !t.isEmpty());
        take("Change the number", plate -> plate.edit().number(text).build());
    }

    private void takeThemes() {
        List<String> words = words(themes.getText());
        take("Change the themes", plate -> plate.edit().themes(words).build());
    }

    private void takeUses() {
        List<String> words = words(uses.getText());
        take("Change what it is for", plate -> plate.edit().uses(words).build());
    }

    private void takeDesigners() {
        List<String> words = words(designers.getText());
        take("Change the designers", plate -> plate.edit().designers(words).build());
    }

    private void takeNotes() {
        List<String> lines = notes.getText().lines().map(String::stripTrailing).collect(Collectors.toList());
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        take("Change the notes", plate -> plate.edit().notes(lines).build());
    }

    private void takeState() {
        Optional<State> chosen = State.of(String.valueOf(state.getSelectedItem()));
        take("Change the state", plate -> plate.edit().state(chosen).build());
    }

    private void takeAges() {
        List<Age> chosen = new ArrayList<>();
        ages.forEach((age, box) -> {
            if (box.isSelected()) {
                chosen.add(age);
            }
        });
        take("Change the ages", plate -> plate.edit().ages(chosen).build());
    }

    /** Takes over what is being typed, as leaving the field would. */
    public void takeTyped() {
        Stream.of(title, number, themes, uses, designers)
                .filter(JTextField::isFocusOwner)
                .forEach(JTextField::postActionEvent);
        if (notes.isFocusOwner()) {
            takeNotes();
        }
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
