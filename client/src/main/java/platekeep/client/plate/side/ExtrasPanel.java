package platekeep.client.plate.side;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.edit.MarkEdits;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;

/** What is worked or sewn on beside the picture: which single stitch is in hand, the geometric lines, the notions. */
public final class ExtrasPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Ears ears;
    private final JComboBox<String> line = new JComboBox<>(ExtraEdits.LINES.toArray(new String[0]));
    private final JComboBox<String> stitch = new JComboBox<>(MarkEdits.STITCHES.toArray(new String[0]));
    private final JLabel marks = Widgets.faint("extras-marks", " ");
    private final Map<Part, DefaultListModel<String>> models = new EnumMap<>(Part.class);
    private final Map<Part, JList<String>> lists = new EnumMap<>(Part.class);
    private boolean isShowing;
    private final List<JComponent> controls = new ArrayList<>();

    /** The lists. */
    public enum Part {
        LINE,
        NOTION
    }

    /** What can be asked for; things are named by their place in the plate's list. */
    public interface Ears {
        void take(String stitch);

        /** Places lines of this stitch from now on. */
        void takeLine(String stitch);

        /** Takes a line in hand. */
        void hold(int at);

        void add(Part part);

        void change(Part part, int at);

        void remove(Part part, int at);

        /** Moves it to the right, and down by half spaces of the gathering rows. */
        void moveLine(int at, int pleats, int halfSpaces);
    }

    public ExtrasPanel(Ears ears) {
        super(new MigLayout(
                "insets 12 14 10 14, fill, wrap 1, hidemode 3",
                "[grow, fill]",
                "[][][]12[][][][grow 60, fill][]12[][grow 40, fill][]"));
        this.ears = ears;
        setName("extras");
        stitch.setName("extras-stitch");
        stitch.addActionListener(e -> ears.take(String.valueOf(stitch.getSelectedItem())));
        controls.add(stitch);
        JLabel word = Widgets.heading("Single stitch to put on (S)");
        word.setLabelFor(stitch);
        add(word);
        add(stitch, "wmin 0");
        add(marks, "wmin 0");
        line.setName("extras-line");
        line.addActionListener(e -> ears.takeLine(String.valueOf(line.getSelectedItem())));
        controls.add(line);
        JLabel lineWord = Widgets.heading("Geometric line to place (N)");
        lineWord.setLabelFor(line);
        add(lineWord);
        add(line, "wmin 0");
        part(Part.LINE, "Geometric lines", "lines");
        part(Part.NOTION, "Sewn on", "notions");
    }

    private void part(Part part, String heading, String name) {
        DefaultListModel<String> model = new DefaultListModel<>();
        models.put(part, model);
        JList<String> list = new JList<>(model);
        list.setName("extras-" + name);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new WrappedCell());
        list.getAccessibleContext().setAccessibleName(heading);
        lists.put(part, list);
        if (part == Part.LINE) {
            list.addListSelectionListener(e -> {
                if (!isShowing) {
                    chosen(list, ears::hold);
                }
            });
        }
        Widgets.onOwnKey(list, "ENTER", () -> chosen(list, at -> ears.change(part, at)));
        Widgets.onOwnKey(list, "DELETE", () -> chosen(list, at -> ears.remove(part, at)));
        JLabel word = Widgets.heading(heading);
        word.setLabelFor(list);
        add(word);
        add(wrapping(name, list), "wmin 0, hmin 50");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 3"));
        button(row, name + "-add", "Add…", () -> ears.add(part));
        button(row, name + "-change", "Change…", () -> chosen(list, at -> ears.change(part, at)));
        button(row, name + "-remove", "Take out", () -> chosen(list, at -> ears.remove(part, at)));
        if (part == Part.LINE) {
            JPanel arrows = new JPanel(new MigLayout("insets 0, gap 3"));
            arrows.add(Widgets.heading("Move it"));
            arrow(arrows, "←", "One pleat to the left", () -> chosen(list, at -> ears.moveLine(at, -1, 0)));
            arrow(arrows, "→", "One pleat to the right", () -> chosen(list, at -> ears.moveLine(at, 1, 0)));
            arrow(arrows, "↑", "Half a space up", () -> chosen(list, at -> ears.moveLine(at, 0, -1)));
            arrow(arrows, "↓", "Half a space down", () -> chosen(list, at -> ears.moveLine(at, 0, 1)));
            row.add(arrows, "newline, span 3");
        }
        add(row);
    }

    private static JScrollPane wrapping(String name, JList<String> list) {
        JScrollPane pane = Widgets.scroll("extras-scroll-" + name, list);
        pane.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        return pane;
    }

    private void button(JPanel row, String name, String text, Runnable press) {
        JButton button = Widgets.styled(Widgets.button("extras-" + name, text, press), "margin: 4,6,4,6");
        controls.add(button);
        row.add(button);
    }

    private void arrow(JPanel row, String sign, String tip, Runnable press) {
        JButton button = Widgets.styled(Widgets.button("extras-" + tip, sign, press), "margin: 4,4,4,4");
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleName(tip);
        controls.add(button);
        row.add(button);
    }

    private static void chosen(JList<String> list, java.util.function.IntConsumer then) {
        if (list.getSelectedIndex() >= 0) {
            then.accept(list.getSelectedIndex());
        }
    }

    /** Shows what a plate has. */
    public void show(Plate plate, boolean canDraw) {
        int count = plate.marks().size();
        marks.setText(
                count == 0 ? "None on this plate yet" : count == 1 ? "1 on this plate" : count + " on this plate");
        fill(
                Part.LINE,
                plate.lines().stream()
                        .map(line -> ExtraEdits.words(plate, line))
                        .toList());
        fill(Part.NOTION, plate.notions().stream().map(ExtraEdits::words).toList());
        controls.forEach(control -> control.setEnabled(canDraw));
    }

    /** Shows which line is in hand. */
    public void hold(OptionalInt at) {
        isShowing = true;
        JList<String> list = lists.get(Part.LINE);
        if (at.isEmpty()) {
            list.clearSelection();
        } else if (list.getSelectedIndex() != at.getAsInt()) {
            list.setSelectedIndex(at.getAsInt());
        }
        isShowing = false;
    }

    private void fill(Part part, List<String> words) {
        DefaultListModel<String> model = models.get(part);
        for (int i = 0; i < words.size(); i++) {
            if (i >= model.size()) {
                model.addElement(words.get(i));
            } else if (!model.get(i).equals(words.get(i))) {
                model.set(i, words.get(i));
            }
        }
        while (model.size() > words.size()) {
            model.remove(model.size() - 1);
        }
    }
}
