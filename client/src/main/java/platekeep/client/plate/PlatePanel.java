package platekeep.client.plate;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JToggleButton;
import javax.swing.JViewport;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.chart.ChartSurface;
import platekeep.client.plate.edit.ColourEdits;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.side.CheckPanel;
import platekeep.client.plate.side.ColourPanel;
import platekeep.client.plate.side.FactsPanel;
import platekeep.client.plate.side.HistoryStrip;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/** The Plate screen: tools at the left, the chart in the middle, facts at the right, the history below. */
final class PlatePanel extends JPanel implements PlateView {
    private static final long serialVersionUID = 1L;

    private static final int SIDE = 282;

    private final transient PlateEars ears = new PlateEars();
    private final ChartSurface chart = new ChartSurface(ears.chart());
    private final Header header = new Header(chart, ears);
    private final NoticeBar notice = new NoticeBar(ears);
    private final ColourPanel colours = new ColourPanel(ears.colours());
    private final FactsPanel facts = new FactsPanel(ears.facts());
    private final CheckPanel check = new CheckPanel(finding -> ears.plates().pointOut(finding));
    private final JTabbedPane side = new JTabbedPane();
    private final HistoryStrip history;
    private final JLabel place = Widgets.faint("place", " ");
    private final Map<Tool, JToggleButton> tools = new EnumMap<>(Tool.class);
    private final JButton undo = Widgets.iconButton(
            "tool-undo", Sign.UNDO.icon(20), "Undo", () -> ears.draw().undo());
    private final JButton redo = Widgets.iconButton(
            "tool-redo", Sign.REDO.icon(20), "Redo", () -> ears.draw().redo());
    private final JPanel toolBar;
    private final CardLayout pages = new CardLayout();
    private transient Optional<String> fitted = Optional.empty();
    private transient PlateState shown = PlateState.NOTHING;

    PlatePanel(Tasks tasks, Thumbnails thumbnails) {
        setLayout(pages);
        setName("plate");
        history = new HistoryStrip(new Pictures(tasks, thumbnails, this::repaint), ears.history());
        toolBar = toolBar();
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

    private JPanel toolBar() {
        JPanel bar = new JPanel(new MigLayout("insets 8 6 8 6, gap 2, flowy", "[grow, fill]"));
        bar.setBorder(Widgets.edge(0, 0, 0, 1));
        ButtonGroup group = new ButtonGroup();
        Map<Tool, Sign> signs = Map.of(
                Tool.PAINT,
                Sign.PAINT,
                Tool.FILL,
                Sign.FILL,
                Tool.ERASE,
                Sign.ERASE,
                Tool.PICK,
                Sign.PICK,
                Tool.POINT,
                Sign.POINT);
        for (Tool tool : Tool.values()) {
            JToggleButton button = Widgets.iconToggle(
                    "tool-" + tool.name().toLowerCase(java.util.Locale.ROOT),
                    signs.get(tool).icon(20),
                    tool.word() + " (" + tool.key() + ")");
            button.addActionListener(e -> ears.draw().take(tool));
            group.add(button);
            tools.put(tool, button);
            bar.add(button);
        }
        bar.add(undo, "gaptop 10");
        bar.add(redo);
        tool(
                bar,
                "row-above",
                Sign.ROW_ABOVE,
                "Insert a row above (Ctrl+I)",
                () -> ears.draw().insertAbove(),
                "gaptop 10");
        tool(
                bar,
                "row-below",
                Sign.ROW_BELOW,
                "Insert a row below (Ctrl+Shift+I)",
                () -> ears.draw().insertBelow(),
                "");
        tool(
                bar,
                "row-again",
                Sign.ROW_AGAIN,
                "Duplicate the row (Ctrl+R)",
                () -> ears.draw().duplicateRow(),
                "");
        tool(
                bar,
                "row-away",
                Sign.ROW_AWAY,
                "Delete the row (Ctrl+Delete)",
                () -> ears.draw().deleteRow(),
                "");
        tool(
                bar,
                "shift-left",
                Sign.LEFT,
                "Shift the picture to the left",
                () -> ears.draw().shift(-1),
                "gaptop 10");
        tool(
                bar,
                "shift-right",
                Sign.RIGHT,
                "Shift the picture to the right",
                () -> ears.draw().shift(1),
                "");
        return bar;
    }

    private static void tool(JPanel bar, String name, Sign sign, String tip, Runnable press, String where) {
        bar.add(Widgets.iconButton("tool-" + name, sign.icon(20), tip, press), where);
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
        return scroll;
    }

    private JComponent sidePart() {
        side.setName("side");
        side.addTab("Colours", colours);
        side.addTab("Facts", Widgets.scroll("facts-scroll", facts));
        side.addTab("Check", check);
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
        tools.get(state.tool()).setSelected(true);
        colours.show(plate.get(), ColourEdits.counts(plate.get()), state.colour(), state.canDraw());
        facts.show(plate.get(), state.canDraw() || isOnlyFacts(state));
        check.show(state.findings());
        side.setTitleAt(
                2,
                state.findings().isEmpty()
                        ? "Check"
                        : "Check " + state.findings().size());
        history.show(state.history().stream().map(PlatePanel::item).toList(), state.lookingAt());
        showSteps(state);
        fitOnce(plate.get());
    }

    private static boolean isOnlyFacts(PlateState state) {
        return state.lookingAt().isEmpty() && state.offer().isEmpty();
    }

    private void showSteps(PlateState state) {
        for (Component part : toolBar.getComponents()) {
            part.setEnabled(state.canDraw());
        }
        undo.setEnabled(state.canDraw() && state.undo().isPresent());
        redo.setEnabled(state.canDraw() && state.redo().isPresent());
        undo.setToolTipText(state.undo().map(name -> "Undo: " + name).orElse("Nothing to undo"));
        redo.setToolTipText(state.redo().map(name -> "Redo: " + name).orElse("Nothing to redo"));
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
    public Optional<SaveAnswer> askReason(String suggestion, List<String> hands) {
        return PlateDialogs.reason(this, suggestion, hands);
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
    public Optional<Colour> askColour(String title, Colour before) {
        return PlateDialogs.colour(this, title, before);
    }

    @Override
    public Consent askConsent(String question, String yes) {
        return PlateDialogs.consent(this, question, yes);
    }
}
