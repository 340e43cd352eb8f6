package platekeep.client.join;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Stroke;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import platekeep.client.plate.chart.Marking;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;

/** Marks on the joined chart: open clashes by a dashed outline, what is looked at by a whole one. */
final class Marks implements Marking {
    private final List<Area> open;
    private final Optional<Area> looked;

    private Marks(List<Area> open, Optional<Area> looked) {
        this.open = open;
        this.looked = looked;
    }

    static Marks of(Board board) {
        List<Area> open = board.matters().stream()
                .filter(m -> m.state() == Board.State.OPEN)
                .flatMap(m -> m.area().stream())
                .toList();
        return new Marks(open, board.matter().flatMap(Board.Matter::area));
    }

    @Override
    public void paint(Graphics2D g, Drawing drawing, ChartScale scale) {
        Graphics2D own = (Graphics2D) g.create();
        PlatePainter.smooth(own);
        Rectangle clip = own.getClipBounds();
        BasicStroke dashes =
                new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0);
        for (Area area : open) {
            if (looked.filter(area::equals).isEmpty() && shape(scale, area).intersects(clip)) {
                outline(own, scale, area, Look.trouble(), dashes);
            }
        }
        looked.ifPresent(area -> outline(own, scale, area, Look.accent(), new BasicStroke(2.4f)));
        own.dispose();
    }

    private static RoundRectangle2D.Double shape(ChartScale scale, Area area) {
        double x = scale.left(area.from()) - 2;
        double y = scale.top(area.top()) - 2;
        return new RoundRectangle2D.Double(
                x, y, scale.left(area.positions() + 1.0) + 4, scale.top(area.rows()) + 4, 8, 8);
    }

    /** Outlines an area in a colour, with a pale rim so that it stands out from any thread. */
    static void outline(Graphics2D g, ChartScale scale, Area area, Color colour, BasicStroke stroke) {
        RoundRectangle2D.Double shape = shape(scale, area);
        Stroke rim = new BasicStroke(stroke.getLineWidth() + 3);
        Color paper = Look.paper();
        g.setStroke(rim);
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 235));
        g.draw(shape);
        g.setStroke(stroke);
        g.setColor(colour);
        g.draw(shape);
    }
}
