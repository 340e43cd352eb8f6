package platekeep.model.join;

import java.util.Optional;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Value;

/**
 * How wide the joined chart is. Each end is joined alone: both widened, the farther end; both narrowed, as far as no
 * cable is cut off; cut off here and painted there is a clash and the wider chart stands.
 */
final class PleatsJoin {
    private final Plate base;
    private final Side[] sides;
    private final CellJoin cells;
    private final int frameFrom;
    private final ClashList clashes;

    PleatsJoin(Plate base, Side[] sides, CellJoin cells, int frameFrom, ClashList clashes) {
        this.base = base;
        this.sides = sides;
        this.cells = cells;
        this.frameFrom = frameFrom;
        this.clashes = clashes;
    }

    Optional<Pleats> join() {
        Optional<Pleats> b = base.pleats();
        Optional<Pleats> m = sides[0].plate().pleats();
        Optional<Pleats> t = sides[1].plate().pleats();
        if (m.isEmpty() || t.isEmpty()) {
            boolean kept = b.isEmpty() || cells.picture().length > 0;
            return kept ? m.or(() -> t).or(() -> b) : Optional.empty();
        }
        if (b.isEmpty()) {
            return Optional.of(m.get()
                    .withEnds(
                            Math.min(m.get().from(), t.get().from()),
                            Math.max(m.get().to(), t.get().to())));
        }
        int from = -end("from", -b.get().from(), -m.get().from(), -t.get().from());
        int to = end("to", b.get().to(), m.get().to(), t.get().to());
        boolean minePlain = m.get().unknown().equals(b.get().unknown());
        return Optional.of((minePlain ? t : m).get().withEnds(from, to));
    }

    /** One end, with outward counted as positive; {@code from} comes with its sign turned. */
    private int end(String name, int b, int m, int t) {
        int joined = joined(name, b, m, t);
        int needed = outermost(name);
        if (needed > joined) {
            clash(name, b, m, t);
            return needed;
        }
        return joined;
    }

    private int joined(String name, int b, int m, int t) {
        if (m == t) {
            return m;
        }
        int inner = Math.min(m, t);
        int outer = Math.max(m, t);
        if (inner >= b) {
            return outer;
        }
        if (outer < b) {
            return used(name, inner) ? outer : inner;
        }
        if (outer > b || painted(name, inner)) {
            clash(name, b, m, t);
            return outer;
        }
        return inner;
    }

    private void clash(String name, int b, int m, int t) {
        int sign = name.equals("from") ? -1 : 1;
        clashes.add(
                Clash.What.PLEATS,
                ClashList.place("end", Value.of(name)),
                Value.of(sign * b),
                Value.of(sign * m),
                Value.of(sign * t),
                ClashList.NO_ROW);
    }

    /** Whether a cable lies beyond an end: with {@code to} at a position from it on, with {@code from} before it. */
    private boolean used(String name, int end) {
        return name.equals("to") ? cells.usedFrom(end - frameFrom) : cells.usedUpTo(-end - 1 - frameFrom);
    }

    private boolean painted(String name, int end) {
        return name.equals("to") ? cells.paintedFrom(end - frameFrom) : cells.paintedUpTo(-end - 1 - frameFrom);
    }

    /** How far out somebody painted or moved a cable. */
    private int outermost(String name) {
        if (name.equals("to")) {
            return cells.lastPainted() < 0 ? Integer.MIN_VALUE : cells.lastPainted() + frameFrom + 1;
        }
        return cells.firstPainted() == Integer.MAX_VALUE ? Integer.MIN_VALUE : -(cells.firstPainted() + frameFrom);
    }
}
