package platekeep.model.join.edits.change;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** The ends of the chart, and the picture or its figures moved and mirrored. */
final class ShapesTogether {
    private final Together both;

    ShapesTogether(Together both) {
        this.both = both;
    }

    void join() {
        Change m = both.mine;
        Change t = both.theirs;
        Pleats was = both.base.pleats().orElseThrow();
        both.joined.from = end("from", m.from, t.from, was.from(), 1);
        both.joined.to = end("to", m.to, t.to, was.to(), -1);
        motion(m, t);
        for (FigureMove move : m.figures) {
            figure(move, t);
        }
        for (FigureMove move : t.figures) {
            if (m.figures.stream().noneMatch(f -> f.cells().equals(move.cells()))) {
                both.joined.figures.add(grown(move, m));
            }
        }
        if (!both.joined.figures.isEmpty() && !both.joined.motion.equals(Motion.NONE)) {
            throw new Undetermined("the picture and a figure of it moved");
        }
    }

    private void motion(Change m, Change t) {
        if (m.lifted != 0 && t.lifted != 0 && !(m.added.equals(t.added) && m.moved.equals(t.moved))) {
            throw new Undetermined("the picture went up or down on both sides");
        }
        if (m.motion.equals(t.motion) || t.motion.equals(Motion.NONE)) {
            both.joined.motion = m.motion;
        } else if (m.motion.equals(Motion.NONE)) {
            both.joined.motion = t.motion;
        } else {
            clash(Grid.of(both.base).figures(), m.motion, t.motion);
        }
    }

    private void clash(List<Set<Cell>> figures, Motion mine, Motion theirs) {
        if (figures.size() != 1) {
            throw new Undetermined("several figures moved in two ways");
        }
        clash(figures, values(mine, figures.get(0)), values(theirs, figures.get(0)));
    }

    private void clash(List<Set<Cell>> figures, Value mine, Value theirs) {
        both.clashes.add(f -> Together.clash(Clash.What.FIGURE, place(figures.get(0)), Value.NOTHING, mine, theirs));
    }

    private Value.Entries place(Set<Cell> figure) {
        Grid before = Grid.of(both.base);
        int lowest =
                figure.stream().mapToInt(c -> before.indexOf(c.row())).max().orElseThrow();
        RowId row = before.order().get(lowest);
        int from = figure.stream()
                .filter(c -> c.row().equals(row))
                .mapToInt(Cell::position)
                .min()
                .orElseThrow();
        int to = figure.stream()
                .filter(c -> c.row().equals(row))
                .mapToInt(Cell::position)
                .max()
                .orElseThrow();
        return OpenClashes.place("row", row.text(), "from", from, "to", to);
    }

    /** A figure is mirrored within its own width; what the chart's mirror moves it beyond that is told in pleats. */
    private Value values(Motion motion, Set<Cell> figure) {
        if (motion.upsideDown()) {
            throw new Undetermined("how a picture turned upside down is told");
        }
        FigureMove own = new FigureMove(figure, 0, 0, true);
        Pleats was = both.base.pleats().orElseThrow();
        int beyond = motion.mirrored() ? was.from() + was.to() - 1 - own.leftmost() - own.rightmost() : 0;
        return values(0, motion.right() + beyond, motion.mirrored());
    }

    private static Value values(int up, int right, boolean mirrored) {
        return new Value.Builder()
                .put("rows", up)
                .put("pleats", right)
                .put("mirrored", mirrored ? Value.of("left to right") : Value.of(false))
                .build();
    }

    private void figure(FigureMove move, Change t) {
        Optional<FigureMove> other =
                t.figures.stream().filter(f -> f.cells().equals(move.cells())).findFirst();
        if (other.isPresent() && !other.get().equals(move)) {
            clash(
                    List.of(move.cells()),
                    values(move.up(), move.right(), move.mirrored()),
                    values(other.get().up(), other.get().right(), other.get().mirrored()));
            return;
        }
        both.joined.figures.add(other.isPresent() ? move : grown(move, t));
    }

