package platekeep.model.join.edits.change;

import java.util.Set;

/**
 * One figure moved or mirrored on its own; row ids stay where they are.
 *
 * @param cells the figure as it was before
 * @param up rows up
 * @param right pleats to the right
 * @param mirrored left to right within its own width, before it is moved
 */
public record FigureMove(Set<Cell> cells, int up, int right, boolean mirrored) {
    public FigureMove {
        cells = Set.copyOf(cells);
    }

    int leftmost() {
        return cells.stream().mapToInt(Cell::position).min().orElseThrow();
    }

    int rightmost() {
        return cells.stream().mapToInt(Cell::position).max().orElseThrow();
    }
}
