package platekeep.client.compare;

import java.awt.event.ItemEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.compare.chart.Way;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** How the two charts are looked at: the way, the turns where they take turns, and the size. */
final class WayBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Map<Way, JToggleButton> ways = new EnumMap<>(Way.class);
    private final JPanel turns = Widgets.clear(new MigLayout("insets 0, gap 6, hidemode 3"));
    private final JButton hold;
    private final JComboBox<String> pace = new JComboBox<>();
    private boolean isFilling;

    /** Hears what is asked for. */
    interface Ears {
        void way(Way way);

        void pace(Pace pace);

        void turn();

        void hold();

        void zoom(int steps);

        void fit();

        void closeUp();
    }

    WayBar(Ears ears) {
        super(new MigLayout("insets 2 16 8 16, gap 4, fillx", "[][][]16[]push[][][][]"));
        setName("compare-ways");
        setOpaque(false);
        setBorder(Widgets.edge(0, 0, 1, 0));
        ButtonGroup group = new ButtonGroup();
        for (Way way : Way.values()) {
            JToggleButton button = new JToggleButton(way.word());
            button.setName("compare-way-" + way.name().toLowerCase(java.util.Locale.ROOT));
            button.setToolTipText(way.word() + " (" + (way.ordinal() + 1) + ")");
            button.addActionListener(e -> ears.way(way));
            group.add(button);
            ways.put(way, button);
            add(button);
        }
        hold = Widgets.button("compare-hold", "Hold", ears::hold);
        pace.setName("compare-pace");
        pace.getAccessibleContext().setAccessibleName("How often the charts take turns");
        for (Pace p : Pace.values()) {
            pace.addItem(p.word());
        }
        pace.addItemListener(e -> {
            if (!isFilling && e.getStateChange() == ItemEvent.SELECTED) {
                ears.pace(Pace.values()[pace.getSelectedIndex()]);
            }
        });
        turns.add(Widgets.button("compare-turn", "Turn", ears::turn));
        turns.add(hold);
        turns.add(pace);
        add(turns);
        add(Widgets.iconButton(
                "compare-closer", Sign.SEARCH.icon(18), "The change as large as it fits (Z)", ears::closeUp));
        add(Widgets.iconButton("compare-zoom-out", Sign.ZOOM_OUT.icon(18), "Smaller (−)", () -> ears.zoom(-1)));
        add(Widgets.iconButton("compare-zoom-in", Sign.ZOOM_IN.icon(18), "Larger (+)", () -> ears.zoom(1)));
        add(Widgets.iconButton("compare-fit", Sign.FIT.icon(18), "All of it (0)", ears::fit));
    }

    void show(CompareState state) {
        isFilling = true;
        ways.get(state.way()).setSelected(true);
        turns.setVisible(state.way() == Way.BLINK);
        hold.setText(state.blink().going() == Blink.Going.ON ? "Hold" : "Go on");
        hold.setEnabled(state.blink().pace() != Pace.BY_HAND);
        pace.setSelectedIndex(state.blink().pace().ordinal());
        isFilling = false;
    }
}
