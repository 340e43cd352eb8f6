package platekeep.client.plate;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JViewport;
import net.miginfocom.swing.MigLayout;
import platekeep.client.paper.beside.BesidePanel;
import platekeep.client.plate.ask.ClothDialog;
import platekeep.client.plate.ask.ColourDialog;
import platekeep.client.plate.ask.LineDialog;
import platekeep.client.plate.ask.MotifDialog;
import platekeep.client.plate.ask.PieceDialogs;
import platekeep.client.plate.ask.PlateDialogs;
import platekeep.client.plate.chart.ChartSurface;
import platekeep.client.plate.chart.Overlay;
import platekeep.client.plate.edit.ColourCounts;
import platekeep.client.plate.open.Kin;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.side.CheckPanel;
import platekeep.client.plate.side.ColourPanel;
import platekeep.client.plate.side.ExtrasPanel;
import platekeep.client.plate.side.FactsPanel;
import platekeep.client.plate.side.HistoryStrip;
import platekeep.client.plate.side.RemarkPanel;
import platekeep.client.plate.work.HistoryStep;
import platekeep.client.plate.work.PlateState;
import platekeep.client.plate.work.PlateView;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;

/** The Plate screen: tools at the left, the chart in the middle, facts at the right, the history below. */
final class PlatePanel extends JPanel implements PlateView {
    private static final long serialVersionUID = 1L;

    private static final int SIDE = 350;

    private final transient PlateEars ears = new PlateEars();
    private final ChartSurface chart = new ChartSurface(ears.chart());
    private final Header header = new Header(chart, ears);
    private final NoticeBar notice = new NoticeBar(ears);
    private final ColourPanel colours = new ColourPanel(ears.colours());
    private final FactsPanel facts = new FactsPanel(ears.facts());
    private final CheckPanel check = new CheckPanel(finding -> ears.plates().pointOut(finding));
    private final RemarkPanel remarks = new RemarkPanel(ears.remarks());
    private final ExtrasPanel extras = new ExtrasPanel(ears.extras());
    private final BesidePanel beside;
    private final CardLayout ways = new CardLayout();
    private final JPanel middle = new JPanel(ways);
    private final transient List<Runnable> shows = new ArrayList<>();
    private boolean isPaperWanted;
    private final JTabbedPane side = new JTabbedPane();
    private final HistoryStrip history;
    private final JLabel place = Widgets.faint("place", " ");
    private final ToolBar toolBar = new ToolBar(ears);
    private final transient ColourCounts counts = new ColourCounts();
    private final CardLayout pages = new CardLayout();
    private transient Optional<String> fitted = Optional.empty();
    private transient PlateState shown = PlateState.NOTHING;

    PlatePanel(Tasks tasks, Thumbnails thumbnails) {
        beside = new BesidePanel(tasks, thumbnails);
        setLayout(pages);
        setName("plate");
        history = new HistoryStrip(new Pictures(tasks, thumbnails, this::repaint), ears.history());
        JPanel work = new JPanel(new BorderLayout());
        work.add(above(), BorderLayout.NORTH);
        work.add(toolBar, BorderLayout.WEST);
        work.add(middle(), BorderLayout.CENTER);
        work.add(sidePart(), BorderLayout.EAST);
        work.add(below(), BorderLayout.SOUTH);
        add(work, "plate");
        JPanel nothing = new JPanel(new MigLayout("fill", "[center]", "[center]"));
        nothing.add(Widgets.faint("plate-nothing", "Open a plate in the gallery (Ctrl+1) to see it here."));
        add(nothing, "nothing");
        pages.show(this, "nothing");
    }

    PlateEars ears() {
        return ears;
    }

    ChartSurface chart() {
        return chart;
    }

    HistoryStrip history() {
        return history;
    }

    Header header() {
        return header;
    }

    private JComponent above() {
        JPanel above = new JPanel(new BorderLayout());
        above.add(header, BorderLayout.NORTH);
        above.add(notice, BorderLayout.SOUTH);
        return above;
    }

