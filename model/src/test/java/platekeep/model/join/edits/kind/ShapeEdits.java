package platekeep.model.join.edits.kind;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.join.edits.change.Cell;
import platekeep.model.join.edits.change.FigureMove;
import platekeep.model.join.edits.change.Motion;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** The chart's ends; the picture or a figure of it moved or mirrored. */
final class ShapeEdits {
    private ShapeEdits() {}

    static void widenLeft(Studio s) {
        s.change.from = Optional.of(s.from() - 1 - s.upTo(5));
    }

    static void widenRight(Studio s) {
        s.change.to = Optional.of(s.to() + 1 + s.upTo(5));
    }

    /** The positions that have cables, leftmost and rightmost. */
    private static int[] span(Studio s) {
        TreeSet<Integer> all = new TreeSet<>();
        s.order.forEach(r -> all.addAll(s.grid.row(r).keySet()));
        if (all.isEmpty()) {
            throw new Undetermined("blank");
        }
        return new int[] {all.first(), all.last()};
    }

    static void narrowBlank(Studio s) {
        int[] span = span(s);
        if (s.chance.nextBoolean()) {
            s.change.from = Optional.of(within(s, s.from() + 1, span[0]));
        } else {
            s.change.to = Optional.of(within(s, span[1] + 1, s.to() - 1));
        }
    }

    private static int within(Studio s, int least, int most) {
        if (most < least) {
            throw new Undetermined("no room");
        }
        return least + s.upTo(most - least + 1);
    }

    static void cutCables(Studio s) {
        int[] span = span(s);
        if (s.chance.nextBoolean()) {
            s.change.from = Optional.of(span[0] + 1 + s.upTo(2));
        } else {
            s.change.to = Optional.of(span[1] - s.upTo(2));
        }
    }

    /** Cables drawn at the very edge of the chart. */
    static void drawAtEdge(Studio s) {
        boolean left = s.chance.nextBoolean();
        for (int i = 0; i < 1 + s.upTo(3); i++) {
            s.paint(s.rowId(), left ? s.from() + i : s.to() - 1 - i, s.any(s.keys()));
        }
    }

    /** The chart made wider and cables drawn there. */
    static void widenAndDraw(Studio s) {
        int n = 1 + s.upTo(4);
        boolean left = s.chance.nextBoolean();
        if (left) {
            s.change.from = Optional.of(s.from() - n);
        } else {
            s.change.to = Optional.of(s.to() + n);
        }
        for (int i = 0; i < n; i++) {
            s.change.paint(s.rowId(), left ? s.from() - 1 - i : s.to() + i, s.any(s.keys()));
        }
    }

    static void shift(Studio s) {
        int[] span = span(s);
        int right = within(s, s.from() - span[0], s.to() - 1 - span[1]);
        if (right == 0) {
            throw new Undetermined("no move");
        }
        s.change.motion = new Motion(right, false, false);
        plain(s, s.grid.figures().stream().flatMap(Set::stream).toList(), right, 0);
    }

    static void mirror(Studio s) {
        s.change.motion = new Motion(0, true, false);
        for (Set<Cell> figure : s.grid.figures()) {
            lopsided(s, figure);
        }
    }

    /** A figure that is much like its own mirror image could as well have been moved. */
    private static void lopsided(Studio s, Set<Cell> figure) {
        int axis = figure.stream().mapToInt(Cell::position).min().orElseThrow()
                + figure.stream().mapToInt(Cell::position).max().orElseThrow();
        long differ = figure.stream()
                .filter(c -> s.grid.at(c.row(), axis - c.position()) != s.grid.at(c.row(), c.position()))
                .count();
        if (differ < 4 || differ * 10 < figure.size()) {
            throw new Undetermined("a figure like its mirror image");
        }
    }

    static void upsideDown(Studio s) {
        s.change.motion = new Motion(0, false, true);
    }

    static void figureSideways(Studio s) {
        Set<Cell> figure = figure(s);
        int right = s.upTo(13) - 6;
        if (right == 0) {
            throw new Undetermined("no move");
        }
        plain(s, List.copyOf(figure), right, 0);
        move(s, new FigureMove(figure, 0, right, false));
    }

    static void figureLifted(Studio s) {
        Set<Cell> figure = figure(s);
        int up = s.upTo(5) - 2;
        int right = s.upTo(5) - 2;
        if (up == 0) {
            throw new Undetermined("no move");
        }
        plain(s, List.copyOf(figure), right, up);
        move(s, new FigureMove(figure, up, right, false));
    }

    static void figureMirrored(Studio s) {
        Set<Cell> figure = figure(s);
        int axis = figure.stream().mapToInt(Cell::position).min().orElseThrow()
                + figure.stream().mapToInt(Cell::position).max().orElseThrow();
        long differ = figure.stream()
                .filter(c -> s.grid.at(c.row(), axis - c.position()) != s.grid.at(c.row(), c.position()))
                .count();
        enough(differ, figure.size());
        move(s, new FigureMove(figure, 0, 0, true));
    }

    private static void move(Studio s, FigureMove move) {
        for (Cell c : move.cells()) {
            int p = move.mirrored() ? c.position() : c.position() + move.right();
            int row = s.grid.indexOf(c.row()) - move.up();
            if (!s.inChart(p) || row < 0 || row >= s.order.size()) {
                throw new Undetermined("no room");
            }
        }
        s.change.figures.add(move);
    }

    /** A figure beside others, each of which has its own start. */
    private static Set<Cell> figure(Studio s) {
        List<Set<Cell>> figures = s.grid.figures();
        boolean each = figures.stream()
                .allMatch(f -> s.base.starts().stream()
                                .filter(x -> f.contains(new Cell(x.row(), x.pleat())))
                                .count()
                        == 1);
        if (!each || figures.size() < 2) {
            throw new Undetermined("figures without starts");
        }
        return s.any(figures);
    }

    /** A move can be told from redrawing only where a good part of the cells changes by it. */
    private static void plain(Studio s, List<Cell> cells, int right, int up) {
        long differ = cells.stream()
                .filter(c -> {
                    int row = s.grid.indexOf(c.row()) - up;
                    RowId there = row >= 0 && row < s.order.size() ? s.order.get(row) : null;
                    char is = there == null ? Row.EMPTY : s.grid.at(there, c.position() + right);
                    return is != s.grid.at(c.row(), c.position());
                })
                .count();
        enough(differ, cells.size());
    }

    private static void enough(long differ, long all) {
        if (differ < 6 || differ * 10 < all * 4) {
            throw new Undetermined("a move that looks like a few cables redrawn");
        }
    }
}
