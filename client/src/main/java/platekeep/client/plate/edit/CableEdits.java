package platekeep.client.plate.edit;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Painting and erasing cables. Spots outside the chart are passed over. */
public final class CableEdits {

    private CableEdits() {}

    /**
     * Lays cables.
     *
     * @param key a key of the palette, or {@link Row#EMPTY} to take cables away
     */
    public static Plate paint(Plate plate, List<Spot> spots, char key) {
        List<Row> rows = new ArrayList<>(plate.rows());
        boolean changed = false;
        for (Spot spot : spots) {
            boolean isThere = spot.row() >= 0
                    && spot.row() < rows.size()
                    && spot.index() >= 0
                    && spot.index() < plate.positions();
            if (isThere && rows.get(spot.row()).cells().charAt(spot.index()) != key) {
                StringBuilder cells = new StringBuilder(rows.get(spot.row()).cells());
                cells.setCharAt(spot.index(), key);
                rows.set(spot.row(), rows.get(spot.row()).withCells(cells.toString()));
                changed = true;
            }
        }
        return changed ? plate.edit().rows(rows).build() : plate;
    }

    /** All spots on the straight way from one to another, both included. */
    public static List<Spot> between(Spot from, Spot to) {
        int steps = Math.max(Math.abs(to.row() - from.row()), Math.abs(to.index() - from.index()));
        List<Spot> way = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double part = steps == 0 ? 0 : i / (double) steps;
            way.add(new Spot((int) Math.round(from.row() + part * (to.row() - from.row())), (int)
                    Math.round(from.index() + part * (to.index() - from.index()))));
        }
        return way;
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
                boolean isThere = near.row() >= 0
                        && near.row() < plate.rows().size()
                        && near.index() >= 0
                        && near.index() < positions;
                if (isThere
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
