package platekeep.client.compare;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.compare.chart.Spots;
import platekeep.client.compare.chart.Way;
import platekeep.client.compare.paint.PairedCharts;
import platekeep.client.room.Place;
import platekeep.client.ui.Pulse;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.compare.Side;

/** The comparison: heads of both sides, the ways of looking, two charts, and the changes in words beside them. */
final class ComparePanel extends JPanel implements CompareView, PairedCharts.Ears {
    private static final long serialVersionUID = 1L;

    private final SideHead before;
    private final SideHead after;
    private final WayBar ways;
    private final ChangeList changes;
    private final PairedCharts charts = new PairedCharts(this);
    private final JTextArea sentence = Widgets.prose("compare-sentence", "");
    private final JLabel over = Widgets.faint("compare-over", " ");
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final transient Pulse pulse = new Pulse(this::beat);
    private transient ComparePresenter presenter;
    private transient Optional<CompareState> shown = Optional.empty();
    private boolean isEntering;

    ComparePanel() {
        super(new BorderLayout());
        setName("compare");
        before = new SideHead("compare-before", "Before", new HeadEars(Side.BEFORE));
        after = new SideHead("compare-after", "After", new HeadEars(Side.AFTER));
        ways = new WayBar(new WayEars());
        changes = new ChangeList(new ListEars());
        add(head(), BorderLayout.NORTH);
        middle.setName("compare-middle");
        middle.add(sentencePage(), "sentence");
        middle.add(chartsPage(), "charts");
        add(middle, BorderLayout.CENTER);
        add(changes, BorderLayout.EAST);
        keys();
    }

    /** Keys that do what the menu does on keyboards that lack the menu's keys. */
    private void keys() {
        for (String key : List.of("ctrl PLUS", "ctrl shift EQUALS", "ctrl ADD", "typed +")) {
            Widgets.onKey(this, key, () -> charts.zoom(1));
        }
        for (String key : List.of("ctrl SUBTRACT", "typed -")) {
            Widgets.onKey(this, key, () -> charts.zoom(-1));
        }
        Widgets.onKey(this, "typed 0", charts::fit);
        Widgets.onKey(this, "F8", () -> presenter.next());
        Widgets.onKey(this, "shift F8", () -> presenter.previous());
    }

    private JPanel head() {
        JPanel head = Widgets.clear(
                new MigLayout("insets 12 16 8 16, fillx, gapx 12", "[grow, fill, sg]8[]8[grow, fill, sg]"));
        head.add(before, "wmin 0");
        head.add(
                Widgets.iconButton(
                        "compare-swap", Sign.PARTNER.icon(20), "Exchange the two sides (S)", () -> presenter.swap()),
                "aligny top");
        head.add(after, "wmin 0");
        JPanel all = Widgets.clear(new BorderLayout());
        all.add(head, BorderLayout.NORTH);
        all.add(ways, BorderLayout.SOUTH);
        return all;
    }

    private JPanel sentencePage() {
        JPanel page = Widgets.clear(new MigLayout("insets 40, fill", "[grow, center]", "push[]push"));
        Widgets.styled(sentence, "font: +2");
        sentence.setColumns(40);
        page.add(sentence, "wmax 620, growx");
        return page;
    }

    private JPanel chartsPage() {
        JPanel page = Widgets.clear(new BorderLayout());
        page.add(charts, BorderLayout.CENTER);
        over.setBorder(Widgets.air(4, 16, 4, 16));
        page.add(over, BorderLayout.SOUTH);
        return page;
    }

    void presenter(ComparePresenter with) {
        this.presenter = with;
    }

    /** Puts the focus where the keys are of use: on the changes, once there are some. */
    void enter() {
        if (shown.flatMap(CompareState::compared).isPresent()) {
            changes.enter();
        } else {
            before.enter();
            isEntering = true;
        }
    }

    /** The comparison that was waited for is there. */
    private void entered() {
        if (isEntering) {
            isEntering = false;
            changes.enter();
        }
    }

    PairedCharts charts() {
        return charts;
    }

    private void beat() {
        if (isShowing()) {
            presenter.beat();
        }
    }

