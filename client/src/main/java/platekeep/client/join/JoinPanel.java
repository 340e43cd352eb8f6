package platekeep.client.join;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.ImageIcon;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The Join screen: left the plates that wait, in the middle the answers to one clash, below what was settled. */
final class JoinPanel extends JPanel implements JoinView {
    private static final long serialVersionUID = 1L;
    private static final Dimension PICTURE = new Dimension(260, 210);

    private final DefaultListModel<JoinState.Waiting> waiting = new DefaultListModel<>();
    private final JList<JoinState.Waiting> list = new JList<>(waiting);
    private final JLabel counter = Widgets.heading("");
    private final JLabel where = Widgets.label("join-where", "");
    private final JPanel answers = Widgets.clear(new MigLayout("insets 0, gap 16, wrap 3", "[][][]", "top"));
    private final JTextArea settled = Widgets.prose("join-settled", "");
    private final JTextArea findings = Widgets.prose("join-findings", "");
    private final JButton next =
            Widgets.button("join-next", "Next clash (N)", () -> presenter().next());
    private final JButton undo =
            Widgets.button("join-undo", "Take back (Ctrl+Z)", () -> presenter().undo());
    private final JButton save = Widgets.mainButton("join-save", "Save version…", this::askAndSave);
    private transient JoinPresenter presenter;
    private boolean showing;

    JoinPanel() {
        super(new BorderLayout());
        list.setName("join-waiting");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.addListSelectionListener(e -> {
            if (!showing && !e.getValueIsAdjusting()) {
                presenter().choose(list.getSelectedIndex());
            }
        });
        counter.setName("join-counter");
        JPanel left = Widgets.clear(new MigLayout("insets 0, fill, wrap 1", "[220!, fill]", "[][grow, fill]"));
        left.add(Widgets.heading("Something to decide in"));
        left.add(Widgets.scroll("join-waiting-scroll", list));
        JPanel right = Widgets.clear(
                new MigLayout("insets 0, fill, wrap 1", "[grow, fill]", "[][][grow, fill]8[130!, fill]12[]"));
        right.add(counter);
        right.add(where);
        right.add(Widgets.scroll("join-answers", answers), "wmin 0");
        right.add(below(), "wmin 0");
        right.add(next, "split 3, growx 0");
        right.add(undo, "growx 0");
        right.add(save, "growx 0, gapleft push");
        JPanel inside = Widgets.clear(
                new MigLayout("insets 24 32 24 32, fill", "[220!, fill]24[grow, fill]", "[]12[grow, fill]"));
        inside.add(Widgets.title("join-title", "Join"), "span 2, wrap");
        inside.add(left, "grow");
        inside.add(right, "grow, wmin 0");
        add(inside, BorderLayout.CENTER);
        keys();
        show(JoinState.NOTHING);
    }

    private JPanel below() {
        JPanel below = Widgets.clear(
                new MigLayout("insets 8 0 0 0, fill", "[grow, fill, sg]16[grow, fill, sg]", "[][grow, fill]"));
        below.add(Widgets.heading("Settled so far"));
        below.add(Widgets.heading("What the check says"), "wrap");
        below.add(Widgets.scroll("join-settled-scroll", settled));
        below.add(Widgets.scroll("join-findings-scroll", findings));
        return below;
    }

    private void keys() {
        for (int i = 0; i < 9; i++) {
            int index = i;
            Widgets.onKey(this, String.valueOf(i + 1), () -> presenter().answer(index));
        }
        Widgets.onKey(this, "N", () -> presenter().next());
        Widgets.onKey(this, "ctrl Z", () -> presenter().undo());
        Widgets.onKey(this, "ctrl S", this::askAndSave);
    }

    void presenter(JoinPresenter newPresenter) {
        presenter = newPresenter;
    }

    private JoinPresenter presenter() {
        return presenter;
    }

    void toAnswers() {
        list.requestFocusInWindow();
    }

    private void askAndSave() {
        if (!save.isEnabled()) {
            return;
        }
        Object reason = JOptionPane.showInputDialog(
                this, "Why this version?", "Save version", JOptionPane.PLAIN_MESSAGE, null, null, presenter.reason());
        if (reason instanceof String text && !text.isBlank()) {
            presenter.save(text.strip());
        }
    }

    @Override
    public void show(JoinState state) {
        showing = true;
        waiting.clear();
        state.waiting().forEach(waiting::addElement);
        if (state.chosen() >= 0) {
            list.setSelectedIndex(state.chosen());
        }
        showing = false;
        counter.setText(state.counter());
        where.setText(state.where());
        answers.removeAll();
        List<JoinState.Answer> all = state.answers();
        for (int i = 0; i < all.size(); i++) {
            answers.add(card(i, all.get(i)), "top");
        }
        if (all.isEmpty()) {
            state.plate().ifPresent(plate -> answers.add(new JLabel(new ImageIcon(Thumbnails.draw(plate, PICTURE)))));
        }
        answers.revalidate();
        answers.repaint();
        settled.setText(String.join("\n", state.settled()));
        findings.setText(
                state.plate().isEmpty()
                        ? ""
                        : state.findings().isEmpty() ? "No error." : String.join("\n", state.findings()));
        next.setEnabled(all.size() > 0);
        undo.setEnabled(state.canUndo());
        save.setEnabled(state.canUndo());
    }

    private JPanel card(int index, JoinState.Answer answer) {
        JPanel card = Widgets.clear(new MigLayout("insets 8, wrap 1, gapy 6", "[260!]"));
        card.add(Widgets.label("join-who-" + (index + 1), answer.who()));
        card.add(new JLabel(new ImageIcon(Thumbnails.draw(answer.result(), PICTURE))));
        card.add(Widgets.prose("join-value-" + (index + 1), answer.words()), "growx, wmin 0");
        card.add(Widgets.button(
                "join-take-" + (index + 1),
                "Take this (" + (index + 1) + ")",
                () -> presenter().answer(index)));
        return card;
    }
}