    /** The figure with what the other one painted on to it. */
    private FigureMove grown(FigureMove move, Change other) {
        Grid before = Grid.of(both.base);
        for (Cell c : move.cells()) {
            if (other.gone.contains(c.row()) || other.moved.containsKey(c.row())) {
                throw new Undetermined("a row of a moved figure went");
            }
        }
        Grid ground = Ground.of(both.base, other);
        Set<Cell> grown = new HashSet<>(move.cells());
        Deque<Cell> open = new ArrayDeque<>(move.cells());
        List<RowId> order = ground.order();
        while (!open.isEmpty()) {
            for (Cell next : ground.neighbours(open.poll(), order)) {
                if (ground.filled(next) && grown.add(next)) {
                    if (before.filled(next) || !before.has(next.row())) {
                        throw new Undetermined("a moved figure grew into something else");
                    }
                    open.add(next);
                }
            }
        }
        if (grown.size() != move.cells().size() && move.mirrored()) {
            int left = grown.stream().mapToInt(Cell::position).min().orElseThrow();
            int right = grown.stream().mapToInt(Cell::position).max().orElseThrow();
            if (left + right != move.leftmost() + move.rightmost()) {
                throw new Undetermined("the axis of a mirrored figure that grew");
            }
        }
        return new FigureMove(grown, move.up(), move.right(), move.mirrored());
    }

    /** @param inward 1 where a greater number narrows, -1 where a smaller one does */
    private Optional<Integer> end(String end, Optional<Integer> m, Optional<Integer> t, int was, int inward) {
        boolean mineCuts = m.isPresent() && (m.get() - was) * inward > 0;
        boolean theirsCuts = t.isPresent() && (t.get() - was) * inward > 0;
        if (m.equals(t)) {
            return m;
        }
        if (mineCuts && theirsCuts) {
            int farther = inward > 0 ? Math.max(m.get(), t.get()) : Math.min(m.get(), t.get());
            if (paintedBeyond(both.mine, farther, inward) || paintedBeyond(both.theirs, farther, inward)) {
                throw new Undetermined("both narrowed, and one painted there");
            }
            if (baseBeyond(farther, inward)) {
                throw new Undetermined("both cut cables off");
            }
            return Optional.of(farther);
        }
        if (mineCuts || theirsCuts) {
            return cut(end, m, t, was, inward, mineCuts);
        }
        if (m.isPresent() && t.isPresent()) {
            return Optional.of(inward > 0 ? Math.min(m.get(), t.get()) : Math.max(m.get(), t.get()));
        }
        return m.isPresent() ? m : t;
    }

    private Optional<Integer> cut(
            String end, Optional<Integer> m, Optional<Integer> t, int was, int inward, boolean mineCuts) {
        Change painter = mineCuts ? both.theirs : both.mine;
        int cut = (mineCuts ? m : t).orElseThrow();
        Optional<Integer> other = mineCuts ? t : m;
        if (!painter.motion.equals(Motion.NONE) || !painter.figures.isEmpty()) {
            throw new Undetermined("cut off here, moved there");
        }
        if (paintedBeyond(painter, cut, inward)) {
            int wider = other.orElse(was);
            both.clashes.add(f -> Together.clash(
                    Clash.What.PLEATS,
                    OpenClashes.place("end", end),
                    Value.of(was),
                    Value.of(mineCuts ? cut : wider),
                    Value.of(mineCuts ? wider : cut)));
            return other;
        }
        if (other.isPresent()) {
            throw new Undetermined("narrowed here, widened there, and nothing painted");
        }
        return Optional.of(cut);
    }

    private static boolean beyond(int position, int end, int inward) {
        return inward > 0 ? position < end : position >= end;
    }

    private static boolean paintedBeyond(Change side, int end, int inward) {
        boolean painted = side.paint.values().stream()
                .flatMap(row -> row.entrySet().stream())
                .anyMatch(e -> e.getValue() != Row.EMPTY && beyond(e.getKey(), end, inward));
        boolean added = side.added.values().stream()
                .flatMap(List::stream)
                .flatMap(r -> r.cells().keySet().stream())
                .anyMatch(p -> beyond(p, end, inward));
        return painted || added;
    }

    private boolean baseBeyond(int end, int inward) {
        Grid before = Grid.of(both.base);
        return before.order().stream()
                .flatMap(r -> before.row(r).keySet().stream())
                .anyMatch(p -> beyond(p, end, inward));
    }
}
