package platekeep.client.paper;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Ask;
import platekeep.client.ui.BigPicture;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;
import platekeep.model.find.tag.Tags;

/** The Paper screen: the pile at the left, the picture in the middle, the form at the right. */
final class PaperPanel extends JPanel implements PaperView {
    private static final long serialVersionUID = 1L;

    private static final long LARGE_PICTURES = 64L << 20;

    private transient PaperPresenter presenter;
    private final DefaultListModel<PaperState.Line> model = new DefaultListModel<>();
    private final JList<PaperState.Line> list = new JList<>(model);
    private final JLabel counter = Widgets.faint("paper-counter", "");
    private final FactsForm form = new FactsForm(() -> presenter.takeAndGoOn());
    private final BigPicture picture;
    private final JButton save;
    private final JButton next =
            Widgets.button("paper-next", "Take it and go on (Enter)", () -> presenter.takeAndGoOn());
    private final CardLayout pages = new CardLayout();
    private final JLabel nothing = Widgets.faint("paper-nothing", "");
    private boolean isShowing;

    /** @param bringIn asks for scans */
    PaperPanel(Tasks tasks, Thumbnails thumbnails, Runnable bringIn) {
        setLayout(pages);
        setName("paper");
        save = Widgets.mainButton("paper-save", "Save version…", () -> presenter.save());
        picture = new BigPicture("paper-picture", new Pictures(tasks, new Thumbnails(LARGE_PICTURES), this::repaint));
        list.setCellRenderer(new LineCell(new Pictures(tasks, thumbnails, list::repaint)));
        JPanel work = new JPanel(new BorderLayout());
        work.add(head(bringIn), BorderLayout.NORTH);
        work.add(pile(), BorderLayout.WEST);
        work.add(picture, BorderLayout.CENTER);
        work.add(side(), BorderLayout.EAST);
        add(work, "work");
        JPanel empty = new JPanel(new MigLayout("fill, wrap 1", "[center]", "push[]12[]push"));
        empty.add(nothing);
        empty.add(Widgets.button("paper-bring-first", "Bring scans in…", bringIn));
        add(empty, "nothing");
        pages.show(this, "nothing");
    }

    void presenter(PaperPresenter newPresenter) {
        this.presenter = newPresenter;
    }

    private JComponent head(Runnable bringIn) {
        JPanel head = new JPanel(new MigLayout("insets 8 16 8 14, fillx, gap 6", "[]12[grow]push[][]"));
        head.setBorder(Widgets.edge(0, 0, 1, 0));
        head.add(Widgets.title("paper-heading", "Paper"));
        head.add(counter, "wmin 0");
        head.add(Widgets.button("paper-bring", "Bring scans in…", bringIn));
        head.add(save);
        return head;
    }

    private JComponent pile() {
        list.setName("paper-plates");
        list.setFixedCellHeight(LineCell.HEIGHT);
        list.setFixedCellWidth(100);
        list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        list.getAccessibleContext().setAccessibleName("Plates to fill in");
        list.addListSelectionListener(e -> {
            if (!isShowing && !e.getValueIsAdjusting()) {
                presenter.choose(
                        Arrays.stream(list.getSelectedIndices()).boxed().toList());
            }
        });
        Widgets.onOwnKey(list, "ENTER", form::toTitle);
        JComponent scroll = Widgets.scroll("paper-pile", list);
        scroll.setPreferredSize(new Dimension(236, 10));
        scroll.setBorder(Widgets.edge(0, 0, 0, 1));
        return scroll;
    }

    private JComponent side() {
        JPanel side = new JPanel(new BorderLayout());
        side.add(Widgets.scroll("paper-form-scroll", form), BorderLayout.CENTER);
        JPanel below = new JPanel(new MigLayout("insets 6 14 10 14, fillx, wrap 1", "[grow, fill]", "[]6[]"));
        below.add(next);
        below.add(Widgets.prose(
                "paper-keys",
                "F4 themes and ages as before · Alt+Up, Alt+Down go without taking · F6 picture, + and - closer"));
        below.setBorder(Widgets.edge(1, 0, 0, 0));
        side.add(below, BorderLayout.SOUTH);
        side.setPreferredSize(new Dimension(310, 10));
        side.setBorder(Widgets.edge(0, 1, 0, 0));
        return side;
    }

    void toPicture() {
        picture.requestFocusInWindow();
    }

    void toPile() {
        list.requestFocusInWindow();
    }

    void chooseAll() {
        list.setSelectionInterval(0, model.size() - 1);
    }

    void asBefore() {
        form.asBefore();
    }

    @Override
    public void show(PaperState state) {
        isShowing = true;
        pages.show(this, state.lines().isEmpty() ? "nothing" : "work");
        nothing.setText(
                state.isReading()
                        ? "Reading the plates …"
                        : "Nothing waits here. Bring in scans (Ctrl+Shift+S), or choose plates in the gallery and fill in their facts (Ctrl+Shift+E).");
        fillList(state.lines());
        if (state.many() == 0) {
            list.setSelectedIndex(state.current());
            list.ensureIndexIsVisible(state.current());
        }
        counter.setText(words(state));
        next.setText(state.many() > 0 ? "Take it for all of them (Enter)" : "Take it and go on (Enter)");
        save.setEnabled(state.changed() > 0 || state.current() >= 0);
        form.show(state);
        Optional<PaperState.Line> line = state.line();
        picture.show(
                line.flatMap(PaperState.Line::picture),
                line.map(PaperState.Line::title).orElse(""),
                "This plate has no picture and no chart yet.");
        isShowing = false;
    }

    private void fillList(List<PaperState.Line> lines) {
        if (model.size() != lines.size()) {
            model.clear();
            model.addAll(lines);
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (!model.get(i).equals(lines.get(i))) {
                model.set(i, lines.get(i));
            }
        }
    }

    private static String words(PaperState state) {
        if (state.current() < 0) {
            return "";
        }
        String where = state.many() > 0
                ? state.many() + " plates chosen; what you say is for all of them"
                : (state.current() + 1) + " of " + state.lines().size();
        String library = state.line()
                .map(PaperState.Line::library)
                .filter(name -> !name.isEmpty())
                .map(name -> "  ·  " + name)
                .orElse("");
        return where + library + (state.changed() == 0 ? "" : "  ·  " + state.changed() + " not saved");
    }

    @Override
    public void toTitle() {
        form.toTitle();
    }

    @Override
    public Facts typed() {
        return form.typed();
    }

    @Override
    public Tags lost() {
        return form.lost();
    }

    @Override
    public Optional<String> askReason(String suggestion) {
        JTextField reason = new JTextField(suggestion, 34);
        reason.setName("paper-reason");
        reason.selectAll();
        JPanel asked = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]"));
        asked.add(new JLabel("Reason"));
        asked.add(reason);
        return Ask.ask(
                                this,
                                "Save version",
                                asked,
                                "Save",
                                () -> reason.getText().isBlank()
                                        ? Optional.of("Say in a few words why.")
                                        : Optional.empty())
                        == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(reason.getText().strip());
    }
}
