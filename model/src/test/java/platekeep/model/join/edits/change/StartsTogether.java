package platekeep.model.join.edits.change;

import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;

/** Where stitching starts. */
final class StartsTogether {
    private final Together both;

    StartsTogether(Together both) {
        this.both = both;
    }

    void join() {
        Together.each(both.mine.starts, both.theirs.starts, both.joined.starts, this::differ);
        both.joined.newStarts.addAll(both.mine.newStarts);
        both.theirs.newStarts.stream()
                .filter(s -> !both.joined.newStarts.contains(s))
                .forEach(this::add);
        Finished joined = new Finished(both.base, both.joined);
        for (Start s : joined.starts()) {
            if (!joined.ground.filled(new Cell(s.row(), s.pleat()))) {
                throw new Undetermined("a start lost its cable in the join");
            }
        }
        KeptStarts kept = new KeptStarts(both.base);
        if (!both.joined.figures.isEmpty() && kept.follows(joined.ground, joined.starts())) {
            throw new Undetermined("a figure moved, and one without a start stayed or went");
        }
        both.joined.newStarts.addAll(
                kept.neededByNeither(joined, new Finished(both.base, both.mine), new Finished(both.base, both.theirs)));
    }

    private void add(Start start) {
        Set<Cell> figure = Grid.of(both.base).figureAt(new Cell(start.row(), start.pleat()));
        if (both.mine.newStarts.stream().anyMatch(s -> figure.contains(new Cell(s.row(), s.pleat())))) {
            throw new Undetermined("two new starts on one figure");
        }
        both.joined.newStarts.add(start);
    }

    private Optional<Optional<Start>> differ(Integer i, Optional<Start> m, Optional<Start> t) {
        Start was = both.base.starts().get(i);
        if (!m.map(s -> at(s, was)).orElse(true) || !t.map(s -> at(s, was)).orElse(true)) {
            checkAlone(was);
        }
        Optional<Optional<Start>> stands = Together.changedStands(m, t);
        both.clashes.add(f -> Together.clash(
                Clash.What.START, place(f.start(was)), f.start(was).value(), value(m, f), value(t, f)));
        return stands;
    }

    private static boolean at(Start a, Start b) {
        return a.row().equals(b.row()) && a.pleat() == b.pleat();
    }

    private void checkAlone(Start was) {
        Set<Cell> figure = Grid.of(both.base).figureAt(new Cell(was.row(), was.pleat()));
        long starts = both.base.starts().stream()
                .filter(s -> figure.contains(new Cell(s.row(), s.pleat())))
                .count();
        if (starts != 1) {
            throw new Undetermined("which start of the figure it is");
        }
    }

    private static Value.Entries place(Start start) {
        return OpenClashes.place("row", start.row().text(), "pleat", start.pleat());
    }

    private static Value value(Optional<Start> start, Finished f) {
        return start.map(s -> (Value) f.start(s).value()).orElse(Value.NOTHING);
    }
}
