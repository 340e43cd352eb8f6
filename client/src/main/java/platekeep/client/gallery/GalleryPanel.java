package platekeep.client.gallery;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JSlider;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The gallery: filters at the left, search above, plates as cards. */
final class GalleryPanel extends JPanel implements GalleryView {
    private static final long serialVersionUID = 1L;

    private static final int SMALLEST = 110;
    private static final int LARGEST = 420;
    private static final int SIDES = 22;

    private transient GalleryPresenter presenter;
    private final JTextField search = new JTextField();
    private final JLabel summary = Widgets.faint("gallery-summary", "");
    private final JList<Card> list = new JList<>();
    private final JSlider size = new JSlider(SMALLEST, LARGEST);
    private final CardCell cell;
    private final FacetList libraries = new FacetList("Libraries", word -> presenter.turnLibrary(word));
    private final FacetList series = new FacetList("Series", word -> presenter.turnSeries(word));
    private final FacetList ages = new FacetList("Ages", word -> presenter.turnAge(word));
    private final FacetList themes = new FacetList("Themes", word -> presenter.turnTheme(word));
    private final JComponent clear;
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final JLabel nothing = Widgets.faint("gallery-nothing", "");
    private transient List<Card> shown = List.of();

    GalleryPanel(Tasks tasks, Thumbnails thumbnails, CardCell.Papers paper, int pictureWidth, Consumer<Integer> sized) {
        super(new BorderLayout());
        this.cell = new CardCell(new Pictures(tasks, thumbnails, list::repaint), paper, picture(pictureWidth));
        this.clear = Widgets.button("gallery-clear", "Show all", () -> presenter.clear());
        setName("gallery");
        add(filters(), BorderLayout.WEST);
        add(middlePart(), BorderLayout.CENTER);
        setUpList();
        setUpSearch();
        setUpSize(pictureWidth, sized);
    }

    void presenter(GalleryPresenter newPresenter) {
        this.presenter = newPresenter;
    }

    private static Dimension picture(int width) {
        return new Dimension(width, width * 3 / 4);
    }

    private JComponent filters() {
        JPanel column = new JPanel(new MigLayout("insets 14 14 14 10, fillx, hidemode 3", "[grow, fill]"));
        column.setOpaque(false);
        column.add(clear, "wrap, gapbottom 6");
        for (FacetList group : List.of(libraries, series, ages, themes)) {
            column.add(group, "wrap, gapbottom 12");
        }
        JComponent scroll = Widgets.scroll("gallery-filters", column);
        scroll.setPreferredSize(new Dimension(214, 10));
        scroll.setBorder(Widgets.edge(0, 0, 0, 1));
        return scroll;
    }

