package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** "Kinds are kept", the plain way: what becomes of the starts when a designer saves, or two changes are put together. */
final class KeptStarts {
    private final Plate base;
    private final Grid before;
    private final Map<Cell, CableKind> was;

    KeptStarts(Plate base) {
        this.base = base;
        this.before = Grid.of(base);
        this.was = before.kinds(base.starts());
    }

    /** As the client saves: starts moved, dropped and added, noted in the change. */
    void save(Change change) {
        Finished edited = new Finished(base, change);
        for (int i = 0; i < base.starts().size(); i++) {
            if (!change.starts.containsKey(i)) {
                follow(i, edited.ground, change);
            }
        }
        List<Start> starts = new Finished(base, change).starts();
        change.newStarts.addAll(needed(edited.ground, starts));
    }

    private void follow(int i, Grid ground, Change change) {
        Start start = base.starts().get(i);
        Cell cell = new Cell(start.row(), start.pleat());
        if (ground.filled(cell)) {
            return;
        }
        Set<Cell> figure = before.figureAt(cell);
        if (base.starts().stream()
                        .filter(s -> figure.contains(new Cell(s.row(), s.pleat())))
                        .count()
                != 1) {
            throw new Undetermined("several starts on a figure, or a start on no cable");
        }
        if (!change.moved.isEmpty() || change.moves()) {
            throw new Undetermined("a start lost its cable while things moved");
        }
        List<Cell> left = figure.stream().filter(ground::filled).toList();
        change.starts.put(i, nearest(cell, left, change).map(c -> start.at(c.row(), c.position(), was.get(c))));
    }

    private Optional<Cell> nearest(Cell from, List<Cell> cells, Change change) {
        int row = before.indexOf(from.row());
        Comparator<Cell> across = Comparator.comparingInt((Cell c) -> Math.abs(c.position() - from.position()))
                .thenComparingInt(Cell::position);
        for (int side : new int[] {0, -1, 1}) {
            List<Cell> there = cells.stream()
                    .filter(c -> Integer.signum(before.indexOf(c.row()) - row) == side)
                    .toList();
            if (there.isEmpty()) {
                continue;
            }
            Comparator<Cell> rowFirst = Comparator.comparingInt((Cell c) -> Math.abs(before.indexOf(c.row()) - row));
            Cell found = there.stream().min(rowFirst.thenComparing(across)).orElseThrow();
            if (!found.equals(there.stream().min(across.thenComparing(rowFirst)).orElseThrow())) {
                throw new Undetermined("nearest by row or by pleats");
            }
            int to = before.indexOf(found.row());
            if (!change.added
                    .subMap(Math.min(row, to), true, Math.max(row, to) + 1, true)
                    .isEmpty()) {
                throw new Undetermined("rows put in beside a start that had to move");
            }
            return Optional.of(found);
        }
        return Optional.empty();
    }

    /** Starts for figures that would turn: parted from their start, or led by one that turned. */
    List<Start> needed(Grid ground, List<Start> starts) {
        List<Start> out = new ArrayList<>();
        Map<Cell, CableKind> now = ground.kinds(starts);
        for (Set<Cell> figure : ground.figures()) {
            Optional<Start> own = ground.startOn(figure, starts);
            List<Cell> old = figure.stream().filter(was::containsKey).toList();
            if (own.isPresent()) {
                checkGrownTogether(old, own.get(), now, ground);
            } else if (old.stream().anyMatch(c -> now.get(c) != was.get(c))) {
                Start start = at(figure, old, ground);
                if (now.get(new Cell(start.row(), start.pleat())) != start.cable()) {
                    out.add(start);
                }
            }
        }
        return out;
    }

    private void checkGrownTogether(List<Cell> old, Start own, Map<Cell, CableKind> now, Grid ground) {
        Cell cell = new Cell(own.row(), own.pleat());
        Set<Cell> home = before.figureAt(cell);
        for (Cell c : old) {
            if (!home.contains(c) && now.get(c) != was.get(c)) {
                throw new Undetermined("figures of different starts grew together");
            }
        }
        if (home.isEmpty() && !old.isEmpty()) {
            throw new Undetermined("a start on a new cable");
        }
    }

    private Start at(Set<Cell> figure, List<Cell> old, Grid ground) {
        int lowest =
                figure.stream().mapToInt(c -> ground.indexOf(c.row())).max().orElseThrow();
        RowId row = ground.order().get(lowest);
        Cell cell = old.stream()
                .filter(c -> c.row().equals(row))
                .min(Comparator.comparingInt(Cell::position))
                .orElseThrow(() -> new Undetermined("the lowest row of the figure has no old cable"));
        return new Start(row, cell.position(), was.get(cell));
    }

    /** Needed in the joined plate, and by neither side alone. */
    List<Start> neededByNeither(Finished joined, Finished mine, Finished theirs) {
        List<Start> out = new ArrayList<>();
        for (Start start : needed(joined.ground, joined.starts())) {
            Set<Cell> figure = joined.ground.figureAt(new Cell(start.row(), start.pleat()));
            if (!neededBy(figure, mine) && !neededBy(figure, theirs)) {
                out.add(start);
            }
        }
        return out;
    }

    private boolean neededBy(Set<Cell> figure, Finished side) {
        return needed(side.ground, side.starts()).stream()
                .flatMap(s -> side.ground.figureAt(new Cell(s.row(), s.pleat())).stream())
                .anyMatch(figure::contains);
    }

    /** Whether a figure that was there follows the first start instead of having one of its own. */
    boolean follows(Grid ground, List<Start> starts) {
        return ground.figures().stream()
                .filter(f -> f.stream().anyMatch(was::containsKey))
                .anyMatch(f -> ground.startOn(f, starts).isEmpty());
    }
}
