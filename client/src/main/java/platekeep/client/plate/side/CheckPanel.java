package platekeep.client.plate.side;

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

/** What the check says: errors first; a finding that is clicked shows its place. */
public final class CheckPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final DefaultListModel<Finding> model = new DefaultListModel<>();
    private final JList<Finding> list = new JList<>(model);
    private final JLabel fine = Widgets.faint("check-fine", "Nothing to mend: this can be worked as drawn.");
    private transient List<Finding> shown = List.of();

    public CheckPanel(Consumer<Finding> pointOut) {
        super(new BorderLayout());
        setName("check");
        list.setName("check-list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.getAccessibleContext().setAccessibleName("Findings");
        Widgets.onOwnKey(list, "ENTER", () -> chosen().ifPresent(pointOut));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                chosen().ifPresent(pointOut);
            }
        });
        fine.setBorder(Widgets.air(12, 14, 12, 14));
        add(fine, BorderLayout.NORTH);
        add(Widgets.scroll("check-scroll", list), BorderLayout.CENTER);
    }

    private Optional<Finding> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** Shows findings in their order. */
    public void show(List<Finding> findings) {
        fine.setVisible(findings.isEmpty());
        if (!findings.equals(shown)) {
            shown = findings;
            model.clear();
            model.addAll(findings);
        }
    }

    /** A sign for how grave it is, and the sentence. */
    private static final class Cell extends JPanel implements ListCellRenderer<Finding> {
        private static final long serialVersionUID = 1L;

        private final JLabel sign = new JLabel();
        private final JTextArea text = Widgets.prose("finding", "");

        Cell() {
            super(new BorderLayout(8, 0));
            setBorder(Widgets.air(6, 12, 6, 10));
            sign.setVerticalAlignment(JLabel.TOP);
            add(sign, BorderLayout.WEST);
            add(text, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Finding> from, Finding value, int index, boolean isSelected, boolean hasFocus) {
            setBackground(isSelected ? Look.chosen() : from.getBackground());
            boolean isError = value.severity() == Severity.ERROR;
            sign.setIcon(Sign.TROUBLE.icon(16, isError ? Look.trouble() : Look.warning()));
            text.setFont(from.getFont().deriveFont(from.getFont().getSize2D() - 1f));
            text.setForeground(Look.ink());
            text.setText(sentence(value));
            int width = Math.max(120, from.getWidth() - 54);
            text.setSize(width, Short.MAX_VALUE);
            return this;
        }

        private static String sentence(Finding finding) {
            String place = finding.row().map(row -> "Row " + row).orElse("")
                    + finding.pleat().map(pleat -> ", pleat " + pleat).orElse("");
            return place.isEmpty() ? finding.text() : place + ": " + finding.text();
        }
    }
}
