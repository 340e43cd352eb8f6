package platekeep.client.join;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.chart.Press;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Clash;

/** The Join screen: what was found, the joined chart, and the answers to what is looked at. */
final class JoinPanel extends JPanel implements JoinView {
    private static final long serialVersionUID = 1L;

    /** So wide a question wraps; its height follows. */
    private static final int QUESTION_WIDTH = 400;

    private final MatterList matters = new MatterList(index -> presenter().select(index));
    private final JoinChart chart = new JoinChart(new OnChart());
    private final AnswerPanel answers = new AnswerPanel(index -> presenter().answer(index));
    private final FaultList faults = new FaultList(fault -> presenter().pointOut(fault));
    private final JoinBar bar = new JoinBar(new OnBar());
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = Widgets.clear(cards);
    private final JLabel nothing = Widgets.faint("join-nothing", "");
    private transient JoinPresenter presenter;
    private boolean wantsFocus;

    JoinPanel() {
        super(new BorderLayout());
        JPanel work = Widgets.clear(new MigLayout(
                "insets 0, fill",
                "[230:22%:300, fill]14[grow, fill]14[270:25%:360, fill]",
                "[grow, fill]8[128!, fill]"));
        work.add(Widgets.scroll("join-matters-scroll", matters), "spany 2, hmin 0");
        work.add(chart, "wmin 0, hmin 0");
        work.add(Widgets.scroll("join-answers", answers), "spany 2, hmin 0, wrap");
        work.add(faults, "wmin 0");
        JPanel empty = Widgets.clear(new MigLayout("insets 40 0 0 0, fillx", "[center, grow]"));
        empty.add(nothing);
        middle.add(work, "work");
        middle.add(empty, "empty");
        JPanel inside =
                Widgets.clear(new MigLayout("insets 16 20 10 20, fill, wrap 1", "[grow, fill]", "[]12[grow, fill]6[]"));
        inside.add(bar, "wmin 0");
        inside.add(middle, "hmin 0, wmin 0");
        inside.add(
                Widgets.styled(
                        Widgets.faint(
                                "join-keys",
                                "1 to 9 take an answer · N next open · 0 leave open · P as painted · F the chart, then"
                                        + " arrows and Space paint · Alt+1 to 9 colour · L the list"),
                        "font: -1; foreground: $Platekeep.faintInk"),
                "wmin 0");
        add(inside, BorderLayout.CENTER);
        keys();
        show(JoinState.NOTHING);
    }

    private void keys() {
        for (int i = 0; i < 9; i++) {
            int index = i;
            Widgets.onKey(this, String.valueOf(i + 1), () -> presenter().answer(index));
            Widgets.onKey(this, "alt " + (i + 1), () -> presenter().painting().chooseNth(index));
        }
        Widgets.onKey(this, "0", () -> presenter().reopen());
        Widgets.onKey(this, "N", () -> presenter().nextOpen(1));
        Widgets.onKey(this, "shift N", () -> presenter().nextOpen(-1));
        Widgets.onKey(this, "P", () -> presenter().takePainted());
        Widgets.onKey(this, "A", bar::offerRest);
        Widgets.onKey(this, "F", chart::toChart);
        Widgets.onKey(this, "L", this::toAnswers);
        Widgets.onKey(this, "ctrl Z", () -> presenter().undo());
        Widgets.onKey(this, "ctrl Y", () -> presenter().redo());
        Widgets.onKey(this, "ctrl shift Z", () -> presenter().redo());
        Widgets.onKey(this, "ctrl S", () -> presenter().save());
        Widgets.onKey(this, "F5", () -> presenter().again());
        Widgets.onKey(this, "ctrl PAGE_DOWN", () -> presenter().nextPlate(1));
        Widgets.onKey(this, "ctrl PAGE_UP", () -> presenter().nextPlate(-1));
        Widgets.onKey(this, "ctrl PLUS", () -> chart.zoom(1));
        Widgets.onKey(this, "ctrl EQUALS", () -> chart.zoom(1));
        Widgets.onKey(this, "ctrl MINUS", () -> chart.zoom(-1));
        Widgets.onKey(this, "ctrl 0", chart::fit);
    }

    void presenter(JoinPresenter newPresenter) {
        presenter = newPresenter;
    }

