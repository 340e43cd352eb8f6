package platekeep.model.join.edits.change;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Rows by identity, top first, each with the cables that it has. Figures and kinds are worked out the plain way, straight
 * from their definitions.
 */
public final class Grid {
    private static final int[][] STEPS = {{0, -1}, {0, 1}, {-1, 0}, {1, 0}};

    private final Map<RowId, TreeMap<Integer, Character>> rows = new LinkedHashMap<>();
    private List<Set<Cell>> figures;
    private Map<RowId, Integer> index;

    public static Grid of(Plate plate) {
        Grid grid = new Grid();
        for (Row row : plate.rows()) {
            TreeMap<Integer, Character> cells = new TreeMap<>();
            for (int i = 0; i < row.cells().length(); i++) {
                if (row.cells().charAt(i) != Row.EMPTY) {
                    cells.put(plate.from() + i, row.cells().charAt(i));
                }
            }
            grid.put(row.id().orElseThrow(), cells);
        }
        return grid;
    }

    void put(RowId row, TreeMap<Integer, Character> cells) {
        rows.put(row, cells);
        figures = null;
        index = null;
    }

    public List<RowId> order() {
        return new ArrayList<>(rows.keySet());
    }

    public boolean has(RowId row) {
        return rows.containsKey(row);
    }

    public TreeMap<Integer, Character> row(RowId row) {
        return rows.get(row);
    }

    public char at(RowId row, int position) {
        TreeMap<Integer, Character> cells = rows.get(row);
        return cells == null ? Row.EMPTY : cells.getOrDefault(position, Row.EMPTY);
    }

    public boolean filled(Cell cell) {
        return at(cell.row(), cell.position()) != Row.EMPTY;
    }

    public int indexOf(RowId row) {
        if (index == null) {
            index = new HashMap<>();
            for (RowId r : rows.keySet()) {
                index.put(r, index.size());
            }
        }
        return index.getOrDefault(row, -1);
    }

    /** The cells of a row as text over the positions from {@code from} to before {@code to}. */
    public static String text(TreeMap<Integer, Character> cells, int from, int to) {
        StringBuilder out = new StringBuilder();
        for (int p = from; p < to; p++) {
            out.append(cells.getOrDefault(p, Row.EMPTY));
        }
        return out.toString();
    }

    /** Sets of cables that touch, from the top. */
    public List<Set<Cell>> figures() {
        if (figures == null) {
            figures = new ArrayList<>();
            List<RowId> order = order();
            int left = rows.values().stream()
                    .filter(r -> !r.isEmpty())
                    .mapToInt(TreeMap::firstKey)
                    .min()
                    .orElse(0);
            int right = rows.values().stream()
                    .filter(r -> !r.isEmpty())
                    .mapToInt(TreeMap::lastKey)
                    .max()
                    .orElse(0);
            boolean[][] open = new boolean[order.size()][right - left + 1];
            for (int i = 0; i < open.length; i++) {
                for (int p : rows.get(order.get(i)).keySet()) {
                    open[i][p - left] = true;
                }
            }
            for (int i = 0; i < open.length; i++) {
                for (int j = 0; j < open[i].length; j++) {
                    if (open[i][j]) {
                        figures.add(flood(open, i, j, left, order));
                    }
                }
            }
        }
        return figures;
    }

    /** The cables that touch this one, closed off as they are found. */
    private static Set<Cell> flood(boolean[][] open, int row, int column, int left, List<RowId> order) {
        Set<Cell> figure = new LinkedHashSet<>();
        Deque<int[]> todo = new ArrayDeque<>();
        open[row][column] = false;
        todo.add(new int[] {row, column});
        while (!todo.isEmpty()) {
            int[] at = todo.poll();
            figure.add(new Cell(order.get(at[0]), at[1] + left));
            for (int[] step : STEPS) {
                int i = at[0] + step[0];
                int j = at[1] + step[1];
                if (i >= 0 && j >= 0 && i < open.length && j < open[i].length && open[i][j]) {
                    open[i][j] = false;
                    todo.add(new int[] {i, j});
                }
            }
        }
        return figure;
    }

    public Set<Cell> figureAt(Cell cell) {
        return figures().stream().filter(f -> f.contains(cell)).findFirst().orElse(Set.of());
    }

    List<Cell> neighbours(Cell cell, List<RowId> order) {
        List<Cell> out = new ArrayList<>();
        out.add(new Cell(cell.row(), cell.position() - 1));
        out.add(new Cell(cell.row(), cell.position() + 1));
        int i = indexOf(cell.row());
        if (i > 0) {
            out.add(new Cell(order.get(i - 1), cell.position()));
        }
        if (i >= 0 && i + 1 < order.size()) {
            out.add(new Cell(order.get(i + 1), cell.position()));
        }
        return out;
    }

    /** Starts from the bottom, then from the left. */
    List<Start> inOrder(List<Start> starts) {
        List<Start> out = new ArrayList<>(starts);
        out.sort((a, b) -> indexOf(a.row()) != indexOf(b.row())
                ? Integer.compare(indexOf(b.row()), indexOf(a.row()))
                : Integer.compare(a.pleat(), b.pleat()));
        return out;
    }

    /** The start that counts in the figure, if one stands on it. */
    Optional<Start> startOn(Set<Cell> figure, List<Start> starts) {
        return inOrder(starts).stream()
                .filter(s -> figure.contains(new Cell(s.row(), s.pleat())))
                .findFirst();
    }

    /** How each cable lies. */
    Map<Cell, CableKind> kinds(List<Start> starts) {
        Map<Cell, CableKind> kinds = new HashMap<>();
        for (Set<Cell> figure : figures()) {
            Start start = startOn(figure, starts).orElseGet(() -> first(starts));
            for (Cell c : figure) {
                int d = indexOf(start.row()) - indexOf(c.row()) + c.position() - start.pleat();
                kinds.put(c, start.cable().turned(d));
            }
        }
        return kinds;
    }

    private Start first(List<Start> starts) {
        List<Start> there = inOrder(starts).stream().filter(s -> has(s.row())).toList();
        if (!there.isEmpty()) {
            return there.get(0);
        }
        if (!starts.isEmpty()) {
            throw new Undetermined("no start stands on a row");
        }
        List<RowId> order = order();
        for (int i = order.size() - 1; i >= 0; i--) {
            if (!rows.get(order.get(i)).isEmpty()) {
                return new Start(order.get(i), rows.get(order.get(i)).firstKey(), CableKind.DOWN);
            }
        }
        throw new Undetermined("no cables");
    }
}
