package platekeep.client.join;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import platekeep.client.ui.Look;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.stitch.Finding;
import platekeep.model.stitch.Severity;

/** What the check says of the joined plate, one below the other; one that is clicked shows its place. */
final class FaultList extends JPanel {
    private static final long serialVersionUID = 1L;

    private final DefaultListModel<Faults.Fault> model = new DefaultListModel<>();
    private final JList<Faults.Fault> list = new Findings(model);
    private final JLabel heading = Widgets.heading("What the check says");
    private final JTextArea causes = Widgets.prose("join-causes", "");
    private transient List<Faults.Fault> shown = List.of();

    FaultList(Consumer<Faults.Fault> pointOut) {
        super(new BorderLayout(0, 4));
        setOpaque(false);
        list.setName("join-findings");
        list.getAccessibleContext().setAccessibleName("What the check says");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.setOpaque(false);
        Widgets.onOwnKey(list, "ENTER", () -> chosen().ifPresent(pointOut));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                chosen().ifPresent(pointOut);
            }
        });
        causes.setVisible(false);
        add(causes, BorderLayout.SOUTH);
        add(heading, BorderLayout.NORTH);
        add(Widgets.scroll("join-findings-scroll", list), BorderLayout.CENTER);
    }

    private Optional<Faults.Fault> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** Tells which changes the finding that was chosen comes from. */
    void causes(List<String> words) {
        causes.setText(words.isEmpty() ? "" : "It comes from " + String.join(" and ", words) + ".");
        causes.setVisible(!words.isEmpty());
        revalidate();
    }

    void show(List<Faults.Fault> faults) {
        long fresh = faults.stream().filter(Faults.Fault::isNew).count();
        heading.setText(
                faults.isEmpty()
                        ? "The check finds nothing to mend"
                        : "What the check says: " + faults.size()
                                + (fresh == 0 ? ", none of it new" : ", " + fresh + " by joining"));
        if (!faults.equals(shown)) {
            shown = faults;
            causes(List.of());
            model.clear();
            model.addAll(faults);
        }
    }

    /** Findings whose cells wrap to the width of the list. */
    private static final class Findings extends JList<Faults.Fault> {
        private static final long serialVersionUID = 1L;

        Findings(DefaultListModel<Faults.Fault> model) {
            super(model);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public void setBounds(int x, int y, int width, int height) {
            boolean isOther = width != getWidth();
            super.setBounds(x, y, width, height);
            if (isOther) {
                // the cells wrap to the width, so their heights have to be asked for again
                setFixedCellHeight(10);
                setFixedCellHeight(-1);
            }
        }
    }

    /** How grave it is, whether it is new, where, and the sentence, in as many lines as it takes. */
    private static final class Cell extends JPanel implements ListCellRenderer<Faults.Fault> {
        private static final long serialVersionUID = 1L;

        private final JLabel sign = new JLabel();
        private final JTextArea words = Widgets.prose("finding", "");

        Cell() {
            super(new BorderLayout(6, 0));
            setBorder(Widgets.air(3, 4, 3, 4));
            sign.setVerticalAlignment(JLabel.TOP);
            add(sign, BorderLayout.WEST);
            add(words, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Faults.Fault> from,
                Faults.Fault value,
                int index,
                boolean isSelected,
                boolean hasFocus) {
            Finding finding = value.finding();
            boolean isError = finding.severity() == Severity.ERROR;
            setOpaque(isSelected);
            setBackground(Look.chosen());
            sign.setIcon(Sign.TROUBLE.icon(14, isError ? Look.trouble() : Look.warning()));
            words.setForeground(value.isNew() ? Look.ink() : Look.faintInk());
            words.setFont(from.getFont().deriveFont(from.getFont().getSize2D() - 1f));
            String where = finding.row().map(row -> "Row " + row).orElse("")
                    + finding.pleat().map(pleat -> ", pleat " + pleat).orElse("");
            String text = (value.isNew() ? "New: " : "") + (where.isEmpty() ? "" : where + ": ") + finding.text();
            words.setText(text);
            words.setSize(Math.max(60, from.getWidth() - 28), Short.MAX_VALUE);
            getAccessibleContext().setAccessibleName(text);
            return this;
        }
    }
}
