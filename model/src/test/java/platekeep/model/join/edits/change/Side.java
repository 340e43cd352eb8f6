package platekeep.model.join.edits.change;

import java.util.HashSet;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;

/** One designer's plate after her change. */
public final class Side {
    private Side() {}

    /** As the client saves it: starts follow, so that every cable keeps its kind. */
    public static Plate saved(Plate base, Change change) {
        tidy(base, change);
        new KeptStarts(base).save(change);
        return valid(new Finished(base, change).plate());
    }

    /** As another program may leave it: starts stay as they were, but stand on cables. */
    public static Plate raw(Plate base, Change change) {
        tidy(base, change);
        Finished finished = new Finished(base, change);
        for (Start s : finished.starts()) {
            if (!finished.ground.filled(new Cell(s.row(), s.pleat()))) {
                throw new Undetermined("a start on no cable");
            }
        }
        new KeptStarts(base).needed(finished.ground, finished.starts());
        return valid(finished.plate());
    }

    /** What she drew on a row that she took out, or where she then cut the chart off, is not there. */
    private static void tidy(Plate base, Change change) {
        int from = change.from.orElse(base.from());
        int to = change.to.orElse(base.from() + base.positions());
        change.paint.values().forEach(row -> row.keySet().removeIf(p -> p < from || p >= to));
        change.added
                .values()
                .forEach(rows -> rows.forEach(r -> r.cells().keySet().removeIf(p -> p < from || p >= to)));
        change.paint.keySet().removeAll(change.gone);
        change.paint.values().removeIf(java.util.Map::isEmpty);
        change.moved.keySet().removeAll(change.gone);
        change.paint.values().forEach(row -> row.values().forEach(ink -> used(change, ink)));
        change.added
                .values()
                .forEach(rows -> rows.forEach(r -> r.cells().values().forEach(ink -> used(change, ink))));
        change.marks.values().forEach(m -> m.ifPresent(x -> used(change, x.colour())));
    }

    private static void used(Change change, char ink) {
        if (change.entries.containsKey(ink) && change.entries.get(ink).isEmpty()) {
            throw new Undetermined("drawn with a colour that is taken away");
        }
    }

    private static Plate valid(Plate plate) {
        Set<Object> seen = new HashSet<>();
        for (Row row : plate.rows()) {
            row.cells().chars().filter(c -> c != Row.EMPTY).forEach(c -> inPalette(plate, (char) c));
            once(seen, row.id().orElseThrow());
        }
        plate.marks().forEach(m -> {
            inPalette(plate, m.colour());
            once(seen, Identities.of(m));
        });
        plate.lines().forEach(l -> {
            inPalette(plate, l.colour());
            once(seen, Identities.of(l));
        });
        plate.notions().forEach(n -> once(seen, Identities.of(n)));
        plate.notes().forEach(n -> once(seen, "note " + n));
        plate.designers().forEach(d -> once(seen, "designer " + d));
        return plate;
    }

    private static void once(Set<Object> seen, Object id) {
        if (!seen.add(id)) {
            throw new Undetermined("twice: " + id);
        }
    }

    private static void inPalette(Plate plate, char key) {
        if (!plate.palette().has(key)) {
            throw new Undetermined("a colour that is not in the palette");
        }
    }

    static Plate joined(Plate plate) {
        return valid(plate);
    }
}
