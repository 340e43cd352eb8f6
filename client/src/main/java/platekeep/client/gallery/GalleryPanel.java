package platekeep.client.gallery;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.gallery.narrow.Chips;
import platekeep.client.gallery.narrow.NarrowEars;
import platekeep.client.gallery.narrow.NarrowPanel;
import platekeep.client.settings.Settings;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Group;

/** The gallery: what to narrow down by at the left, search above, plates as cards or as a list. */
final class GalleryPanel extends JPanel implements GalleryView, NarrowEars {
    private static final long serialVersionUID = 1L;

    static final String SIZE = "gallery.size";
    static final int FIRST_SIZE = 224;
    private static final String AS_LIST = "gallery.list";

    private transient GalleryPresenter presenter;
    private transient Supplier<JPopupMenu> popup = JPopupMenu::new;
    private final transient Settings settings;
    private final transient Runnable remember;
    private final JTextField search = new JTextField();
    private final JLabel summary = Widgets.faint("gallery-summary", "");
    private final JTextArea hint = Widgets.prose("gallery-hint", "");
    private final JSlider size = new JSlider(CardList.SMALLEST, CardList.LARGEST);
    private final JToggleButton asList;
    private final CardList list;
    private final PlateTable table = new PlateTable(by -> presenter.narrowing().sortBy(by));
    private final transient Chosen chosen = new Chosen();
    private final NarrowPanel narrow = new NarrowPanel(this);
    private final Chips chips = new Chips(this, () -> presenter.narrowing().clear());
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final JLabel nothing = Widgets.faint("gallery-nothing", "");
    private boolean wasEmpty = true;

    GalleryPanel(CardList list, Settings settings, Runnable remember) {
        super(new BorderLayout());
        this.list = list;
        this.settings = settings;
        this.remember = remember;
        this.asList =
                Widgets.iconToggle("gallery-as-list", Sign.SHEET.icon(16), "As a list with columns (Ctrl+Shift+L)");
        asList.setSelected(settings.get(AS_LIST).isPresent());
        setName("gallery");
        add(narrow, BorderLayout.WEST);
        add(middlePart(), BorderLayout.CENTER);
        setUpPlates(list);
        setUpPlates(table);
        list.setSelectionModel(chosen.model());
        table.setSelectionModel(chosen.model());
        setUpSearch();
        setUpSize();
        asList.addActionListener(e -> changePage());
    }

    void presenter(GalleryPresenter newPresenter) {
        this.presenter = newPresenter;
    }

    /** Says what is offered for the chosen plates. */
    void popup(Supplier<JPopupMenu> newPopup) {
        this.popup = newPopup;
    }

    private JComponent middlePart() {
        JPanel part = new JPanel(new BorderLayout());
        JPanel top = new JPanel(new MigLayout(
                "insets 10 14 6 14, fillx, hidemode 3", "[grow, fill]12[]16:push[]4[]10[60:140:140]", "[]2[]"));
        top.add(search, "wmin 120, wmax 380");
        top.add(summary, "wmin 0");
        top.add(asList);
        top.add(new JLabel(Sign.GALLERY.icon(14)));
        top.add(size, "wrap");
        top.add(hint, "span, growx, wmin 0, wrap");
        top.add(chips, "span, growx, wmin 0");
        Widgets.styled(hint, "foreground: $Platekeep.faintInk");
        part.add(top, BorderLayout.NORTH);
        middle.add(list.scrolled(), "cards");
        middle.add(Widgets.scroll("gallery-table-scroll", table), "list");
        JPanel empty = new JPanel(new MigLayout("fill", "[center]", "[center]"));
        empty.add(nothing);
        middle.add(empty, "nothing");
        part.add(middle, BorderLayout.CENTER);
        return part;
    }

