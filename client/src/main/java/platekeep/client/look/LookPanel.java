package platekeep.client.look;

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
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The search by look: what to search for at the left, hits in the middle, the chosen one at the right. */
final class LookPanel extends JPanel implements LookView {
    private static final long serialVersionUID = 1L;

    private static final int CELL = 232;

    private transient LookPresenter presenter;
    private final JList<LookCard> list = new JList<>(new DefaultListModel<>());
    private final LookCell cell;
    private final AskedPanel asked;
    private final DetailPanel detail;
    private final JLabel summary = Widgets.label("look-summary", "");
    private final JLabel progress = Widgets.faint("look-progress", "");
    private final JButton stop = Widgets.button("look-stop", "Stop", () -> presenter.stop());
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final JTextArea nothing = Widgets.prose("look-nothing", "");
    private transient List<LookCard> shown = List.of();

    LookPanel(Tasks tasks, Thumbnails thumbnails) {
        super(new BorderLayout());
        setName("look");
        Pictures pictures = new Pictures(tasks, thumbnails, this::repaint);
        this.cell = new LookCell(pictures);
        this.asked = new AskedPanel(pictures, () -> presenter, this::enter);
        this.detail = new DetailPanel(pictures, this::act);
        add(asked, BorderLayout.WEST);
        add(middlePart(), BorderLayout.CENTER);
        add(detail, BorderLayout.EAST);
        setUpList();
    }

    void presenter(LookPresenter newPresenter) {
        this.presenter = newPresenter;
    }

    private JComponent middlePart() {
        JPanel part = new JPanel(new BorderLayout());
        JPanel top = new JPanel(
                new MigLayout("insets 10 14 10 14, fillx, hidemode 3, h 52!", "[grow, fill]12[]10[]", "[center]"));
        top.add(summary, "wmin 0");
        top.add(progress);
        top.add(stop);
        part.add(top, BorderLayout.NORTH);
        JComponent scroll = Widgets.scroll("look-scroll", list);
        list.getParent().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                resizeCells();
            }
        });
        JPanel empty = new JPanel(new MigLayout("fill, insets 40", "20:push[fill, 200:420:420]20:push", "[center]"));
        Widgets.styled(nothing, "foreground: $Platekeep.faintInk");
        empty.add(nothing);
        middle.setFocusable(true);
        middle.add(scroll, "hits");
        middle.add(empty, "nothing");
        part.add(middle, BorderLayout.CENTER);
        return part;
    }

    private void setUpList() {
        list.setName("look-hits");
        list.setLayoutOrientation(JList.HORIZONTAL_WRAP);
        list.setVisibleRowCount(-1);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(cell);
        list.setBorder(Widgets.air(2, 10, 10, 10));
        list.setOpaque(false);
        list.getAccessibleContext().setAccessibleName("What was found");
        list.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                presenter.choose(chosen().map(LookCard::key).orElse(""));
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    act(DetailPanel.Act.OPEN);
                }
            }
        });
        Widgets.onOwnKey(list, "ENTER", () -> act(DetailPanel.Act.OPEN));
    }

    /** Does something with the chosen hit. */
    void act(DetailPanel.Act act) {
        Optional<String> key = chosen().map(LookCard::key);
        Consumer<String> doing =
                switch (act) {
                    case OPEN -> presenter::open;
                    case COMPARE -> presenter::compare;
                    case LIKE -> presenter::likeThis;
                    case BRING_BACK -> presenter::bringBack;
                };
        key.ifPresent(doing);
    }

    private Optional<LookCard> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void resizeCells() {
        int across = list.getParent().getWidth() - 22;
        int columns = Math.max(1, Math.round(across / (float) CELL));
        int width = Math.max(120, across / columns);
        list.setFixedCellWidth(width);
        list.setFixedCellHeight(cell.cellHeight(width, list.getFontMetrics(list.getFont())));
    }

    /** Puts the focus where the keys are of use. */
    void enter() {
        if (list.getModel().getSize() > 0) {
            list.requestFocusInWindow();
        } else if (stop.isVisible() && !asked.takesWords()) {
            // hits are to come, and take it then
            middle.requestFocusInWindow();
        } else {
            asked.enter();
        }
    }

    @Override
    public void show(LookState state) {
        asked.show(state);
        summary.setText(state.cards().isEmpty() ? "" : state.summary());
        progress.setText(state.progress());
        stop.setVisible(!state.progress().isEmpty());
        nothing.setText(state.progress().isEmpty() ? state.summary() : "Plates stand here as soon as they are found.");
        pages.show(middle, state.cards().isEmpty() ? "nothing" : "hits");
        if (!state.cards().equals(shown)) {
            showCards(state.cards());
        }
    }

    private void showCards(List<LookCard> cards) {
        Optional<String> before = chosen().map(LookCard::key);
        boolean areFirst = shown.isEmpty();
        shown = cards;
        DefaultListModel<LookCard> model = new DefaultListModel<>();
        model.addAll(cards);
        list.setModel(model);
        int at = 0;
        for (int i = 0; i < cards.size(); i++) {
            at = before.filter(cards.get(i).key()::equals).isPresent() ? i : at;
        }
        if (cards.isEmpty()) {
            presenter.choose("");
        } else {
            list.setSelectedIndex(at);
            list.ensureIndexIsVisible(at);
            if (areFirst && isShowing() && !asked.isTyping()) {
                list.requestFocusInWindow();
            }
        }
    }

    @Override
    public void show(Optional<LookState.Detail> more) {
        detail.show(more);
    }

    @Override
    public boolean askBringBack(String question) {
        JTextArea words = Widgets.prose("look-bring-back", question);
        words.setPreferredSize(new Dimension(380, 48));
        return Ask.ask(this, "Bring back", words, "Bring back", Optional::empty) == Ask.Answer.YES;
    }
}
