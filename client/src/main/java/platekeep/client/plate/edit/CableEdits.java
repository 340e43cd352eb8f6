package platekeep.client.plate.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Figures;

/** Painting and erasing cables, and the shapes that are painted. Spots outside the chart are passed over. */
public final class CableEdits {

    private CableEdits() {}

    /**
     * Lays cables.
     *
     * @param key a key of the palette, or {@link Row#EMPTY} to take cables away
     */
    public static Plate paint(Plate plate, List<Spot> spots, char key) {
        Map<Integer, StringBuilder> touched = new TreeMap<>();
        for (Spot spot : spots) {
            if (isThere(plate, spot) && plate.rows().get(spot.row()).cells().charAt(spot.index()) != key) {
                touched.computeIfAbsent(
                                spot.row(),
                                r -> new StringBuilder(plate.rows().get(r).cells()))
                        .setCharAt(spot.index(), key);
            }
        }
        if (touched.isEmpty()) {
            return plate;
        }
        List<Row> rows = new ArrayList<>(plate.rows());
        touched.forEach((r, cells) -> rows.set(r, rows.get(r).withCells(cells.toString())));
        return plate.edit().rows(rows).build();
    }

    /** Gives the cables among these spots another colour; where none lies, none is laid. */
    public static Plate recolour(Plate plate, List<Spot> spots, char key) {
        List<Spot> cables = spots.stream()
                .filter(s -> plate.cellAt(s.row(), plate.from() + s.index()) != Row.EMPTY)
                .toList();
        return paint(plate, cables, key);
    }

    private static boolean isThere(Plate plate, Spot spot) {
        return spot.row() >= 0
                && spot.row() < plate.rows().size()
                && spot.index() >= 0
                && spot.index() < plate.positions();
    }

    /**
     * All spots on the straight way from one to another, both included, by Bresenham's rule: a step along the longer
     * side each, and with it one along the shorter side where the true line is then at least half a place away (J. E.
     * Bresenham, "Algorithm for computer control of a digital plotter", IBM Systems Journal 4(1), 1965).
     */
    public static List<Spot> line(Spot from, Spot to) {
        int rows = Math.abs(to.row() - from.row());
        int places = Math.abs(to.index() - from.index());
        int down = Integer.signum(to.row() - from.row());
        int right = Integer.signum(to.index() - from.index());
        boolean isFlat = places >= rows;
        int longer = Math.max(rows, places);
        int shorter = Math.min(rows, places);
        List<Spot> way = new ArrayList<>(longer + 1);
        way.add(from);
        int sign = 2 * shorter - longer;
        Spot at = from;
        for (int step = 0; step < longer; step++) {
            boolean isDiagonal = sign >= 0;
            at = at.moved(isFlat && !isDiagonal ? 0 : down, !isFlat && !isDiagonal ? 0 : right);
            sign += 2 * shorter - (isDiagonal ? 2 * longer : 0);
            way.add(at);
        }
        return way;
    }

    /** The spots of one row between two, both included; the second one's row does not count. */
    public static List<Spot> run(Spot from, Spot to) {
        return line(from, new Spot(from.row(), to.index()));
    }

    /** All spots of the rectangle between two corners, both included. */
    public static List<Spot> block(Spot one, Spot other) {
        List<Spot> block = new ArrayList<>();
        for (int row = Math.min(one.row(), other.row()); row <= Math.max(one.row(), other.row()); row++) {
            for (int i = Math.min(one.index(), other.index()); i <= Math.max(one.index(), other.index()); i++) {
                block.add(new Spot(row, i));
            }
        }
        return block;
    }

    /**
     * The outermost cables of the figure at a spot: those that lack a neighbour of the figure to the left, to the right,
     * above or below. Empty where no cable lies.
     */
    public static List<Spot> rim(Plate plate, Spot spot) {
        Figures figures = Figures.of(plate);
        int number = figures.at(spot.row(), plate.from() + spot.index());
        List<Spot> rim = new ArrayList<>();
        if (number != Figures.NONE) {
            var figure = figures.get(number);
            for (int r = figure.top(); r <= figure.bottom(); r++) {
                for (int p = figure.from(); p <= figure.to(); p++) {
                    boolean isInside = figures.at(r, p - 1) == number
                            && figures.at(r, p + 1) == number
                            && figures.at(r - 1, p) == number
                            && figures.at(r + 1, p) == number;
                    if (figures.at(r, p) == number && !isInside) {
                        rim.add(new Spot(r, p - plate.from()));
                    }
                }
            }
        }
        return rim;
    }

    /**
     * The spots and those that face them across an axis.
     *
     * @param axis the sum of the positions of two that face each other: twice the position of the cable on the axis
     */
    public static List<Spot> mirrored(List<Spot> spots, int axis) {
        Set<Spot> both = new LinkedHashSet<>(spots);
        spots.forEach(spot -> both.add(new Spot(spot.row(), axis - spot.index())));
        return List.copyOf(both);
    }

    /** All spots that hang together with a spot by rows and positions and have its colour, or are empty as it is. */
    public static List<Spot> alike(Plate plate, Spot start) {
        int positions = plate.positions();
        char key = plate.cellAt(start.row(), plate.from() + start.index());
        boolean[] seen = new boolean[plate.rows().size() * positions];
        List<Spot> found = new ArrayList<>(List.of(start));
        seen[start.row() * positions + start.index()] = true;
        for (int at = 0; at < found.size(); at++) {
            Spot spot = found.get(at);
            for (Spot near : List.of(spot.moved(-1, 0), spot.moved(1, 0), spot.moved(0, -1), spot.moved(0, 1))) {
                if (isThere(plate, near)
                        && !seen[near.row() * positions + near.index()]
                        && plate.rows().get(near.row()).cells().charAt(near.index()) == key) {
                    seen[near.row() * positions + near.index()] = true;
                    found.add(near);
                }
            }
        }
        return found;
    }
}
