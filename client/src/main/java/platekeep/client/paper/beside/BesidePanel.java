package platekeep.client.paper.beside;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Ask;
import platekeep.client.ui.BigPicture;
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The scans and photos of a plate as a list at the side; the chosen one can be seen large. */
public final class BesidePanel extends JPanel implements BesideView {
    private static final long serialVersionUID = 1L;

    private static final long LARGE_PICTURES = 64L << 20;
    private static final Dimension PICTURE = new Dimension(270, 180);
    private static final int CELL = PICTURE.height + 34;

    private transient BesidePresenter presenter;
    private final DefaultListModel<BesideState.Item> model = new DefaultListModel<>();
    private final JList<BesideState.Item> list = new JList<>(model);
    private final JTextArea nothing = Widgets.prose(
            "beside-nothing", "No scan of the paper and no photo of the finished work lies beside this plate yet.");
    private final BigPicture large;
    private transient Runnable seen = () -> {};
    private transient Runnable changed = () -> {};
    private transient Runnable charted = () -> {};
    private JButton begin;

    public BesidePanel(Tasks tasks, Thumbnails thumbnails) {
        super(new BorderLayout());
        setName("beside");
        large = new BigPicture(
                "beside-large", new Pictures(tasks, new Thumbnails(LARGE_PICTURES), () -> large().repaint()));
        list.setName("beside-pictures");
        list.setCellRenderer(new Cell(new Pictures(tasks, thumbnails, list::repaint)));
        list.setFixedCellHeight(CELL);
        list.setFixedCellWidth(PICTURE.width + 20);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Scans and photos");
        list.addListSelectionListener(e -> showLarge());
        Widgets.onOwnKey(list, "ENTER", () -> seen.run());
        Widgets.onOwnKey(list, "DELETE", this::putAway);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && !model.isEmpty()) {
                    seen.run();
                }
            }
        });
        nothing.setBorder(Widgets.air(14, 14, 10, 14));
        add(nothing, BorderLayout.NORTH);
        add(Widgets.scroll("beside-scroll", list), BorderLayout.CENTER);
        add(buttons(), BorderLayout.SOUTH);
    }

    private JComponent buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 8 10 10 10, fillx", "[grow, fill][grow, fill]"));
        buttons.setBorder(Widgets.edge(1, 0, 0, 0));
        buttons.add(Widgets.button("beside-add", "Add…", () -> presenter.add()));
        buttons.add(Widgets.button("beside-large-button", "Large (Enter)", () -> seen.run()), "wrap");
        buttons.add(Widgets.button("beside-put-away", "Put away…", this::putAway), "span 2, wrap");
        begin = Widgets.mainButton("beside-begin", "Begin the chart…", () -> charted.run());
        begin.setVisible(false);
        buttons.add(begin, "span 2, hidemode 3");
        return buttons;
    }

    public void presenter(BesidePresenter newPresenter) {
        this.presenter = newPresenter;
    }

    /**
     * Says what to do when a picture is to be seen large, and when there are others than before.
     *
     * @param large she wants to see the chosen one large
     * @param others the pictures are not those of before
     */
    public void ears(Runnable large, Runnable others) {
        this.seen = large;
        this.changed = others;
    }

    /** Says what to do when she wants to chart what is only a scan yet. */
    public void onBegin(Runnable begins) {
        this.charted = begins;
    }

    /** Offers to begin a chart where there is none. */
    public void offerChart(boolean isBare) {
        begin.setVisible(isBare);
    }

    /** Where the chosen one is seen large. */
    public BigPicture large() {
        return large;
    }

    /** Whether there is anything to be seen. */
    public boolean isEmpty() {
        return model.isEmpty();
    }

    private void putAway() {
        presenter.putAway(list.getSelectedIndex());
    }

    private void showLarge() {
        Optional<BesideState.Item> chosen = Optional.ofNullable(list.getSelectedValue());
        large.show(
                chosen.map(BesideState.Item::source),
                chosen.map(BesideState.Item::words).orElse(""),
                "This plate has no chart and no picture yet.");
    }

    @Override
    public void show(BesideState state) {
        List<BesideState.Item> before = java.util.Collections.list(model.elements());
        if (!before.equals(state.items())) {
            int at = Math.max(0, list.getSelectedIndex());
            model.clear();
            model.addAll(state.items());
            list.setSelectedIndex(Math.min(at, model.size() - 1));
        }
        nothing.setVisible(model.isEmpty());
        showLarge();
        changed.run();
    }

    /** How many there are. */
    public int count() {
        return model.size();
    }

    @Override
    public Answer askPutAway(String words) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]"));
        form.add(Widgets.prose("beside-question", words + " leaves the plate. It stays in the history."), "wmin 380");
        return Ask.ask(this, "Put away", form, "Put away", Optional::empty) == Ask.Answer.YES
                ? Answer.PUT_AWAY
                : Answer.LEAVE;
    }

    /** Paints one picture with its words below. */
    private static final class Cell extends JComponent implements ListCellRenderer<BesideState.Item> {
        private static final long serialVersionUID = 1L;

        private final transient Pictures pictures;
        private transient BesideState.Item item;
        private boolean isChosen;

        Cell(Pictures pictures) {
            this.pictures = pictures;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends BesideState.Item> of,
                BesideState.Item value,
                int index,
                boolean isSelected,
                boolean cellHasFocus) {
            item = value;
            isChosen = isSelected;
            setFont(of.getFont());
            return this;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            PlatePainter.smooth((java.awt.Graphics2D) graphics);
            if (isChosen) {
                graphics.setColor(Look.chosen());
                graphics.fillRoundRect(4, 4, getWidth() - 8, getHeight() - 8, 8, 8);
            }
            int x = (getWidth() - PICTURE.width) / 2;
            graphics.setColor(new Color(Look.cloth()));
            graphics.fillRect(x, 10, PICTURE.width, PICTURE.height);
            pictures.of(item.source(), PICTURE).ifPresent(image -> graphics.drawImage(image, x, 10, null));
            graphics.setColor(Look.ink());
            graphics.setFont(getFont());
            graphics.drawString(
                    item.words(),
                    x + 2,
                    12 + PICTURE.height + graphics.getFontMetrics().getAscent());
        }
    }
}
