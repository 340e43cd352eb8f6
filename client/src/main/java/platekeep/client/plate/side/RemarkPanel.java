package platekeep.client.plate.side;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Dates;
import platekeep.client.ui.Look;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;

/** What was remarked: who, when and where, the open ones first; one that is clicked shows its place. */
public final class RemarkPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final DefaultListModel<Remark> model = new DefaultListModel<>();
    private final JList<Remark> list = new JList<>(model);
    private final List<JButton> buttons = new ArrayList<>();
    private final JLabel none = Widgets.faint("remark-none", "Nothing was remarked yet.");
    private final transient Ears ears;
    private transient Optional<Plate> shown = Optional.empty();

    /** What can be asked for. */
    public interface Ears {
        void say();

        void answer(Remark remark);

        void tick(Remark remark);

        void remove(Remark remark);

        void show(Remark remark);
    }

    public RemarkPanel(Ears ears) {
        super(new BorderLayout());
        this.ears = ears;
        setName("remarks");
        list.setName("remark-list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.getAccessibleContext().setAccessibleName("Remarks");
        Widgets.onOwnKey(list, "ENTER", () -> chosen(ears::show));
        Widgets.onOwnKey(list, "SPACE", () -> chosen(ears::tick));
        Widgets.onOwnKey(list, "DELETE", () -> chosen(ears::remove));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                chosen(ears::show);
            }
        });
        none.setBorder(Widgets.air(12, 14, 12, 14));
        add(none, BorderLayout.NORTH);
        add(Widgets.scroll("remark-scroll", list), BorderLayout.CENTER);
        add(buttons(), BorderLayout.SOUTH);
    }

    private JPanel buttons() {
        buttons.add(Widgets.button("remark-say", "Say…", ears::say));
        buttons.add(Widgets.button("remark-answer", "Answer…", () -> chosen(ears::answer)));
        buttons.add(Widgets.button("remark-tick", "Tick off", () -> chosen(ears::tick)));
        buttons.add(Widgets.button("remark-remove", "Take out", () -> chosen(ears::remove)));
        JPanel row = new JPanel(new MigLayout("insets 8 10 8 10, gap 6, wrap 2", "[grow, fill][grow, fill]"));
        buttons.forEach(button -> row.add(Widgets.styled(button, "margin: 4,6,4,6")));
        return row;
    }

    private void chosen(Consumer<Remark> then) {
        Optional.ofNullable(list.getSelectedValue()).ifPresent(then);
    }

    /** Shows a plate's remarks. */
    public void show(Plate plate, boolean canDraw) {
        boolean isSame = shown.filter(p -> p.remarks().equals(plate.remarks()) && p.rows() == plate.rows())
                .isPresent();
        shown = Optional.of(plate);
        if (!isSame) {
            int at = list.getSelectedIndex();
            model.clear();
            plate.remarks().stream().filter(r -> !r.done()).forEach(model::addElement);
            plate.remarks().stream().filter(Remark::done).forEach(model::addElement);
            list.setSelectedIndex(Math.min(at, model.size() - 1));
        }
        none.setVisible(model.isEmpty());
        buttons.forEach(button -> button.setEnabled(canDraw));
    }

    /** Where a remark is pinned, in words. */
    static String place(Plate plate, Remark remark) {
        int row = remark.row().map(plate::indexOf).orElse(-1);
        if (row < 0) {
            return "The whole plate";
        }
        String pleats = remark.from()
                .map(from -> ", pleats " + from + " to " + (remark.to().orElse(from) + 1))
                .orElse("");
        return "Row " + plate.numberFromBottom(row) + pleats;
    }

    /** A tick where it is done, who and when, the place, and what was said. */
    private final class Cell extends JPanel implements ListCellRenderer<Remark> {
        private static final long serialVersionUID = 1L;

        private final JLabel sign = new JLabel();
        private final JTextArea text = Widgets.prose("remark", "");

        Cell() {
            super(new BorderLayout(8, 0));
            setBorder(Widgets.air(6, 12, 6, 10));
            sign.setVerticalAlignment(JLabel.TOP);
            add(sign, BorderLayout.WEST);
            add(text, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Remark> from, Remark value, int index, boolean isSelected, boolean hasFocus) {
            setBackground(isSelected ? Look.chosen() : from.getBackground());
            sign.setIcon(value.done() ? Sign.TICK.icon(16, Look.faintInk()) : Sign.REMARK.icon(16, Look.accent()));
            text.setFont(from.getFont().deriveFont(from.getFont().getSize2D() - 1f));
            text.setForeground(value.done() ? Look.faintInk() : Look.ink());
            String place = shown.map(plate -> place(plate, value)).orElse("");
            text.setText(value.text() + "\n" + value.by() + ", " + Dates.shortDay(value.on()) + " · " + place);
            text.setSize(Math.max(120, from.getWidth() - 54), Short.MAX_VALUE);
            getAccessibleContext().setAccessibleName((value.done() ? "Done: " : "Open: ") + text.getText());
            return this;
        }
    }
}
