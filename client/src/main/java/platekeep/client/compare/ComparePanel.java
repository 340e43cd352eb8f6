package platekeep.client.compare;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;
import platekeep.model.compare.Difference;

/** The comparison: two charts with their rows lined up, and the changes in words beside them. */
final class ComparePanel extends JPanel implements CompareView {
    private static final long serialVersionUID = 1L;
    private static final int LIST_WIDTH = 300;

    private final JLabel before = Widgets.title("compare-before", "Nothing to compare yet");
    private final JLabel after = Widgets.title("compare-after", "");
    private final JLabel counter =
            Widgets.faint("compare-counter", "Choose two plates in the gallery, or two versions in a plate's history.");
    private final DefaultListModel<String> words = new DefaultListModel<>();
    private final JList<String> changes = new JList<>(words);
    private final PairedCharts charts = new PairedCharts();
    private transient ComparePresenter presenter;
    private boolean isFilling;

    ComparePanel() {
        super(new BorderLayout());
        setName("compare");
        JPanel head = Widgets.clear(new MigLayout("insets 14 18 10 18, fillx", "[grow, fill, sg][grow, fill, sg]"));
        head.add(before);
        head.add(after, "wrap");
        head.add(counter, "span 2");
        changes.setName("compare-changes");
        changes.getAccessibleContext().setAccessibleName("Changes in words");
        changes.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        changes.setCellRenderer(new ChangeCell());
        changes.addListSelectionListener(e -> chosen());
        JPanel side = new JPanel(new BorderLayout());
        side.setBorder(Widgets.edge(0, 1, 0, 0));
        side.setPreferredSize(new Dimension(LIST_WIDTH, 10));
        JPanel steps = new JPanel(new MigLayout("insets 10 12 10 12", "[grow, fill][grow, fill]"));
        steps.add(Widgets.button("compare-previous", "Change before", () -> presenter.previous()));
        steps.add(Widgets.button("compare-next", "Next change", () -> presenter.next()));
        side.add(steps, BorderLayout.NORTH);
        side.add(Widgets.scroll("compare-changes-scroll", changes), BorderLayout.CENTER);
        add(head, BorderLayout.NORTH);
        add(Widgets.scroll("compare-charts-scroll", charts), BorderLayout.CENTER);
        add(side, BorderLayout.EAST);
        Widgets.onKey(this, "N", () -> presenter.next());
        Widgets.onKey(this, "P", () -> presenter.previous());
    }

    void presenter(ComparePresenter with) {
        this.presenter = with;
    }

    void toChanges() {
        changes.requestFocusInWindow();
    }

    private void chosen() {
        if (!isFilling && changes.getSelectedIndex() >= 0) {
            presenter.choose(changes.getSelectedIndex());
        }
    }

    @Override
    public void show(CompareState state) {
        isFilling = true;
        before.setText(state.before());
        after.setText(state.after());
        counter.setText(state.counter());
        if (!charts.shows(state.comparison())) {
            charts.show(state.comparison());
            words.clear();
            words.addAll(state.comparison().differences().stream()
                    .map(Difference::words)
                    .toList());
        }
        if (state.chosen() >= 0) {
            changes.setSelectedIndex(state.chosen());
            changes.ensureIndexIsVisible(state.chosen());
        }
        isFilling = false;
        charts.point(state.difference());
    }
}
