package platekeep.client.plate.side;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.ChartScale;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Finding;

/** The palette: each colour with its name, floss and number of cables; the one that is painted with is chosen. */
public final class ColourPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int MOST_NOTES = 2;
    private static final int HEIGHT = 40;

    private final DefaultListModel<Entry> model = new DefaultListModel<>();
    private final JList<Entry> list = new JList<>(model);
    private final List<JButton> buttons = new ArrayList<>();
    private final JTextArea notes =
            Widgets.styled(Widgets.prose("colour-notes", ""), "font: -1; foreground: $Platekeep.warning");
    private transient List<Entry> shown = List.of();
    private boolean isShowing;

    /** What can be asked for. */
    public interface Ears {
        void choose(char key);

        void add();

        void change(char key);

        void merge(char key);

        void remove(char key);
    }

    private record Entry(char key, Colour colour, int cables, int number) {}

    public ColourPanel(Ears ears) {
        super(new BorderLayout());
        setName("colours");
        list.setName("colour-list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.setFixedCellHeight(HEIGHT);
        list.getAccessibleContext().setAccessibleName("Colours");
        list.addListSelectionListener(e -> {
            if (!isShowing) {
                chosen(ears::choose);
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    chosen(ears::change);
                }
            }
        });
        Widgets.onOwnKey(list, "ENTER", () -> chosen(ears::change));
        Widgets.onOwnKey(list, "DELETE", () -> chosen(ears::remove));
        buttons.add(Widgets.button("colour-add", "Add…", ears::add));
        buttons.add(Widgets.button("colour-change", "Change…", () -> chosen(ears::change)));
        buttons.add(Widgets.button("colour-merge", "Turn into…", () -> chosen(ears::merge)));
        buttons.add(Widgets.button("colour-remove", "Take out", () -> chosen(ears::remove)));
        JPanel row = new JPanel(new MigLayout("insets 8 10 8 10, gap 6, wrap 2", "[grow, fill][grow, fill]"));
        buttons.forEach(button -> row.add(Widgets.styled(button, "margin: 4,6,4,6")));
        add(Widgets.scroll("colour-scroll", list), BorderLayout.CENTER);
        JPanel below = new JPanel(new BorderLayout());
        notes.setBorder(Widgets.air(8, 14, 4, 12));
        below.add(notes, BorderLayout.NORTH);
        below.add(row, BorderLayout.SOUTH);
        add(below, BorderLayout.SOUTH);
    }

    /** Says of the findings those about colours that are hard to tell apart. */
    public void notes(List<Finding> findings) {
        List<String> alike = findings.stream()
                .filter(finding -> finding.rule().startsWith("colours-alike"))
                .map(Finding::text)
                .toList();
        String more = alike.size() > MOST_NOTES ? "\n" + (alike.size() - MOST_NOTES) + " more pairs: see Check." : "";
        notes.setText(String.join("\n", alike.subList(0, Math.min(MOST_NOTES, alike.size()))) + more);
        notes.setVisible(!alike.isEmpty());
    }

    private void chosen(Consumer<Character> then) {
        Optional.ofNullable(list.getSelectedValue()).map(Entry::key).ifPresent(then);
    }

    /**
     * Shows a palette.
     *
     * @param counts cables by key
     * @param chosen the colour that is painted with
     */
    public void show(Plate plate, Map<Character, Integer> counts, Optional<Character> chosen, boolean canDraw) {
        List<Entry> entries = new ArrayList<>();
        plate.palette()
                .entries()
                .forEach((key, colour) ->
                        entries.add(new Entry(key, colour, counts.getOrDefault(key, 0), entries.size() + 1)));
        isShowing = true;
        if (!entries.equals(shown)) {
            shown = entries;
            model.clear();
            model.addAll(entries);
        }
        int at = chosen.map(key -> entries.stream().map(Entry::key).toList().indexOf(key))
                .orElse(-1);
        if (at != list.getSelectedIndex()) {
            list.getSelectionModel().clearSelection();
            list.setSelectedIndex(at);
        }
        isShowing = false;
        buttons.forEach(button -> button.setEnabled(canDraw));
    }

    /** A cable of the thread, its name, and how often it is used. */
    private static final class Cell extends JPanel implements ListCellRenderer<Entry> {
        private static final long serialVersionUID = 1L;

        private transient Entry entry;
        private boolean isChosen;

        Cell() {
            setOpaque(false);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Entry> from, Entry value, int index, boolean isSelected, boolean hasFocus) {
            entry = value;
            isChosen = isSelected;
            setFont(from.getFont());
            getAccessibleContext().setAccessibleName(value.colour().name() + ", " + value.cables() + " cables");
            return this;
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(200, HEIGHT);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            PlatePainter.smooth(g);
            if (isChosen) {
                g.setColor(Look.chosen());
                g.fill(new RoundRectangle2D.Double(4, 2, getWidth() - 8, getHeight() - 4, 10, 10));
                g.setColor(Look.accent());
                g.draw(new RoundRectangle2D.Double(4, 2, getWidth() - 8, getHeight() - 4, 10, 10));
            }
            Color shade = new Color(entry.colour().rgb());
            PlatePainter.paintCable(g, shade, ChartScale.whole(20), 12, 10);
            paintKey(g, shade);
            g.setFont(getFont());
            int base = g.getFontMetrics().getAscent();
            g.setColor(Look.ink());
            g.drawString(entry.colour().name(), 62, 4 + base);
            g.setFont(getFont().deriveFont(getFont().getSize2D() - 1.5f));
            g.setColor(Look.faintInk());
            g.drawString(second(), 62, 21 + base);
            String key = entry.number() <= 9 ? Integer.toString(entry.number()) : "";
            g.drawString(key, getWidth() - 20, 4 + base);
            g.dispose();
        }

        /** The letter that the colour has on the chart. */
        private void paintKey(Graphics2D g, Color shade) {
            g.setFont(getFont().deriveFont(getFont().getSize2D() - 2f));
            g.setColor(Widgets.readableOn(shade));
            String key = String.valueOf(entry.key());
            int x = 32 - g.getFontMetrics().stringWidth(key) / 2;
            g.drawString(key, x, 10 + (19 + g.getFontMetrics().getAscent()) / 2 - 1);
        }

        private String second() {
            String cables =
                    switch (entry.cables()) {
                        case 0 -> "not used";
                        case 1 -> "1 cable";
                        default -> entry.cables() + " cables";
                    };
            return cables + ", " + entry.colour().strands() + " strands"
                    + entry.colour().floss().map(floss -> ", " + floss).orElse("");
        }
    }
}
