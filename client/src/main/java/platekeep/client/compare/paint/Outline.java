package platekeep.client.compare.paint;

import java.awt.Color;
import java.awt.Graphics2D;
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
    private final List<int[]> edges = new ArrayList<>();

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
        switch (manner) {
            case SOLID -> {
                edges(sight);
                fill(g, Look.paper(), isSmall ? 3 : 4);
                fill(g, Look.ink(), isSmall ? 1 : 2);
            }
            case DASHED -> {
                edges(sight);
                fill(g, Look.paper(), isSmall ? 3 : 4);
                fillDashes(g, isSmall ? 1 : 2, isSmall ? 2 : 4);
            }
            case DOUBLE -> {
                edges(sight);
                fill(g, Look.paper(), isSmall ? 5 : 6);
                fill(g, Look.ink(), isSmall ? 3 : 4);
                fill(g, Look.paper(), isSmall ? 1 : 2);
            }
            default -> {
                boxes(sight, isSmall ? 4 : 6);
                fill(g, Look.paper(), 6);
                fill(g, Look.trouble(), 4);
            }
        }
    }

    /** Every edge as a bar of a width: much cheaper than a smoothed path, and as sharp, since all edges are level or upright. */
    private void fill(Graphics2D g, Color colour, int width) {
        g.setColor(colour);
        for (int[] e : edges) {
            bar(g, e[0], e[1], e[2], e[3], width);
        }
    }

    private static void bar(Graphics2D g, int x1, int y1, int x2, int y2, int width) {
        int half = width / 2;
        g.fillRect(x1 - half, y1 - half, x2 - x1 + width, y2 - y1 + width);
    }

    private void fillDashes(Graphics2D g, int width, int dash) {
        g.setColor(Look.ink());
        int half = width / 2;
        for (int[] e : edges) {
            boolean isLevel = e[1] == e[3];
            int length = isLevel ? e[2] - e[0] : e[3] - e[1];
            for (int at = 0; at < length; at += 2 * dash) {
                int part = Math.min(dash, length - at);
                if (isLevel) {
                    g.fillRect(e[0] + at, e[1] - half, part, width);
                } else {
                    g.fillRect(e[0] - half, e[1] + at, width, part);
                }
            }
        }
    }

    private void edges(Sight sight) {
        region.forEach((line, stretches) -> {
            double high = sight.yOf(line);
            double low = sight.yOf(line + 1.0);
            List<Stretch> above = region.getOrDefault(line - 1, List.of());
            List<Stretch> below = region.getOrDefault(line + 1, List.of());
            for (Stretch s : stretches) {
                edge(sight.xOf(s.from()), high, sight.xOf(s.from()), low);
                edge(sight.xOf(s.to()), high, sight.xOf(s.to()), low);
                without(s, above).forEach(e -> edge(sight.xOf(e.from()), high, sight.xOf(e.to()), high));
                without(s, below).forEach(e -> edge(sight.xOf(e.from()), low, sight.xOf(e.to()), low));
            }
        });
    }

    /** A box around each part of the region that hangs together. */
    private void boxes(Sight sight, double outside) {
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
        for (double[] b : boxes) {
            double left = sight.xOf(b[0]) - outside;
            double high = sight.yOf(b[1]) - outside;
            double right = sight.xOf(b[2]) + outside;
            double low = sight.yOf(b[3]) + outside;
            edge(left, high, right, high);
            edge(left, low, right, low);
            edge(left, high, left, low);
            edge(right, high, right, low);
        }
    }

    private void edge(double x1, double y1, double x2, double y2) {
        edges.add(new int[] {(int) Math.round(x1), (int) Math.round(y1), (int) Math.round(x2), (int) Math.round(y2)});
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