    private JComponent middlePart() {
        JPanel part = new JPanel(new BorderLayout());
        JPanel top = new JPanel(new MigLayout("insets 10 14 10 14, fillx", "[grow, fill]12[]16:push[]10[140!]"));
        top.add(search, "wmax 380");
        top.add(summary);
        top.add(new JLabel(Sign.GALLERY.icon(14)));
        top.add(size);
        part.add(top, BorderLayout.NORTH);
        JComponent scroll = Widgets.scroll("gallery-scroll", list);
        list.getParent().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                resizeCards();
            }
        });
        middle.add(scroll, "cards");
        JPanel empty = new JPanel(new MigLayout("fill", "[center]", "[center]"));
        empty.add(nothing);
        middle.add(empty, "nothing");
        part.add(middle, BorderLayout.CENTER);
        return part;
    }

    private void setUpList() {
        list.setName("gallery-plates");
        list.setLayoutOrientation(JList.HORIZONTAL_WRAP);
        list.setVisibleRowCount(-1);
        list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        list.setCellRenderer(cell);
        list.setBorder(Widgets.air(2, 10, 10, 10));
        list.setOpaque(false);
        list.getAccessibleContext().setAccessibleName("Plates");
        Widgets.onOwnKey(list, "ENTER", this::openChosen);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && isOnCard(e)) {
                    openChosen();
                }
            }

            @Override
            public void mousePressed(MouseEvent e) {
                popup(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                popup(e);
            }
        });
    }

    private boolean isOnCard(MouseEvent e) {
        int at = list.locationToIndex(e.getPoint());
        return at >= 0 && list.getCellBounds(at, at).contains(e.getPoint());
    }

    private void popup(MouseEvent e) {
        if (!e.isPopupTrigger() || !isOnCard(e)) {
            return;
        }
        int at = list.locationToIndex(e.getPoint());
        if (!list.isSelectedIndex(at)) {
            list.setSelectedIndex(at);
        }
        JPopupMenu menu = new JPopupMenu();
        menu.add(Widgets.action("Open", this::openChosen));
        menu.add(Widgets.action("New plate from this one", this::beginFromChosen));
        menu.add(Widgets.action("Plates like this one", this::likeChosen));
        if (list.getSelectedValuesList().size() == 2) {
            menu.add(Widgets.action("Compare the two", this::compareChosen));
        }
        menu.addSeparator();
        menu.add(Widgets.action("Put away…", this::putChosenAway));
        menu.show(list, e.getX(), e.getY());
    }

    void openChosen() {
        chosen().ifPresent(presenter::open);
    }

    void beginFromChosen() {
        chosen().ifPresent(presenter::beginFrom);
    }

    void putChosenAway() {
        chosen().ifPresent(presenter::putAway);
    }

    void likeChosen() {
        chosen().ifPresent(presenter::likeThis);
    }

    void compareChosen() {
        List<Card> two = list.getSelectedValuesList();
        if (two.size() == 2) {
            presenter.compare(two.get(0), two.get(1));
        }
    }

    List<Card> chosenCards() {
        return list.getSelectedValuesList();
    }

    private Optional<Card> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void setUpSearch() {
        search.setName("gallery-search");
        search.putClientProperty("JTextField.placeholderText", "Find by title, theme, colour, note …");
        search.putClientProperty("JTextField.leadingIcon", Sign.SEARCH.icon(16));
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("Find plates");
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                presenter.words(search.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                presenter.words(search.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
        Widgets.onOwnKey(search, "ENTER", this::toCards);
        Widgets.onOwnKey(search, "DOWN", this::toCards);
        Widgets.onOwnKey(search, "ESCAPE", () -> search.setText(""));
    }

    private void setUpSize(int width, Consumer<Integer> sized) {
        size.setName("gallery-size");
        size.setToolTipText("Size of the pictures");
        size.getAccessibleContext().setAccessibleName("Size of the pictures");
        size.setValue(Math.max(SMALLEST, Math.min(LARGEST, width)));
        size.addChangeListener(e -> {
            resizeCards();
            if (!size.getValueIsAdjusting()) {
                sized.accept(size.getValue());
            }
        });
        resizeCards();
    }

    /** Makes as many columns as the wanted size allows, and the cards just so wide that they fill the width. */
    private void resizeCards() {
        int around = cell.cellSize(list.getFontMetrics(list.getFont())).width - cell.pictureWidth();
        int across = list.getParent() == null ? 0 : list.getParent().getWidth() - SIDES;
        int columns = Math.max(1, Math.round(across / (float) (size.getValue() + around)));
        int width = across <= 0 ? size.getValue() : Math.max(SMALLEST, across / columns - around);
        cell.pictureSize(picture(width));
        Dimension one = cell.cellSize(list.getFontMetrics(list.getFont()));
        if (list.getFixedCellWidth() != one.width) {
            list.setFixedCellWidth(one.width);
            list.setFixedCellHeight(one.height);
        }
    }

    /** Puts the cursor where words are typed. */
    void toSearch() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    /** Puts the focus on the cards. */
    void toCards() {
        if (list.getSelectedIndex() < 0 && list.getModel().getSize() > 0) {
            list.setSelectedIndex(0);
        }
        list.requestFocusInWindow();
    }

    @Override
    public void show(GalleryState state) {
        libraries.show(state.libraries());
        series.show(state.series());
        ages.show(state.ages());
        themes.show(state.themes());
        clear.setVisible(state.isNarrowed());
        summary.setText(state.isReading() ? "Reading …" : state.summary());
        if (!search.getText().equals(state.words())) {
            search.setText(state.words());
        }
        if (!state.cards().equals(shown)) {
            showCards(state.cards());
        }
        nothing.setText(
                state.isRoomEmpty()
                        ? "No library is open. Make a new one or open one from the menu Library."
                        : state.isReading()
                                ? "Reading the plates …"
                                : state.isNarrowed()
                                        ? "No plate answers to all of this."
                                        : "No plates yet. Begin the first one with Ctrl+N.");
        boolean areFirst = !list.isShowing() && isShowing() && !state.cards().isEmpty();
        pages.show(middle, state.cards().isEmpty() ? "nothing" : "cards");
        if (areFirst && !search.isFocusOwner()) {
            toCards();
        }
    }

    private void showCards(List<Card> cards) {
        Optional<String> before = chosen().map(Card::key);
        shown = cards;
        list.setModel(new Cards(cards));
        before.ifPresent(key -> {
            for (int i = 0; i < cards.size(); i++) {
                if (cards.get(i).key().equals(key)) {
                    list.setSelectedIndex(i);
                }
            }
        });
    }

    @Override
    public Optional<NewPlate> askNewPlate(List<String> libraryNames, List<String> palettes) {
        return GalleryDialogs.newPlate(this, libraryNames, palettes);
    }

    @Override
    public Optional<String> askPutAway(String title) {
        return GalleryDialogs.putAway(this, title);
    }

    @Override
    public Optional<Integer> askPutAwayPlate(List<String> lines) {
        return GalleryDialogs.putAwayPlate(this, lines);
    }

    /** A list that is there as a whole. */
    private static final class Cards extends AbstractListModel<Card> {
        private static final long serialVersionUID = 1L;

        private final transient List<Card> cards;

        Cards(List<Card> cards) {
            this.cards = cards;
        }

        @Override
        public int getSize() {
            return cards.size();
        }

        @Override
        public Card getElementAt(int index) {
            return cards.get(index);
        }
    }
}
