package platekeep.model.compare;

import java.util.Arrays;
import platekeep.model.plate.Row;

/**
 * Which figure each cell of a grid belongs to. A figure is a set of cables that touch: neighbours in one row, or the
 * same position in rows next to each other.
 */
public final class FigureLabels {
    private final Grid grid;
    private final int[] label;
    private final int count;

    private FigureLabels(Grid grid, int[] label, int count) {
        this.grid = grid;
        this.label = label;
        this.count = count;
    }

    /** Labels all figures; linear in the cells. */
    public static FigureLabels of(Grid grid) {
        int width = grid.frame().width();
        int[] label = new int[width * grid.height()];
        Arrays.fill(label, -1);
        int count = 0;
        int[] stack = new int[64];
        for (int start = 0; start < label.length; start++) {
            if (label[start] >= 0 || grid.at(start / width, start % width) == Row.EMPTY) {
                continue;
            }
            int size = 0;
            stack[size++] = start;
            label[start] = count;
            while (size > 0) {
                int cell = stack[--size];
                int row = cell / width;
                int index = cell % width;
                if (size + 4 > stack.length) {
                    stack = Arrays.copyOf(stack, stack.length * 2);
                }
                size = push(grid, label, count, stack, size, row, index - 1);
                size = push(grid, label, count, stack, size, row, index + 1);
                size = push(grid, label, count, stack, size, row - 1, index);
                size = push(grid, label, count, stack, size, row + 1, index);
            }
            count++;
        }
        return new FigureLabels(grid, label, count);
    }

    private static int push(Grid grid, int[] label, int count, int[] stack, int size, int row, int index) {
        if (grid.at(row, index) == Row.EMPTY) {
            return size;
        }
        int cell = row * grid.frame().width() + index;
        if (label[cell] >= 0) {
            return size;
        }
        label[cell] = count;
        stack[size] = cell;
        return size + 1;
    }

    public int count() {
        return count;
    }

    /** The figure at a row and index of the frame, or -1. */
    public int at(int row, int index) {
        if (grid.at(row, index) == Row.EMPTY) {
            return -1;
        }
        return label[row * grid.frame().width() + index];
    }

    /** How many cells each figure has. */
    public int[] sizes() {
        int[] sizes = new int[count];
        for (int l : label) {
            if (l >= 0) {
                sizes[l]++;
            }
        }
        return sizes;
    }
}
