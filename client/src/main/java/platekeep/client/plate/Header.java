package platekeep.client.plate;

import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.chart.ChartSurface;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.work.PlateState;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;

/** The head of the Plate screen: which plate it is, how it is looked at, and saving. */
final class Header extends JPanel {
    private static final long serialVersionUID = 1L;

    private final ChartSurface chart;
    private final JLabel title = Widgets.title("plate-title", "");
    private final JLabel line = Widgets.faint("plate-line", "");
    private final JToggleButton chartButton = new JToggleButton("Chart", true);
    private final JToggleButton clothButton = new JToggleButton("Cloth");
    private final JButton save;
    private boolean isFitted = true;

    Header(ChartSurface chart, PlateEars ears) {
        super(new MigLayout("insets 8 16 8 14, fillx, gap 6", "[]10[grow, shrinkprio 200]push[][]14[][][]14[]"));
        this.chart = chart;
        this.save = Widgets.mainButton(
                "save-version", "Save version…", () -> ears.versions().save());
        setBorder(Widgets.edge(0, 0, 1, 0));
        ButtonGroup ways = new ButtonGroup();
        way(chartButton, "way-chart", ways, PlatePainter.View.CHART);
        way(clothButton, "way-cloth", ways, PlatePainter.View.CLOTH);
        add(title, "wmin 60");
        add(line, "wmin 0");
        add(chartButton);
        add(clothButton);
        add(Widgets.iconButton("zoom-out", Sign.ZOOM_OUT.icon(20), "Zoom out (Ctrl+-)", () -> zoomBy(-1)));
        add(Widgets.iconButton("zoom-in", Sign.ZOOM_IN.icon(20), "Zoom in (Ctrl++)", () -> zoomBy(1)));
        add(Widgets.iconButton("zoom-fit", Sign.FIT.icon(20), "See the whole plate (Ctrl+0)", this::fit));
        add(save);
    }

    private void way(JToggleButton button, String name, ButtonGroup group, PlatePainter.View way) {
        button.setName(name);
        button.addActionListener(e -> way(way));
        group.add(button);
    }

    /** Chart or cloth. */
    void way(PlatePainter.View way) {
        chart.way(way);
        (way == PlatePainter.View.CHART ? chartButton : clothButton).setSelected(true);
    }

    /** The other way to look at the plate. */
    void turnWay() {
        way(chart.way() == PlatePainter.View.CHART ? PlatePainter.View.CLOTH : PlatePainter.View.CHART);
    }

    void zoomBy(int steps) {
        isFitted = false;
        chart.zoomBy(steps);
    }

    void fit() {
        isFitted = true;
        chart.fit();
    }

    /** Brings a part of the chart into view. */
    void see(Area area) {
        isFitted = !chart.see(area) && isFitted;
    }

    /** Whether the whole plate is to be seen, whatever the window's size. */
    boolean isFitted() {
        return isFitted;
    }

    void show(PlateState state) {
        Plate plate = state.plate().orElseThrow();
        title.setText(plate.title());
        String number = plate.number().map(n -> n + "  ·  ").orElse("");
        String size = plate.pleats().map(p -> p.count() + " pleats, ").orElse("")
                + (plate.rows().isEmpty() ? "no chart yet" : plate.rows().size() + " rows");
        line.setText(number + size + "  ·  " + state.library() + (state.isDrawn() ? "  ·  draft" : ""));
        save.setEnabled(
                state.isDrawn() && state.lookingAt().isEmpty() && state.offer().isEmpty());
    }
}