    private JComponent middle() {
        JScrollPane scroll = Widgets.scroll("chart-scroll", chart);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                if (header.isFitted()) {
                    chart.fit();
                }
            }
        });
        middle.add(scroll, "chart");
        middle.add(beside.large(), "paper");
        beside.ears(() -> paper(true), () -> {
            side.setTitleAt(5, beside.isEmpty() ? "Paper" : "Paper " + beside.count());
            paper(isPaperWanted && !beside.isEmpty());
        });
        Widgets.onOwnKey(beside.large(), "ESCAPE", () -> paper(false));
        return middle;
    }

    BesidePanel beside() {
        return beside;
    }

    /** Hears whenever anything is shown anew. */
    void onShow(Runnable listener) {
        shows.add(listener);
    }

    /** Shows the paper in place of the chart, or the chart; a plate without a chart shows its paper. */
    private void paper(boolean isWanted) {
        isPaperWanted = isWanted;
        boolean isBare = shown.plate().filter(plate -> plate.rows().isEmpty()).isPresent();
        boolean isPaper = isWanted && !beside.isEmpty() || isBare;
        beside.offerChart(isBare);
        ways.show(middle, isPaper ? "paper" : "chart");
        if (isWanted && isPaper) {
            beside.large().requestFocusInWindow();
        } else if (beside.large().isFocusOwner() && !isPaper) {
            chart.requestFocusInWindow();
        }
    }

    /** The chart gives way to the paper, or the other way round. */
    void turnPaper() {
        side.setSelectedIndex(5);
        paper(!isPaperWanted);
    }

    private JComponent sidePart() {
        side.setName("side");
        side.addTab("Colours", colours);
        side.addTab("Facts", Widgets.scroll("facts-scroll", facts));
        side.addTab("Check", check);
        side.addTab("Remarks", remarks);
        side.addTab("Extras", extras);
        side.addTab("Paper", beside);
        Widgets.styled(side, "tabInsets: 4,4,4,4; font: -1");
        side.setPreferredSize(new Dimension(SIDE, 10));
        side.setBorder(Widgets.edge(0, 1, 0, 0));
        return side;
    }

    private JComponent below() {
        JPanel below = new JPanel(new BorderLayout());
        place.setBorder(Widgets.air(4, 14, 5, 14));
        JPanel line = new JPanel(new BorderLayout());
        line.setBorder(Widgets.edge(1, 0, 0, 0));
        line.add(place, BorderLayout.CENTER);
        below.add(line, BorderLayout.NORTH);
        below.add(history, BorderLayout.CENTER);
        return below;
    }

    /** Brings a part of the side to the front: colours, facts or check. */
    void side(int part) {
        side.setSelectedIndex(part);
        Component first = part == 1 ? facts.getComponent(1) : side.getSelectedComponent();
        first.requestFocusInWindow();
    }

    /** Shows or hides the history. */
    void turnHistory() {
        history.setVisible(!history.isVisible());
        revalidate();
    }

    /** Takes over what is being typed. */
    void takeTyped() {
        facts.takeTyped();
    }

    @Override
    public void show(PlateState state) {
        shown = state;
        Optional<Plate> plate = state.plate();
        pages.show(this, plate.isPresent() ? "plate" : "nothing");
        if (plate.isEmpty()) {
            chart.clear();
            return;
        }
        header.show(state);
        notice.show(state);
        chart.show(state.drawing().orElseThrow());
        chart.cursor(state.cursor());
        chart.overlay(new Overlay(
                state.hand().chosen(),
                state.hand().firstEnd(),
                state.hand().axis(),
                state.hand().line()));
        colours.show(plate.get(), counts.of(plate.get()), state.colour(), state.canDraw());
        facts.show(plate.get(), state.canDraw() || isOnlyFacts(state));
        colours.notes(state.findings());
        facts.kin(relatives(state.kin()));
        check.show(state.findings());
        side.setTitleAt(
                2,
                state.findings().isEmpty()
                        ? "Check"
                        : "Check " + state.findings().size());
        remarks.show(plate.get(), state.canDraw());
        extras.show(plate.get(), state.canDraw());
        extras.hold(state.hand().line());
        long open = plate.get().remarks().stream().filter(r -> !r.done()).count();
        side.setTitleAt(3, open == 0 ? "Remarks" : "Remarks " + open);
        history.show(state.history().stream().map(PlatePanel::item).toList(), state.lookingAt());
        toolBar.show(state);
        boolean isOther = !fitted.equals(Optional.of(plate.get().id()));
        fitOnce(plate.get());
        shows.forEach(Runnable::run);
        paper(isPaperWanted && !isOther);
        if (isOther && plate.get().rows().isEmpty()) {
            side.setSelectedIndex(5);
        }
    }

    private static List<FactsPanel.Relative> relatives(Kin kin) {
        List<FactsPanel.Relative> relatives = new ArrayList<>();
        kin.from()
                .ifPresent(
                        from -> relatives.add(new FactsPanel.Relative(from.plateId(), "Started from " + from.words())));
        kin.here()
                .forEach(here ->
                        relatives.add(new FactsPanel.Relative(here.plateId(), here.words() + " was started from it")));
        return relatives;
    }

    private static boolean isOnlyFacts(PlateState state) {
        return state.lookingAt().isEmpty() && state.offer().isEmpty();
    }

    /** A plate that comes into view for the first time is fitted into the window. */
    private void fitOnce(Plate plate) {
        if (!fitted.equals(Optional.of(plate.id()))) {
            fitted = Optional.of(plate.id());
            chart.pointOut(Optional.empty());
            validate();
            header.fit();
            chart.requestFocusInWindow();
        }
    }

    private static HistoryStrip.Item item(HistoryStep step) {
        String names = step.names().isEmpty() ? "" : "  ·  " + String.join(", ", step.names());
        return new HistoryStrip.Item(
                step.versionId(), step.content(), step.plate(), step.day() + names, step.hand(), step.reason());
    }

    PlateState shown() {
        return shown;
    }

    @Override
    public void place(String words) {
        place.setText(words.isEmpty() ? " " : words);
        chart.say(words);
    }

    @Override
    public void pointOut(Spot spot) {
        chart.pointOut(Optional.of(spot));
    }

    @Override
    public void see(Area area) {
        paper(false);
        header.see(area);
    }

    @Override
    public Optional<SaveAnswer> askReason(String suggestion, List<String> hands) {
        return PlateDialogs.reason(this, suggestion, hands);
    }

    @Override
    public Optional<Cloth> askCloth(Cloth before) {
        return new ClothDialog(before).ask(this);
    }

    @Override
    public Optional<String> askPutAway(String title) {
        return PlateDialogs.line(
                this,
                "Put away",
                "\"" + title + "\" leaves the gallery. Its history stays, and it can be brought back at any time.",
                "Reason",
                "Put away",
                "Say why; it stands in the history.");
    }

    @Override
    public Optional<String> askVersionName(String versionWords) {
        return PlateDialogs.line(
                this,
                "Name a version",
                versionWords,
                "Name, such as Spring class",
                "Name it",
                "Give the version a name.");
    }

    @Override
    public Optional<Colour> askColour(String title, Colour before, List<Colour> series) {
        return new ColourDialog(before, series).ask(this, title);
    }

    @Override
    public Optional<Character> askMerge(Palette palette, char gone) {
        return PieceDialogs.merge(this, palette, gone);
    }

    @Override
    public Optional<Recolouring> askRecolour(Palette palette, Set<Character> there, Optional<Character> now) {
        return PieceDialogs.recolour(this, palette, there, now);
    }

    @Override
    public Optional<Repeating> askRepeat(int pleats, IntUnaryOperator room) {
        return PieceDialogs.repeat(this, pleats, room);
    }

    @Override
    public Optional<Strip> askStrip(int pleats, Optional<Repeat> before) {
        return PieceDialogs.strip(this, pleats, before);
    }

    @Override
    public Optional<String> askRemark() {
        return PlateDialogs.line(
                this,
                "Remark",
                "Your partner reads it when she has brought this version in.",
                "What you want to say",
                "Say it",
                "Write what you want to say.");
    }

    @Override
    public Optional<Line> askLine(Plate plate, Line before) {
        return new LineDialog(plate, before).ask(this);
    }

    @Override
    public Optional<Notion> askNotion(Notion before) {
        return PieceDialogs.notion(this, before);
    }

    @Override
    public Optional<String> askMotifName() {
        return PlateDialogs.line(
                this,
                "Keep as a motif",
                "What is chosen is kept under a name, to be put in this or any other plate.",
                "Name, such as Gull",
                "Keep it",
                "Give the motif a name.");
    }

    @Override
    public Optional<MotifAnswer> askMotif(List<Plate> motifs) {
        return MotifDialog.ask(this, motifs);
    }

    @Override
    public Consent askConsent(String question, String yes) {
        return PlateDialogs.consent(this, question, yes);
    }
}
