package platekeep.model.join.edits.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** The rows and cables after a change, before anything was moved or mirrored, in ink. */
final class Ground {
    private Ground() {}

    static Grid of(Plate base, Change change) {
        Grid before = Grid.of(base);
        Grid after = new Grid();
        List<RowId> order = before.order();
        for (int gap = 0; gap <= order.size(); gap++) {
            List<NewRow> added = change.added.getOrDefault(gap, List.of());
            List<RowId> arrived = arrived(change, gap);
            if (arrived.size() > 1 || !arrived.isEmpty() && !added.isEmpty()) {
                throw new Undetermined("two arrivals in one gap");
            }
            added.forEach(r -> after.put(r.id(), kept(r.cells(), change)));
            arrived.forEach(r -> after.put(r, cells(before, r, change)));
            if (gap < order.size()) {
                RowId row = order.get(gap);
                if (!change.gone.contains(row) && !change.moved.containsKey(row)) {
                    after.put(row, cells(before, row, change));
                }
            }
        }
        return after;
    }

    private static List<RowId> arrived(Change change, int gap) {
        return change.moved.entrySet().stream()
                .filter(e -> e.getValue() == gap)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static TreeMap<Integer, Character> cells(Grid before, RowId row, Change change) {
        return kept(painted(before, row, change), change);
    }

    /** A row's cells after painting, whatever the chart covers. */
    static TreeMap<Integer, Character> painted(Grid before, RowId row, Change change) {
        TreeMap<Integer, Character> cells = new TreeMap<>(before.row(row));
        Map<Integer, Character> strokes = change.paint.getOrDefault(row, new TreeMap<>());
        new LinkedHashMap<>(strokes).forEach((p, ink) -> {
            if (ink == Row.EMPTY) {
                cells.remove(p);
            } else {
                cells.put(p, ink);
            }
        });
        return cells;
    }

    private static TreeMap<Integer, Character> kept(TreeMap<Integer, Character> cells, Change change) {
        TreeMap<Integer, Character> kept = new TreeMap<>(cells);
        change.from.ifPresent(from -> kept.headMap(from, false).clear());
        change.to.ifPresent(to -> kept.tailMap(to, true).clear());
        return kept;
    }
}