    @Override
    public void show(CompareState state) {
        Optional<CompareState> old = shown;
        shown = Optional.of(state);
        before.show(state.before());
        after.show(state.after());
        ways.show(state);
        boolean isNew = !old.map(CompareState::compared).equals(Optional.of(state.compared()));
        changes.show(state);
        if (state.compared().isPresent()) {
            showCharts(state, old, isNew);
        }
        sentence.setText(state.sentence());
        cards.show(middle, state.compared().isPresent() ? "charts" : "sentence");
        if (state.compared().isPresent()) {
            entered();
        }
        if (old.filter(o -> o.way() == state.way() && o.blink().equals(state.blink()))
                .isEmpty()) {
            turns(state, old);
        }
    }

    private void showCharts(CompareState state, Optional<CompareState> old, boolean isNew) {
        Compared compared = state.compared().orElseThrow();
        if (old.map(CompareState::way).filter(state.way()::equals).isEmpty()) {
            charts.way(state.way());
        }
        if (isNew) {
            Optional<Compared> was = old.flatMap(CompareState::compared);
            if (was.filter(w -> isOfSamePlates(w, compared)).isPresent()) {
                charts.showAgain(compared.plates());
            } else {
                charts.show(compared.plates());
            }
            over.setText(note(compared));
        }
        charts.front(state.blink().front(), state.blink().front() == Side.BEFORE ? "Before" : "After");
        if (isNew || old.get().chosen() != state.chosen()) {
            Spots spots = state.difference()
                    .map(change -> Spots.of(compared.plates(), change))
                    .orElse(Spots.NONE);
            charts.point(
                    spots,
                    state.counter()
                            + state.difference().map(d -> ": " + d.words()).orElse(""));
        }
    }

    private static boolean isOfSamePlates(Compared was, Compared is) {
        String oldBefore = was.plates().plate(Side.BEFORE).id();
        String oldAfter = was.plates().plate(Side.AFTER).id();
        String newBefore = is.plates().plate(Side.BEFORE).id();
        String newAfter = is.plates().plate(Side.AFTER).id();
        return oldBefore.equals(newBefore) && oldAfter.equals(newAfter)
                || oldBefore.equals(newAfter) && oldAfter.equals(newBefore);
    }

    private static String note(Compared compared) {
        if (compared.changes().isEmpty()) {
            return "The two are the same.";
        }
        return compared.plates().lines().isByNumber()
                ? "Hardly a row is the same, so rows stand side by side by their number from the bottom."
                : " ";
    }

    private void turns(CompareState state, Optional<CompareState> old) {
        boolean isOn = state.way() == Way.BLINK && state.blink().going() == Blink.Going.ON;
        boolean wasOn = old.filter(o -> o.way() == Way.BLINK && o.blink().going() == Blink.Going.ON)
                .isPresent();
        boolean samePace =
                old.filter(o -> o.blink().pace() == state.blink().pace()).isPresent();
        if (!isOn) {
            pulse.off();
        } else if (!wasOn || !samePace) {
            pulse.on(state.blink().pace().millis());
        }
    }

    @Override
    public Optional<Place.Side> askSide(Side side, SidePicker picker) {
        return PickerDialog.ask(this, side == Side.BEFORE ? "Before" : "After", picker);
    }

    @Override
    public void clicked(Side side, double pleat, double line) {
        presenter.chooseAt(side, pleat, line);
    }

    @Override
    public void over(Optional<String> words) {
        over.setText(words.or(() -> shown.flatMap(CompareState::compared).map(ComparePanel::note))
                .orElse(" "));
    }

    /** A side's head. */
    private final class HeadEars implements SideHead.Ears {
        private final Side side;

        HeadEars(Side side) {
            this.side = side;
        }

        @Override
        public void pick() {
            presenter.pick(side);
        }

        @Override
        public void older() {
            presenter.older(side);
        }

        @Override
        public void newer() {
            presenter.newer(side);
        }
    }

    /** The ways of looking. */
    private final class WayEars implements WayBar.Ears {
        @Override
        public void way(Way way) {
            presenter.way(way);
        }

        @Override
        public void pace(Pace pace) {
            presenter.pace(pace);
        }

        @Override
        public void turn() {
            presenter.turn();
        }

        @Override
        public void hold() {
            presenter.hold();
        }

        @Override
        public void zoom(int steps) {
            charts.zoom(steps);
        }

        @Override
        public void fit() {
            charts.fit();
        }

        @Override
        public void closeUp() {
            charts.closeUp();
        }
    }

    /** The list of changes. */
    private final class ListEars implements ChangeList.Ears {
        @Override
        public void choose(int change) {
            presenter.choose(change);
        }

        @Override
        public void next() {
            presenter.next();
        }

        @Override
        public void previous() {
            presenter.previous();
        }
    }
}