    private void setUpPlates(JComponent plates) {
        Widgets.onOwnKey(plates, "ENTER", this::openChosen);
        plates.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Widgets.stroke("ENTER"), "ENTER");
        plates.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2 && place(e) >= 0) {
                    openChosen();
                }
            }

            @Override
            public void mousePressed(MouseEvent e) {
                offer(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                offer(e);
            }
        });
    }

    /** Which plate the pointer is on; below 0 on none. */
    private int place(MouseEvent e) {
        if (e.getComponent() == table) {
            return table.rowAtPoint(e.getPoint());
        }
        int at = list.locationToIndex(e.getPoint());
        return at >= 0 && list.getCellBounds(at, at).contains(e.getPoint()) ? at : -1;
    }

    private void offer(MouseEvent e) {
        int at = e.isPopupTrigger() ? place(e) : -1;
        if (at < 0) {
            return;
        }
        if (!chosen.model().isSelectedIndex(at)) {
            chosen.model().setSelectionInterval(at, at);
        }
        popup.get().show(e.getComponent(), e.getX(), e.getY());
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
        List<Card> two = chosen.cards();
        if (two.size() == 2) {
            presenter.compare(two.get(0), two.get(1));
        }
    }

    List<Card> chosenCards() {
        return chosen.cards();
    }

    private Optional<Card> chosen() {
        return chosen.cards().stream().findFirst();
    }

    private void setUpSearch() {
        search.setName("gallery-search");
        search.putClientProperty("JTextField.placeholderText", "Find by title, theme, colour, year …");
        search.putClientProperty("JTextField.leadingIcon", Sign.SEARCH.icon(16));
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("Find plates");
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                presenter.narrowing().words(search.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                presenter.narrowing().words(search.getText());
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

    private void setUpSize() {
        size.setName("gallery-size");
        size.setToolTipText("Size of the pictures");
        size.getAccessibleContext().setAccessibleName("Size of the pictures");
        size.setValue(settings.number(SIZE).orElse(FIRST_SIZE));
        size.setEnabled(!asList.isSelected());
        size.addChangeListener(e -> {
            list.wanted(size.getValue());
            if (!size.getValueIsAdjusting()) {
                settings.put(SIZE, Integer.toString(size.getValue()));
                remember.run();
            }
        });
    }

    /** Shows cards instead of the list, or the other way round. */
    void turnList() {
        asList.setSelected(!asList.isSelected());
        changePage();
    }

    private void changePage() {
        settings.forget(AS_LIST);
        if (asList.isSelected()) {
            settings.put(AS_LIST, "yes");
        }
        remember.run();
        size.setEnabled(!asList.isSelected());
        pages.show(middle, page());
        toCards();
    }

    private String page() {
        return wasEmpty ? "nothing" : asList.isSelected() ? "list" : "cards";
    }

    /** Puts the cursor where words are typed. */
    void toSearch() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    /** Puts the cursor where values to narrow down by are picked. */
    void toPick() {
        narrow.toPick();
    }

    /** Puts the focus on the plates. */
    void toCards() {
        if (chosen.model().isSelectionEmpty() && list.getModel().getSize() > 0) {
            chosen.model().setSelectionInterval(0, 0);
        }
        (asList.isSelected() ? table : list).requestFocusInWindow();
    }

    @Override
    public void show(GalleryState state) {
        narrow.show(state.sections());
        chips.show(state.sections());
        summary.setText(
                !state.isReading()
                        ? state.summary()
                        : "Reading …" + (state.cards().isEmpty() ? "" : " " + state.summary()));
        hint.setText(state.hint());
        hint.setVisible(!state.hint().isEmpty());
        if (!search.getText().equals(state.query().words())) {
            search.setText(state.query().words());
        }
        chosen.during(state.cards(), () -> {
            list.show(state.cards());
            table.show(state);
        });
        nothing.setText(emptyWords(state));
        boolean isEmpty = state.cards().isEmpty();
        boolean areFirst = wasEmpty && !isEmpty && isShowing();
        wasEmpty = isEmpty;
        pages.show(middle, page());
        if (areFirst && !search.isFocusOwner() && !narrow.isAncestorOf(focusOwner())) {
            toCards();
        }
    }

    @Override
    public void whenSeen(Runnable then) {
        if (asList.isSelected()) {
            // there are no pictures to wait for
            then.run();
        } else {
            list.whenSeen(then);
        }
    }

    private static java.awt.Component focusOwner() {
        return java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static String emptyWords(GalleryState state) {
        return state.isRoomEmpty()
                ? "No library is open. Make a new one or open one from the menu Library."
                : state.isReading()
                        ? "Reading the plates …"
                        : state.isNarrowed()
                                ? "No plate answers to all of this. Take something back above, or show all with Ctrl+Shift+F."
                                : "No plates yet. Begin the first one with Ctrl+N.";
    }

    @Override
    public void turn(Group group, String value) {
        presenter.narrowing().turn(group, value);
    }

    @Override
    public void open(Group group) {
        presenter.narrowing().open(group);
    }

    @Override
    public void turnMatch(Group group) {
        presenter.narrowing().turnMatch(group);
    }

    @Override
    public Optional<String> typed(Group group, String text) {
        return presenter.narrowing().typed(group, text);
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
}
