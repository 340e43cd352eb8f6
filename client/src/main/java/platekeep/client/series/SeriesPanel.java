package platekeep.client.series;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.DropMode;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;

/** The Series screen: the series at the left, the plates in order in the middle, colours and notes at the right. */
final class SeriesPanel extends JPanel implements SeriesView {
    private static final long serialVersionUID = 1L;

    private transient SeriesPresenter presenter;
    private final DefaultListModel<SeriesState.Line> lines = new DefaultListModel<>();
    private final JList<SeriesState.Line> all = new JList<>(lines);
    private final DefaultListModel<SeriesState.Card> cards = new DefaultListModel<>();
    private final JList<SeriesState.Card> order = new JList<>(cards);
    private final DefaultListModel<SeriesState.Shared> shared = new DefaultListModel<>();
    private final JList<SeriesState.Shared> colours = new JList<>(shared);
    private final JTextField title = new JTextField();
    private final JTextArea notes = new JTextArea(5, 10);
    private final JLabel counter = Widgets.faint("series-counter", "");
    private final JButton save;
    private final JButton equal;
    private final CardLayout pages = new CardLayout();
    private final JLabel nothing = Widgets.faint("series-nothing", "");
    private final JButton beginFirst = Widgets.button(
            "series-begin-first", "New series…", () -> presenter().begin());
    private final transient Pictures pictures;
    private boolean isShowing;

    SeriesPanel(Tasks tasks, Thumbnails thumbnails) {
        setLayout(pages);
        setName("series");
        pictures = new Pictures(
                tasks,
                thumbnails,
                () -> java.util.Arrays.stream(java.awt.Window.getWindows())
                        .filter(java.awt.Window::isShowing)
                        .forEach(java.awt.Window::repaint));
        save = Widgets.mainButton("series-save", "Save version…", () -> presenter.save());
        equal = Widgets.button("series-equal", "Make the same…", this::makeEqual);
        JPanel work = new JPanel(new BorderLayout());
        work.add(listPart(), BorderLayout.WEST);
        work.add(middle(), BorderLayout.CENTER);
        work.add(side(), BorderLayout.EAST);
        add(work, "work");
        JPanel empty = new JPanel(new MigLayout("fill, wrap 1", "[center]", "push[]12[]push"));
        empty.add(nothing);
        empty.add(beginFirst);
        add(empty, "nothing");
        pages.show(this, "nothing");
    }

    private SeriesPresenter presenter() {
        return presenter;
    }

    void presenter(SeriesPresenter newPresenter) {
        this.presenter = newPresenter;
    }

    private JComponent listPart() {
        all.setName("series-list");
        all.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        all.setCellRenderer(new LineCell());
        all.setFixedCellWidth(120);
        all.getAccessibleContext().setAccessibleName("Series");
        all.addListSelectionListener(e -> {
            if (!isShowing && !e.getValueIsAdjusting()) {
                takeTyped();
                presenter.choose(all.getSelectedIndex());
            }
        });
        Widgets.onOwnKey(all, "ENTER", order::requestFocusInWindow);
        JPanel part = new JPanel(new BorderLayout());
        part.add(Widgets.scroll("series-list-scroll", all), BorderLayout.CENTER);
        JPanel below = new JPanel(new MigLayout("insets 8 10 10 10, fillx", "[grow, fill]"));
        below.setBorder(Widgets.edge(1, 0, 0, 0));
        below.add(Widgets.button("series-begin", "New series…", () -> presenter.begin()));
        part.add(below, BorderLayout.SOUTH);
        part.setPreferredSize(new Dimension(206, 10));
        part.setBorder(Widgets.edge(0, 0, 0, 1));
        return part;
    }

