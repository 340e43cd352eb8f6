package platekeep.client.compare;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;
import platekeep.model.compare.Difference;

/** What changed in words, the buttons to step through it, and the key to the marks. */
final class ChangeList extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 316;
    private static final int NARROW = 256;
    /** Below this width of the screen the charts need the room more. */
    private static final int ROOMY = 1150;

    private final JLabel counter = Widgets.label("compare-counter", " ");
    private final DefaultListModel<Difference> model = new DefaultListModel<>();
    private final JList<Difference> list = new WordlessList(model);
    private final JPanel steps = Widgets.clear(new MigLayout("insets 10 12 10 12, gap 6", "[grow, fill][][]"));
    private transient Optional<Compared> compared = Optional.empty();
    private transient List<Difference> shown = List.of();
    private boolean isFilling;

    /** Hears which change is wanted. */
    interface Ears {
        void choose(int change);

        void next();

        void previous();
    }

    ChangeList(Ears ears) {
        super(new BorderLayout());
        setName("compare-side");
        setBorder(Widgets.edge(0, 1, 0, 0));
        Widgets.styled(counter, "font: bold");
        counter.setMinimumSize(new Dimension(0, 0));
        steps.add(counter, "wmin 0");
        steps.add(Widgets.button("compare-previous", "Back", ears::previous));
        steps.add(Widgets.button("compare-next", "Next", ears::next));
        list.setName("compare-changes");
        list.getAccessibleContext().setAccessibleName("Changes in words");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(
                new ChangeCell(change -> compared.map(c -> c.shades(change)).orElse(List.of())));
        list.addListSelectionListener(e -> {
            if (!isFilling && list.getSelectedIndex() >= 0) {
                ears.choose(list.getSelectedIndex());
            }
        });
        add(steps, BorderLayout.NORTH);
        add(Widgets.scroll("compare-changes-scroll", list), BorderLayout.CENTER);
        add(new Key(), BorderLayout.SOUTH);
    }

    @Override
    public Dimension getPreferredSize() {
        boolean isNarrow = getParent() != null && getParent().getWidth() < ROOMY;
        return new Dimension(isNarrow ? NARROW : WIDTH, 10);
    }

    void enter() {
        list.requestFocusInWindow();
    }

    void show(CompareState state) {
        isFilling = true;
        compared = state.compared();
        List<Difference> changes = state.compared().map(Compared::changes).orElse(List.of());
        if (changes != shown) {
            shown = changes;
            model.clear();
            model.addAll(changes);
        }
        counter.setText(state.counter().isEmpty() ? " " : state.counter());
        for (java.awt.Component step : steps.getComponents()) {
            step.setEnabled(step == counter || !changes.isEmpty());
        }
        if (state.chosen() >= 0) {
            list.setSelectedIndex(state.chosen());
            list.ensureIndexIsVisible(state.chosen());
        }
        isFilling = false;
    }

    /** A list in which letters are keys of the screen and do not look for words. */
    private static final class WordlessList extends JList<Difference> {
        private static final long serialVersionUID = 1L;

        WordlessList(DefaultListModel<Difference> model) {
            super(model);
        }

        @Override
        public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
            return -1;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }
}
