package platekeep.client.compare.paint;

import java.awt.BorderLayout;
import java.awt.Point;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots;
import platekeep.client.compare.chart.Way;
import platekeep.client.ui.Widgets;
import platekeep.model.compare.Side;

/** Two lined-up charts in one of the ways of looking, with scroll bars that move both. */
public final class PairedCharts extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Sight sight = new Sight();
    private final ChartCanvas canvas;
    private final JScrollBar across = new JScrollBar(JScrollBar.HORIZONTAL);
    private final JScrollBar down = new JScrollBar(JScrollBar.VERTICAL);
    private boolean isFollowing;

    /** Hears what is pointed at. */
    public interface Ears {

        /** A place of a chart was clicked; pleats of the frame, lines. */
        void clicked(Side side, double pleat, double line);

        /** The pointer is over a place, in words; empty: over none. */
        void over(Optional<String> words);
    }

    public PairedCharts(Ears ears) {
        super(new BorderLayout());
        setName("compare-paired");
        canvas = new ChartCanvas(sight, ears, this::moved);
        across.setName("compare-across");
        down.setName("compare-down");
        across.setUnitIncrement(24);
        down.setUnitIncrement(24);
        across.addAdjustmentListener(e -> scrolled());
        down.addAdjustmentListener(e -> scrolled());
        add(canvas, BorderLayout.CENTER);
        add(down, BorderLayout.EAST);
        add(across, BorderLayout.SOUTH);
        keys();
    }

    private void keys() {
        String[] keys = {"UP", "DOWN", "LEFT", "RIGHT", "PAGE_UP", "PAGE_DOWN", "HOME", "END"};
        int[][] ways = {{0, -40}, {0, 40}, {-40, 0}, {40, 0}, {0, -400}, {0, 400}, {0, -10_000_000}, {0, 10_000_000}};
        for (int i = 0; i < keys.length; i++) {
            int[] way = ways[i];
            Widgets.onOwnKey(canvas, keys[i], () -> {
                sight.moveBy(way[0], way[1]);
                moved();
            });
        }
    }

    private void scrolled() {
        if (!isFollowing) {
            sight.moveTo(sight.x() < 0 ? sight.x() : across.getValue(), sight.y() < 0 ? sight.y() : down.getValue());
            canvas.repaint();
        }
    }

    private void moved() {
        isFollowing = true;
        Point pane = canvas.paneSize();
        bar(across, sight.x(), pane.x, sight.allWidth());
        bar(down, sight.y(), pane.y, sight.allHeight());
        isFollowing = false;
        canvas.repaint();
    }

    private static void bar(JScrollBar bar, double value, int extent, double all) {
        int most = Math.max(extent, (int) Math.ceil(all));
        bar.setValues(Math.max(0, (int) value), extent, 0, most);
        bar.setBlockIncrement(Math.max(24, extent - 40));
        bar.setEnabled(most > extent);
    }

    /** Shows two plates, all of them. */
    public void show(PairedPlates plates) {
        canvas.show(plates);
        sight.content(plates.pleats(), plates.top(), plates.lines().size());
        moved();
    }

    /** Shows two plates that have changed a little, where the others were. */
    public void showAgain(PairedPlates plates) {
        canvas.show(plates);
        sight.contentAgain(plates.pleats(), plates.top(), plates.lines().size());
        moved();
    }

    /** Looks in another way. */
    public void way(Way way) {
        canvas.way(way);
        moved();
    }

    /**
     * Which side is in front while the two are seen one after the other.
     *
     * @param words what it is, to be read beside it
     */
    public void front(Side side, String words) {
        canvas.front(side, words);
    }

    /** Points to a change and moves to it. */
    public void point(Spots spots, String words) {
        canvas.point(spots, words);
        spots.box().ifPresent(sight::show);
        moved();
    }

    /** Shows the change that is pointed to as large as it fits. */
    public void closeUp() {
        canvas.pointed().box().ifPresent(sight::closeUp);
        moved();
    }

    /** Shows all. */
    public void fit() {
        sight.fit();
        moved();
    }

    /** Zooms in so many steps, out where negative, about the middle. */
    public void zoom(int steps) {
        Point pane = canvas.paneSize();
        sight.zoom(steps, pane.x / 2.0, pane.y / 2.0);
        moved();
    }

    /** Puts the focus on the charts. */
    public void enter() {
        canvas.requestFocusInWindow();
    }
}
