package platekeep.model.join.edits.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.RowId;

/** Where each cable, mark and place goes when the picture or a figure of it is moved or mirrored. */
final class Carry {
    private final Motion motion;
    private final int axis;
    private final Map<Cell, Cell> figures = new HashMap<>();
    private final Map<Cell, FigureMove> moves = new HashMap<>();

    Carry(Plate base, Change change, Grid ground) {
        motion = change.motion;
        axis = base.pleats().map(p -> p.from() + p.to()).orElse(0);
        List<RowId> order = ground.order();
        for (FigureMove move : change.figures) {
            if (move.up() != 0 && change.touchesRows()) {
                throw new Undetermined("a figure went up or down while rows came or went");
            }
            for (Cell cell : move.cells()) {
                int row = ground.indexOf(cell.row()) - move.up();
                if (ground.indexOf(cell.row()) < 0 || row < 0 || row >= order.size()) {
                    throw new Undetermined("a moved figure has no row to lie on");
                }
                figures.put(cell, new Cell(order.get(row), across(cell.position(), move)));
                moves.put(cell, move);
            }
        }
    }

    private static int across(int position, FigureMove move) {
        int p = move.mirrored() ? move.leftmost() + move.rightmost() - position : position;
        return p + move.right();
    }

    Cell cell(Cell cell) {
        Cell there = figures.getOrDefault(cell, cell);
        int p = motion.mirrored() ? axis - 1 - there.position() : there.position();
        return new Cell(there.row(), p + motion.right());
    }

    boolean mirrors(Cell cell) {
        return motion.mirrored() || moves.containsKey(cell) && moves.get(cell).mirrored();
    }

    FigureMove moveOf(Cell cell) {
        return moves.get(cell);
    }

    /** Where a mark at a pleat or valley of a row goes; it goes with the figure on whose cables it lies. */
    Map.Entry<RowId, String> mark(RowId row, String pleat) {
        double place = Pleat.place(pleat);
        Cell on = new Cell(row, (int) Math.floor(place));
        Cell before = new Cell(row, (int) Math.floor(place) - 1);
        Cell cell = figures.containsKey(on) || !figures.containsKey(before) ? on : before;
        if (place != Math.floor(place) && !figures.containsKey(on) && figures.containsKey(before)) {
            cell = on;
        }
        FigureMove move = moves.get(cell);
        RowId target = cell(cell).row();
        if (move != null) {
            place = (move.mirrored() ? move.leftmost() + move.rightmost() + 1 - place : place) + move.right();
        }
        place = (motion.mirrored() ? axis - place : place) + motion.right();
        return Map.entry(target, Pleat.text(place));
    }

    /** The grid after the move. */
    Grid grid(Grid ground) {
        Map<RowId, TreeMap<Integer, Character>> rows = new HashMap<>();
        List<RowId> order = ground.order();
        order.forEach(r -> rows.put(r, new TreeMap<>()));
        for (RowId row : order) {
            ground.row(row).forEach((p, ink) -> {
                Cell to = cell(new Cell(row, p));
                if (rows.get(to.row()).put(to.position(), ink) != null) {
                    throw new Undetermined("a moved figure lands on cables");
                }
            });
        }
        if (motion.upsideDown()) {
            java.util.Collections.reverse(order);
        }
        Grid grid = new Grid();
        order.forEach(r -> grid.put(r, rows.get(r)));
        if (!figures.isEmpty() && grid.figures().size() != ground.figures().size()) {
            throw new Undetermined("a moved figure touches another");
        }
        return grid;
    }
}
