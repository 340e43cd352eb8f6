package platekeep.client.gallery.narrow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Choice;
import platekeep.model.find.Group;

/** One group: a heading that folds it, its first values with their counts, and more of them when asked. */
final class SectionBox extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int FIRST = 7;
    private static final int MOST = 60;
    private static final Set<Group> OPEN_AT_FIRST =
            EnumSet.of(Group.LIBRARY, Group.MARK, Group.AGE, Group.THEME, Group.SERIES, Group.COLOUR);
    private static final Set<Group> TYPED = EnumSet.of(Group.AGE, Group.PLEATS, Group.ROWS);

    private final Group group;
    private final transient NarrowEars ears;
    private final JButton heading;
    private final JButton match;
    private final JPanel values = Widgets.clear(new MigLayout("insets 0, gap 2, fillx, hidemode 3", "[grow, fill]4[]"));
    private final JButton more;
    private final JTextField typed = new JTextField();
    private final JLabel wrong = Widgets.faint("narrow-wrong", "");
    private final transient List<JCheckBox> boxes = new ArrayList<>();
    private final transient List<JLabel> counts = new ArrayList<>();
    private final transient Optional<ColourGrid> colours;
    private transient List<Section.Value> seen = List.of();
    private transient Optional<Section> section = Optional.empty();
    private transient String picked = "";
    private boolean isFolded;
    private boolean isWhole;

    SectionBox(Group group, NarrowEars ears) {
        super(new MigLayout("insets 0, gap 2, fillx, hidemode 3", "[grow, fill][]"));
        this.group = group;
        this.ears = ears;
        this.isFolded = !OPEN_AT_FIRST.contains(group);
        this.heading = Widgets.styled(
                Widgets.button("narrow-" + group, Wording.title(group), this::fold),
                "buttonType: borderless; font: bold -1; foreground: $Platekeep.faintInk; margin: 3,2,3,2");
        heading.setHorizontalAlignment(SwingConstants.LEADING);
        this.match = flat("narrow-match-" + group, () -> ears.turnMatch(group));
        this.more = flat("narrow-more-" + group, this::whole);
        more.setHorizontalAlignment(SwingConstants.LEADING);
        this.colours = group == Group.COLOUR ? Optional.of(new ColourGrid(ears)) : Optional.empty();
        setName("narrow-box-" + group);
        setOpaque(false);
        add(heading, "wmin 0");
        add(match);
        add(values, "newline, span 2");
        colours.ifPresent(grid -> add(grid, "newline, span 2"));
        add(more, "newline, span 2");
        setUpTyped();
        refresh();
    }

    private static JButton flat(String name, Runnable press) {
        return Widgets.styled(
                Widgets.button(name, "", press),
                "buttonType: borderless; font: -1; foreground: $Platekeep.accent; margin: 1,2,1,2");
    }

    private void setUpTyped() {
        if (!TYPED.contains(group)) {
            return;
        }
        typed.setName("narrow-typed-" + group);
        typed.putClientProperty(
                "JTextField.placeholderText", group == Group.AGE ? "18 months, 2 years …" : "60-90, up to 90 …");
        typed.getAccessibleContext().setAccessibleName(Wording.title(group) + ", typed");
        typed.addActionListener(e -> {
            Optional<String> complaint =
                    typed.getText().isBlank() ? Optional.empty() : ears.typed(group, typed.getText());
            wrong.setText(complaint.orElse(""));
            wrong.setToolTipText(complaint.orElse(null));
            if (complaint.isEmpty()) {
                typed.setText("");
            }
            revalidate();
        });
        add(typed, "newline, span 2, wmin 0");
        add(wrong, "newline, span 2, wmin 0");
    }

    Group group() {
        return group;
    }

    private void fold() {
        isFolded = !isFolded;
        refresh();
    }

    private void whole() {
        isWhole = !isWhole;
        refresh();
    }

    /**
     * Shows what there is to choose.
     *
     * @param newPicked in lower case; where it is not empty, only values that hold it are shown
     */
    void show(Optional<Section> newSection, String newPicked) {
        section = newSection;
        picked = newPicked;
        refresh();
    }

    /** The values that hold what is picked by. */
    List<Section.Value> fitting() {
        List<Section.Value> all = section.map(Section::values).orElse(List.of());
        return picked.isEmpty()
                ? all
                : all.stream()
                        .filter(value -> value.word().toLowerCase(Locale.ROOT).contains(picked))
                        .toList();
    }

    private void refresh() {
        List<Section.Value> all = section.map(Section::values).orElse(List.of());
        List<Section.Value> fitting = fitting();
        setVisible(!fitting.isEmpty());
        boolean isOpen = !isFolded || !picked.isEmpty();
        int chosen = (int) all.stream().filter(Section.Value::chosen).count();
        heading.setText((isOpen ? "▾ " : "▸ ") + Wording.title(group) + (isOpen || chosen == 0 ? "" : " · " + chosen));
        Optional<Choice.Match> how = section.flatMap(Section::match);
        match.setVisible(isOpen && how.isPresent());
        match.setText(how.map(m -> m == Choice.Match.ANY ? "any of these" : "all of these")
                .orElse(""));
        typed.setVisible(isOpen && picked.isEmpty());
        wrong.setVisible(typed.isVisible() && !wrong.getText().isEmpty());
        boolean isList = isOpen && colours.isEmpty();
        int most = isWhole || !picked.isEmpty() ? MOST : FIRST;
        fill(isList ? first(fitting, most) : List.of());
        colours.ifPresent(grid -> grid.show(isOpen ? fitting : List.of()));
        more.setVisible(isList && picked.isEmpty() && all.size() > FIRST);
        more.setText(isWhole ? "Fewer" : "All " + all.size() + (all.size() > MOST ? ": type above to pick" : ""));
    }

    /** The first values, and whatever is chosen among the others. */
    private static List<Section.Value> first(List<Section.Value> all, int most) {
        List<Section.Value> first = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
        all.stream().skip(most).filter(Section.Value::chosen).forEach(first::add);
        return first;
    }

    private void fill(List<Section.Value> fresh) {
        seen = fresh;
        for (int i = boxes.size(); i < fresh.size(); i++) {
            addRow(i);
        }
        for (int i = 0; i < boxes.size(); i++) {
            JCheckBox box = boxes.get(i);
            boolean isThere = i < fresh.size();
            box.setVisible(isThere);
            counts.get(i).setVisible(isThere);
            if (isThere) {
                Section.Value value = fresh.get(i);
                box.setName("narrow-" + group + "-" + value.value());
                box.setText(value.word());
                box.setToolTipText(value.word());
                box.setSelected(value.chosen());
                counts.get(i).setText(Integer.toString(value.count()));
            }
        }
        values.setVisible(!fresh.isEmpty());
    }

    private void addRow(int i) {
        JCheckBox box = new JCheckBox();
        box.setOpaque(false);
        box.addActionListener(e -> ears.turn(group, seen.get(i).value()));
        boxes.add(box);
        JLabel count = Widgets.faint("count-" + group + "-" + i, "");
        counts.add(count);
        values.add(box, "wmin 0");
        values.add(count, "wrap");
    }
}
