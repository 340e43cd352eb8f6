package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots.Stretch;
import platekeep.client.ui.Look;

/**
 * The outline of a region of lines and pleats, drawn in one of several manners that differ in shape, with a light edge
 * so that it stands out from thread of any colour.
 */
final class Outline {
    /** How an outline is drawn. */
    enum Manner {
        SOLID,
        DASHED,
        DOUBLE,
        /** Heavy boxes, a little outside of the region. */
        HEAVY
    }

    private final TreeMap<Integer, List<Stretch>> region = new TreeMap<>();

    /** Adds a stretch of a line. */
    void add(int line, double from, double to) {
        region.computeIfAbsent(line, l -> new ArrayList<>()).add(new Stretch(from, to));
    }

    boolean isEmpty() {
        return region.isEmpty();
    }

    /** Draws the edges of the region; stretches that touch are one. */
    void draw(Graphics2D g, Sight sight, Manner manner) {
        if (region.isEmpty()) {
            return;
        }
        region.replaceAll((line, stretches) -> merged(stretches));
        boolean isSmall = sight.scale().pleat() < 5;
        double outside = isSmall ? 1 : 2;
        Path2D path = manner == Manner.HEAVY ? boxes(sight, outside + 3) : path(sight, outside);
        float ink = isSmall ? 1.4f : 2f;
        switch (manner) {
            case SOLID -> stroke(g, path, ink, ink + 2.4f);
            case DASHED -> {
                stroke(g, path, Look.paper(), ink + 2.4f);
                g.setColor(Look.ink());
                g.setStroke(
                        new BasicStroke(ink, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
                g.draw(path);
            }
            case DOUBLE -> {
                stroke(g, path, isSmall ? 3 : 4.6f, isSmall ? 3 : 6.4f);
                stroke(g, path, Look.paper(), isSmall ? 1 : 1.8f);
            }
            default -> {
                stroke(g, path, Look.paper(), 6.4f);
                stroke(g, path, Look.trouble(), 3.6f);
            }
        }
    }

    private static void stroke(Graphics2D g, Path2D path, float ink, float edge) {
        stroke(g, path, Look.paper(), edge);
        stroke(g, path, Look.ink(), ink);
    }

    private static void stroke(Graphics2D g, Path2D path, Color colour, float width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
        g.draw(path);
    }

    private Path2D path(Sight sight, double outside) {
        Path2D path = new Path2D.Double();
        region.forEach((line, stretches) -> {
            double high = sight.yOf(line);
            double low = sight.yOf(line + 1.0);
            List<Stretch> above = region.getOrDefault(line - 1, List.of());
            List<Stretch> below = region.getOrDefault(line + 1, List.of());
            for (Stretch s : stretches) {
                double left = sight.xOf(s.from()) - outside;
                double right = sight.xOf(s.to()) + outside;
                edge(path, left, high - (above.isEmpty() ? outside : 0), left, low + (below.isEmpty() ? outside : 0));
                edge(path, right, high - (above.isEmpty() ? outside : 0), right, low + (below.isEmpty() ? outside : 0));
                without(s, above)
                        .forEach(e -> edge(
                                path,
                                sight.xOf(e.from()) - outside,
                                high - outside,
                                sight.xOf(e.to()) + outside,
                                high - outside));
                without(s, below)
                        .forEach(e -> edge(
                                path,
                                sight.xOf(e.from()) - outside,
                                low + outside,
                                sight.xOf(e.to()) + outside,
                                low + outside));
            }
        });
        return path;
    }

    /** A box around each part of the region that hangs together. */
    private Path2D boxes(Sight sight, double outside) {
        List<double[]> boxes = new ArrayList<>();
        region.forEach((line, stretches) -> stretches.forEach(s -> {
            double[] box = {s.from(), line, s.to(), line + 1.0};
            for (int i = boxes.size() - 1; i >= 0; i--) {
                double[] other = boxes.get(i);
                if (other[3] >= box[1] && other[0] <= box[2] && other[2] >= box[0]) {
                    box = new double[] {
                        Math.min(box[0], other[0]),
                        Math.min(box[1], other[1]),
                        Math.max(box[2], other[2]),
                        Math.max(box[3], other[3])
                    };
                    boxes.remove(i);
                }
            }
            boxes.add(box);
        }));
        Path2D path = new Path2D.Double();
        boxes.forEach(b -> path.append(
                new Rectangle2D.Double(
                        sight.xOf(b[0]) - outside,
                        sight.yOf(b[1]) - outside,
                        sight.xOf(b[2]) - sight.xOf(b[0]) + 2 * outside,
                        sight.yOf(b[3]) - sight.yOf(b[1]) + 2 * outside),
                false));
        return path;
    }

    private static void edge(Path2D path, double x1, double y1, double x2, double y2) {
        path.moveTo(x1, y1);
        path.lineTo(x2, y2);
    }

    /** Stretches in order, those that touch or overlap made one. */
    static List<Stretch> merged(List<Stretch> stretches) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : stretches.stream()
                .sorted(Comparator.comparingDouble(Stretch::from))
                .toList()) {
            Stretch last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && s.from() <= last.to()) {
                out.set(out.size() - 1, new Stretch(last.from(), Math.max(last.to(), s.to())));
            } else {
                out.add(s);
            }
        }
        return out;
    }

    /** The parts of a stretch that others, in order, do not cover. */
    static List<Stretch> without(Stretch s, List<Stretch> others) {
        List<Stretch> out = new ArrayList<>();
        double at = s.from();
        for (Stretch other : others) {
            if (other.to() <= at || other.from() >= s.to()) {
                continue;
            }
            if (other.from() > at) {
                out.add(new Stretch(at, other.from()));
            }
            at = other.to();
        }
        if (at < s.to()) {
            out.add(new Stretch(at, s.to()));
        }
        return out;
    }
}
