package platekeep.client.join;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JComponent;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;

/** A spot of a chart, enlarged, with what it is about outlined. */
final class SpotPicture extends JComponent {
    private static final long serialVersionUID = 1L;

    private static final int LARGEST = 20;
    private static final int SMALLEST = 5;
    private static final int MOST_HEIGHT = 150;
    private static final int LEAST_HEIGHT = 46;

    private final transient PlatePainter painter = new PlatePainter();
    private transient Optional<Board.Spotted> spot = Optional.empty();
    private int room = MOST_HEIGHT;

    SpotPicture(String name) {
        setName(name);
    }

    void show(Optional<Board.Spotted> newSpot) {
        spot = newSpot;
        setVisible(spot.isPresent());
        revalidate();
        repaint();
    }

    /** Holds the picture within a height in pixels, as far as it can still be read then. */
    void fit(int height) {
        int held = Math.max(LEAST_HEIGHT, Math.min(MOST_HEIGHT, height));
        if (held != room) {
            room = held;
            revalidate();
            repaint();
        }
    }

    /** What is shown: where height is scarce the rows around the place go first, so that its cables stay large. */
    private Area window(Board.Spotted s, int width) {
        Area all = s.window();
        int rows = (int) (room / (Math.min(LARGEST, across(all, width)) * ChartScale.ROW_TO_PLEAT));
        int around = Math.max(1, (rows - s.area().rows()) / 2);
        return new Area(
                Math.max(all.top(), s.area().top() - around),
                Math.min(all.bottom(), s.area().bottom() + around),
                all.from(),
                all.to());
    }

    private static int across(Area window, int width) {
        return Math.max(1, (width - 2) / (window.positions() + 1));
    }

    private ChartScale scale(Area window, int width) {
        int pleat = Math.min(LARGEST, across(window, width));
        while (pleat > SMALLEST && height(ChartScale.whole(pleat), window) > room) {
            pleat--;
        }
        return ChartScale.whole(Math.max(SMALLEST, pleat));
    }

    private static int height(ChartScale scale, Area window) {
        return (int) Math.ceil(scale.top(window.rows())) + 2;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : 260;
        return spot.map(s -> {
                    Area window = window(s, width);
                    return new Dimension(width, height(scale(window, width), window));
                })
                .orElse(new Dimension(width, 0));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isWider = width != getWidth();
        super.setBounds(x, y, width, height);
        if (isWider) {
            revalidate();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (spot.isEmpty()) {
            return;
        }
        Board.Spotted s = spot.get();
        Area window = window(s, getWidth());
        ChartScale scale = scale(window, getWidth());
        int width = (int) Math.min(getWidth(), Math.ceil(scale.left(window.positions() + 1.0)));
        int height = (int) Math.ceil(scale.top(window.rows()));
        int x = (getWidth() - width) / 2;
        Graphics2D g = (Graphics2D) graphics.create(x, 0, width, height + 1);
        g.setColor(Look.paper());
        g.fillRect(0, 0, width, height);
        g.translate(-scale.left(window.from()), -scale.top(window.top()));
        painter.paint(g, s.drawing(), scale, PlatePainter.View.CHART);
        PlatePainter.smooth(g);
        Marks.outline(g, scale, s.area(), Look.accent(), new BasicStroke(2f));
        g.dispose();
        graphics.setColor(Look.edge());
        graphics.drawRect(x, 0, width - 1, height);
    }
}
