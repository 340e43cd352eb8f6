package platekeep.client.join;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.chart.ChartEars;
import platekeep.client.plate.chart.ChartSurface;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** The joined plate, live: it is painted on right there. Above it the colours to paint with. */
final class JoinChart extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int ENLARGED = 12;

    private final ChartSurface surface;
    private final JScrollPane scroll;
    private final JPanel colours = Widgets.clear(new MigLayout("insets 0, gap 1, wrap 10"));
    private final JLabel place = Widgets.faint("join-place", " ");
    private final transient Ears ears;
    private transient Map<Character, Colour> shownColours = Map.of();
    private transient Optional<String> shownPlate = Optional.empty();
    private transient Optional<Area> toReveal = Optional.empty();

    /** What is done on the chart. */
    interface Ears extends ChartEars {
        /** A colour is chosen to paint with; {@link Row#EMPTY} erases. */
        void choose(char key);
    }

    JoinChart(Ears ears) {
        super(new BorderLayout(0, 4));
        this.ears = ears;
        setOpaque(false);
        surface = new ChartSurface(ears);
        surface.setName("join-chart");
        scroll = Widgets.scroll("join-chart-scroll", surface);
        scroll.setBorder(Widgets.edge(1, 1, 1, 1));
        surface.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                revealNow();
            }
        });
        JPanel above = Widgets.clear(new MigLayout("insets 0, gap 6", "[][]", "[center]"));
        above.add(Widgets.heading("Paint with"));
        above.add(colours);
        JPanel below = Widgets.clear(new MigLayout("insets 0, fillx, gap 2", "[grow, fill][][][]", "[center]"));
        below.add(place, "wmin 0");
        below.add(Widgets.iconButton("join-zoom-out", Sign.ZOOM_OUT.icon(18), "Smaller (Ctrl+-)", () -> zoom(-1)));
        below.add(Widgets.iconButton("join-zoom-in", Sign.ZOOM_IN.icon(18), "Larger (Ctrl++)", () -> zoom(1)));
        below.add(Widgets.iconButton("join-fit", Sign.FIT.icon(18), "The whole plate (Ctrl+0)", surface::fit));
        add(above, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    void zoom(int by) {
        surface.zoomBy(by);
    }

    void fit() {
        surface.fit();
    }

    void toChart() {
        surface.requestFocusInWindow();
    }

    void show(Board board, JoinPainting.State painting) {
        Plate plate = board.drawing().plate();
        surface.show(board.drawing());
        surface.marks(Marks.of(board));
        surface.cursor(painting.cursor());
        if (!shownPlate.equals(Optional.of(plate.id()))) {
            shownPlate = Optional.of(plate.id());
            surface.zoom(ENLARGED);
        }
        showColours(plate, painting.colour());
    }

    void clear() {
        surface.clear();
        shownPlate = Optional.empty();
    }

    void place(String words) {
        place.setText(words.isEmpty() ? " " : words);
    }

    /** Brings an area into the middle of the view. */
    void reveal(Area area) {
        toReveal = Optional.of(area);
        revealNow();
    }

    private void revealNow() {
        if (surface.getWidth() > 0 && scroll.getViewport().getExtentSize().width > 0) {
            toReveal.ifPresent(a -> surface.reveal(new Spot(a.top(), a.from()), new Spot(a.bottom(), a.to())));
            toReveal = Optional.empty();
        }
    }

    void pointOut(Spot spot) {
        surface.pointOut(Optional.of(spot));
    }

    private void showColours(Plate plate, char chosen) {
        if (!shownColours.equals(plate.palette().entries())) {
            shownColours = plate.palette().entries();
            colours.removeAll();
            ButtonGroup group = new ButtonGroup();
            int number = 1;
            for (Map.Entry<Character, Colour> entry : shownColours.entrySet()) {
                add(
                        group,
                        new Swatch(entry.getKey(), entry.getValue().rgb()),
                        entry.getValue().name(),
                        number++);
            }
            add(group, new Swatch(Row.EMPTY, 0), "Erase", number);
            colours.revalidate();
            colours.repaint();
        }
        for (java.awt.Component part : colours.getComponents()) {
            if (part instanceof Swatch swatch && swatch.key == chosen) {
                swatch.setSelected(true);
            }
        }
    }

    private void add(ButtonGroup group, Swatch swatch, String name, int number) {
        String tip = name + (number <= 9 ? " (Alt+" + number + ")" : "");
        swatch.setName("join-colour-" + (swatch.key == Row.EMPTY ? "none" : String.valueOf(swatch.key)));
        swatch.setToolTipText(tip);
        swatch.getAccessibleContext().setAccessibleName("Paint with " + name);
        swatch.addActionListener(e -> ears.choose(swatch.key));
        group.add(swatch);
        colours.add(swatch);
    }

    /** A colour to paint with, as one cable of it. */
    private static final class Swatch extends JToggleButton {
        private static final long serialVersionUID = 1L;

        private final char key;
        private final int rgb;

        Swatch(char key, int rgb) {
            this.key = key;
            this.rgb = rgb;
            putClientProperty("JButton.buttonType", "toolBarButton");
            setPreferredSize(new Dimension(31, 24));
            if (key == Row.EMPTY) {
                setIcon(Sign.ERASE.icon(16));
            }
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            super.paintComponent(graphics);
            if (key != Row.EMPTY) {
                Graphics2D g = (Graphics2D) graphics.create();
                PlatePainter.smooth(g);
                ChartScale scale = ChartScale.whole(12);
                PlatePainter.paintCable(
                        g, new Color(rgb), scale, (getWidth() - scale.cable()) / 2, (getHeight() - scale.half()) / 2.0);
                g.dispose();
            }
        }
    }
}
