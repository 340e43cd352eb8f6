package platekeep.client.compare.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import platekeep.model.compare.Difference;
import platekeep.model.compare.Difference.About;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.draw.Strand;

/**
 * Where one change lies on both charts, line by line. A change that the comparison places on one side only is pointed to
 * at the same place of the other side too; a moved row at both its places.
 */
public final class Spots {
    /** A stretch of a line, in pleats of the frame, half open. */
    public record Stretch(double from, double to) {}

    /** No change is pointed to. */
    public static final Spots NONE = new Spots();

    private final Map<Side, TreeMap<Integer, List<Stretch>>> stretches = new EnumMap<>(Side.class);

    private Spots() {
        stretches.put(Side.BEFORE, new TreeMap<>());
        stretches.put(Side.AFTER, new TreeMap<>());
    }

    /** Where a change lies. */
    public static Spots of(PairedPlates plates, Difference difference) {
        Spots spots = new Spots();
        boolean isOfBoth =
                difference.places().stream().map(Place::side).distinct().count() == 2;
        for (Place place : difference.places()) {
            int line = plates.lines().of(place.side(), place.row());
            Stretch stretch =
                    new Stretch((double) place.from() - plates.from(), (double) place.to() + 2 - plates.from());
            spots.put(place.side(), line, stretch);
            if (!isOfBoth) {
                spots.mirror(plates, place.side(), line, stretch);
            }
        }
        if (difference.about() == About.LINES) {
            spots.lines(plates);
        }
        return spots;
    }

    private void mirror(PairedPlates plates, Side side, int line, Stretch stretch) {
        Side other = side == Side.BEFORE ? Side.AFTER : Side.BEFORE;
        int mate = plates.lines().line(line).mate();
        put(other, mate == Line.NONE ? line : mate, stretch);
    }

    /** Geometric lines lie beside the rows: all that changed are pointed to. */
    private void lines(PairedPlates plates) {
        for (Side side : Side.values()) {
            for (Strand strand : plates.stitches().strands(side)) {
                double middle = plates.lineOf(side, (strand.y1() + strand.y2()) / 2);
                int offset = plates.offset(side);
                put(side, (int) Math.floor(middle), new Stretch(offset + strand.x1(), offset + strand.x2()));
            }
        }
    }

    private void put(Side side, int line, Stretch stretch) {
        stretches.get(side).computeIfAbsent(line, l -> new ArrayList<>()).add(stretch);
    }

    public boolean isEmpty() {
        return stretches.values().stream().allMatch(Map::isEmpty);
    }

    /** Hears the stretches of a side's lines between two lines, both included. */
    public void forEach(Side side, int from, int to, BiConsumer<Integer, List<Stretch>> each) {
        stretches.get(side).subMap(from, true, to, true).forEach(each);
    }

    /** Whether a point lies on the change. */
    public boolean has(Side side, double pleat, double line) {
        return stretches.get(side).getOrDefault((int) Math.floor(line), List.of()).stream()
                .anyMatch(s -> s.from() <= pleat && pleat < s.to());
    }

    /** The box around all of it, in pleats and lines; empty when it lies nowhere. */
    public Optional<Rectangle2D> box() {
        Rectangle2D box = null;
        for (TreeMap<Integer, List<Stretch>> side : stretches.values()) {
            for (Map.Entry<Integer, List<Stretch>> line : side.entrySet()) {
                for (Stretch s : line.getValue()) {
                    Rectangle2D one = new Rectangle2D.Double(s.from(), line.getKey(), s.to() - s.from(), 1);
                    box = box == null ? one : box.createUnion(one);
                }
            }
        }
        return Optional.ofNullable(box);
    }
}