    private JComponent middle() {
        JPanel head = new JPanel(new MigLayout("insets 8 14 8 14, fillx, gap 8", "[grow, fill]10[]12:push[]6[]"));
        head.setBorder(Widgets.edge(0, 0, 1, 0));
        title.setName("series-title");
        title.getAccessibleContext().setAccessibleName("Title of the series");
        Widgets.styled(title, "font: +4");
        title.addActionListener(e -> presenter.title(title.getText()));
        onLeaving(title, () -> presenter.title(title.getText()));
        head.add(title, "wmin 90, wmax 360");
        head.add(counter, "wmin 0");
        head.add(Widgets.button("series-add", "Add plates…", () -> presenter.add()));
        head.add(save);
        order.setName("series-order");
        order.setLayoutOrientation(JList.HORIZONTAL_WRAP);
        order.setVisibleRowCount(-1);
        order.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        order.setCellRenderer(new PlaceCell(pictures));
        Dimension cell = PlaceCell.size(order.getFontMetrics(order.getFont()));
        order.setFixedCellWidth(cell.width);
        order.setFixedCellHeight(cell.height);
        order.setBorder(Widgets.air(6, 8, 8, 8));
        order.setOpaque(false);
        order.setDragEnabled(true);
        order.setDropMode(DropMode.INSERT);
        order.setTransferHandler(new OrderDrag(order, (places, before) -> presenter.move(places, before)));
        order.getAccessibleContext().setAccessibleName("Plates in order");
        Widgets.onOwnKey(order, "ENTER", () -> presenter.openPlate(order.getSelectedIndex()));
        Widgets.onOwnKey(order, "alt LEFT", () -> presenter.shift(chosen(), -1));
        Widgets.onOwnKey(order, "alt RIGHT", () -> presenter.shift(chosen(), 1));
        Widgets.onOwnKey(order, "alt HOME", () -> presenter.move(chosen(), 0));
        Widgets.onOwnKey(order, "alt END", () -> presenter.move(chosen(), cards.size()));
        Widgets.onOwnKey(order, "DELETE", () -> presenter.remove(chosen()));
        order.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    presenter.openPlate(order.locationToIndex(e.getPoint()));
                }
            }
        });
        JPanel part = new JPanel(new BorderLayout());
        part.add(head, BorderLayout.NORTH);
        part.add(Widgets.scroll("series-order-scroll", order), BorderLayout.CENTER);
        return part;
    }

    private JComponent side() {
        colours.setName("series-colours");
        colours.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        colours.setCellRenderer(new SharedCell());
        colours.setFixedCellHeight(SharedCell.HEIGHT);
        colours.setFixedCellWidth(200);
        colours.getAccessibleContext().setAccessibleName("Colours that plates share");
        colours.addListSelectionListener(e -> equal.setEnabled(Optional.ofNullable(colours.getSelectedValue())
                .filter(SeriesState.Shared::canBeEqual)
                .isPresent()));
        Widgets.onOwnKey(colours, "ENTER", this::makeEqual);
        equal.setEnabled(false);
        JPanel side = new JPanel(new MigLayout(
                "insets 10 12 10 12, fill, wrap 1", "[0:0, grow, fill]", "[][grow, fill, push][][]10[][fill]"));
        side.add(Widgets.heading("Colours of several plates"));
        side.add(Widgets.scroll("series-colours-scroll", colours), "hmin 120");
        side.add(equal);
        side.add(Widgets.button(
                "series-keep-colours", "Keep those shared for drawing", () -> presenter.keepSharedColours()));
        JLabel heading = Widgets.heading("Notes");
        heading.setLabelFor(notes);
        side.add(heading);
        notes.setName("series-notes");
        notes.setLineWrap(true);
        notes.setWrapStyleWord(true);
        onLeaving(notes, this::takeNotes);
        side.add(new JScrollPane(notes), "h 110!");
        side.setPreferredSize(new Dimension(262, 10));
        side.setBorder(Widgets.edge(0, 1, 0, 0));
        return side;
    }

    private static void onLeaving(JComponent part, Runnable take) {
        part.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                take.run();
            }
        });
    }

    private void takeNotes() {
        presenter.notes(
                notes.getText().isBlank()
                        ? List.of()
                        : notes.getText().stripTrailing().lines().toList());
    }

    /** Takes what is being typed. */
    void takeTyped() {
        if (title.isFocusOwner()) {
            presenter.title(title.getText());
        }
        if (notes.isFocusOwner()) {
            takeNotes();
        }
    }

    List<Integer> chosen() {
        return SeriesDialogs.places(order.getSelectedIndices());
    }

    private void makeEqual() {
        presenter.makeEqual(colours.getSelectedIndex());
    }

    void toOrder() {
        if (order.isSelectionEmpty() && !cards.isEmpty()) {
            order.setSelectedIndex(0);
        }
        order.requestFocusInWindow();
    }

    void toList() {
        all.requestFocusInWindow();
    }

    void toColours() {
        if (colours.isSelectionEmpty() && !shared.isEmpty()) {
            colours.setSelectedIndex(0);
        }
        colours.requestFocusInWindow();
    }

    @Override
    public void show(SeriesState state) {
        isShowing = true;
        pages.show(this, state.current() < 0 ? "nothing" : "work");
        beginFirst.setVisible(!state.isReading());
        nothing.setText(
                state.isReading()
                        ? "Reading the series …"
                        : "There is no series yet. A series keeps plates that belong together in their order.");
        fill(lines, state.all());
        all.setSelectedIndex(state.current());
        int[] chosen = order.getSelectedIndices();
        fill(cards, state.plates());
        order.setSelectedIndices(chosen);
        fill(shared, state.colours());
        fillText(state);
        counter.setText(counted(state));
        save.setEnabled(state.isChanged());
        isShowing = false;
    }

    private void fillText(SeriesState state) {
        if (!title.isFocusOwner() && !title.getText().equals(state.title())) {
            title.setText(state.title());
            title.setCaretPosition(0);
        }
        String text = String.join("\n", state.notes());
        if (!notes.isFocusOwner() && !notes.getText().equals(text)) {
            notes.setText(text);
            notes.setCaretPosition(0);
        }
    }

    private static String counted(SeriesState state) {
        int count = state.plates().size();
        return (count == 1 ? "1 plate" : count + " plates") + (state.isChanged() ? "  ·  not saved" : "");
    }

    private static <T> void fill(DefaultListModel<T> model, List<T> items) {
        if (!Collections.list(model.elements()).equals(items)) {
            model.clear();
            model.addAll(items);
        }
    }

    @Override
    public void choose(List<Integer> places) {
        order.setSelectedIndices(places.stream().mapToInt(i -> i).toArray());
        if (!places.isEmpty()) {
            order.ensureIndexIsVisible(places.get(0));
        }
    }

    @Override
    public Optional<NewSeries> askNew(List<String> libraries) {
        return SeriesDialogs.begin(this, libraries);
    }

    @Override
    public List<Integer> askPlates(List<String> titles) {
        return SeriesDialogs.plates(this, titles);
    }

    @Override
    public Optional<String> askReason(String suggestion) {
        return SeriesDialogs.reason(this, suggestion);
    }

    @Override
    public Consent askConsent(String question, String yes) {
        return SeriesDialogs.consent(this, question, yes);
    }

    @Override
    public Optional<Integer> askThread(List<Colour> threads, List<List<Preview>> previews) {
        return SeriesDialogs.thread(this, threads, previews, pictures);
    }
}
