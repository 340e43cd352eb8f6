package platekeep.client.gallery.narrow;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Group;

/**
 * The column of groups to narrow the gallery down by. What is typed above it picks values out of all groups. The parts
 * are made once and only changed afterwards, so that an answer costs little however many values there are.
 */
public final class NarrowPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int WIDTH = 232;

    private final transient NarrowEars ears;
    private final JTextField pick = new JTextField();
    private final JTextArea none = Widgets.prose(
            "narrow-none", "Nothing to narrow down by is called that. Titles and notes are found with Ctrl+F.");
    private final transient Map<Group, SectionBox> boxes = new EnumMap<>(Group.class);
    private transient List<Section> shown = List.of();

    public NarrowPanel(NarrowEars ears) {
        super(new BorderLayout());
        this.ears = ears;
        setName("gallery-narrow");
        JPanel column = new Column();
        column.setOpaque(false);
        for (Group group : Group.values()) {
            SectionBox box = new SectionBox(group, ears);
            boxes.put(group, box);
            column.add(box, "wrap, wmin 0");
        }
        setUpPick();
        JPanel top = Widgets.clear(new MigLayout("insets 12 12 8 12, fillx, hidemode 3, wrap 1", "[grow, fill]"));
        top.add(pick, "wmin 0");
        top.add(none, "wmin 0, gaptop 6");
        none.setVisible(false);
        Widgets.styled(none, "foreground: $Platekeep.faintInk");
        add(top, BorderLayout.NORTH);
        add(Widgets.scroll("gallery-filters", column), BorderLayout.CENTER);
        setBorder(Widgets.edge(0, 0, 0, 1));
        setPreferredSize(new Dimension(WIDTH, 10));
    }

    private void setUpPick() {
        pick.setName("narrow-pick");
        pick.putClientProperty("JTextField.placeholderText", "Themes, series, years …");
        pick.putClientProperty("JTextField.leadingIcon", Sign.SEARCH.icon(14));
        pick.putClientProperty("JTextField.showClearButton", true);
        pick.getAccessibleContext().setAccessibleName("Pick what to narrow down by");
        Widgets.onOwnKey(pick, "ESCAPE", () -> pick.setText(""));
        Widgets.onOwnKey(pick, "DOWN", pick::transferFocus);
        Widgets.onOwnKey(pick, "ENTER", this::takePicked);
        pick.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                refresh();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                refresh();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
    }

    /** Puts the cursor where values are picked. */
    public void toPick() {
        pick.requestFocusInWindow();
        pick.selectAll();
    }

    /** Narrows down by the first value that holds what is typed, or takes it back. */
    private void takePicked() {
        if (pick.getText().isBlank()) {
            return;
        }
        boxes.values().stream()
                .filter(box -> !box.fitting().isEmpty())
                .findFirst()
                .ifPresent(box -> {
                    String value = box.fitting().get(0).value();
                    pick.setText("");
                    ears.turn(box.group(), value);
                });
    }

    /** Shows sections; those that are not there are hidden. */
    public void show(List<Section> sections) {
        if (!sections.equals(shown)) {
            shown = sections;
            refresh();
        }
    }

    private void refresh() {
        String picked = pick.getText().strip().toLowerCase(Locale.ROOT);
        for (SectionBox box : boxes.values()) {
            box.show(
                    shown.stream()
                            .filter(section -> section.group() == box.group())
                            .findFirst(),
                    picked);
        }
        none.setVisible(!picked.isEmpty()
                && boxes.values().stream().allMatch(box -> box.fitting().isEmpty()));
    }

    /** As wide as its place, as high as it needs. */
    private static final class Column extends JPanel implements javax.swing.Scrollable {
        private static final long serialVersionUID = 1L;

        Column() {
            super(new MigLayout("insets 2 12 14 12, fillx, hidemode 3, gapy 4", "[grow, fill]"));
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(java.awt.Rectangle seen, int orientation, int direction) {
            return 24;
        }

        @Override
        public int getScrollableBlockIncrement(java.awt.Rectangle seen, int orientation, int direction) {
            return seen.height - 24;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return false;
        }
    }

    /** Where the values of a group are, for those who put something beside them. */
    public JComponent box(Group group) {
        return boxes.get(group);
    }
}