    private JoinPresenter presenter() {
        return presenter;
    }

    /** The focus goes to the list, as soon as there is one. */
    void toAnswers() {
        wantsFocus = !matters.isShowing();
        matters.requestFocusInWindow();
    }

    @Override
    public void show(JoinState state) {
        bar.show(state);
        cards.show(middle, state.board().isPresent() ? "work" : "empty");
        nothing.setText(state.chosen() >= 0 ? "" : state.nothing());
        state.board()
                .ifPresentOrElse(
                        board -> {
                            matters.show(board.matters(), board.selected());
                            chart.show(board, state.painting());
                            answers.show(board);
                            faults.show(board.faults());
                            if (wantsFocus && isShowing()) {
                                toAnswers();
                            }
                        },
                        () -> {
                            chart.clear();
                            answers.clear();
                        });
    }

    @Override
    public void reveal(Area area) {
        chart.reveal(area);
    }

    @Override
    public void pointOut(Spot spot) {
        chart.pointOut(spot);
    }

    @Override
    public void causes(List<String> words) {
        faults.causes(words);
    }

    @Override
    public void place(String words) {
        chart.place(words);
    }

    @Override
    public Optional<String> askReason(String suggestion) {
        JTextField reason = new JTextField(suggestion, 36);
        reason.setName("join-reason");
        JPanel inside = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 6", "[grow, fill]"));
        inside.add(Widgets.label("join-reason-label", "Why this version?"));
        inside.add(reason);
        Ask.Answer answer = Ask.ask(
                this,
                "Save version",
                inside,
                "Save",
                () -> reason.getText().isBlank() ? Optional.of("Say in a few words why.") : Optional.empty());
        return answer == Ask.Answer.YES ? Optional.of(reason.getText()) : Optional.empty();
    }

    @Override
    public Consent askConsent(String question, String yes) {
        JTextArea words = Widgets.prose("join-question", question);
        words.setSize(QUESTION_WIDTH, Short.MAX_VALUE);
        Ask.Answer answer = Ask.ask(this, "Join", words, yes, Optional::empty);
        return answer == Ask.Answer.YES ? Consent.YES : Consent.NO;
    }

    /** What is done on the chart. */
    private final class OnChart implements JoinChart.Ears {
        @Override
        public void choose(char key) {
            presenter().painting().choose(key);
        }

        @Override
        public void press(Spot spot, Press how) {
            presenter().painting().press(spot);
        }

        @Override
        public void drag(Spot spot) {
            presenter().painting().drag(spot);
        }

        @Override
        public void release() {
            presenter().painting().release();
        }

        @Override
        public void pick(Spot spot) {
            presenter().painting().pick(spot);
        }

        @Override
        public void hover(Optional<Spot> spot) {
            presenter().painting().hover(spot);
        }

        @Override
        public void moveCursor(int rows, int positions) {
            presenter().painting().moveCursor(rows, positions);
        }

        @Override
        public void drawCursor(int rows, int positions) {
            presenter().painting().drawCursor(rows, positions);
        }

        @Override
        public void moveChosen(int rows, int positions) {
            // nothing is chosen here: a join is painted, not moved
        }

        @Override
        public void useAtCursor() {
            presenter().painting().useAtCursor();
        }

        @Override
        public void eraseAtCursor() {
            presenter().painting().eraseAtCursor();
        }
    }

    /** What is asked for above. */
    private final class OnBar implements JoinBar.Ears {
        @Override
        public void chooseLibrary(int index) {
            presenter().chooseLibrary(index);
        }

        @Override
        public void choosePlate(int index) {
            presenter().choosePlate(index);
        }

        @Override
        public void nextOpen() {
            presenter().nextOpen(1);
        }

        @Override
        public void bulk(Bulk bulk) {
            presenter().bulk(bulk);
        }

        @Override
        public Map<Clash.What, Integer> openKinds() {
            return presenter().openKinds();
        }

        @Override
        public String partnerName() {
            return presenter().partnerName();
        }

        @Override
        public void undo() {
            presenter().undo();
        }

        @Override
        public void redo() {
            presenter().redo();
        }

        @Override
        public void save() {
            presenter().save();
        }
    }
}
