package platekeep.model.compare;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import platekeep.model.plate.Row;

/** The earlier picture in the rows of the later plate, with everything put where its move brought it. */
final class ExpectedCells {
    private final Comparison comparison;
    private final FigureLabels labels;

    ExpectedCells(Comparison comparison, FigureLabels labels) {
        this.comparison = comparison;
        this.labels = labels;
    }

    /** As wide as the frame, as high as the later plate, in its letters. */
    Grid grid() {
        Grid before = comparison.beforeCells();
        Grid after = comparison.afterCells();
        PlateEdit edit = comparison.edit();
        int width = after.frame().width();
        char[][] out = new char[after.height()][width];
        for (char[] row : out) {
            Arrays.fill(row, Row.EMPTY);
        }
        Set<Motion> motions = new HashSet<>(edit.figures().values());
        for (int pass = 0; pass < (motions.isEmpty() ? 1 : 2); pass++) {
            for (int i = 0; i < before.height(); i++) {
                int row = edit.pairing().after(i);
                for (int k = 0; row >= 0 && k < width; k++) {
                    char c = before.at(i, k);
                    if (c == Row.EMPTY) {
                        continue;
                    }
                    int figure = labels == null ? -1 : labels.at(i, k);
                    boolean own = edit.figures().containsKey(figure);
                    if (own == (pass == 1)) {
                        put(out, edit.motionOf(figure), row, k, comparison.followed(c));
                    }
                }
            }
        }
        return Grid.ofRows(after.frame(), out);
    }

    private static void put(char[][] out, Motion motion, int row, int k, char c) {
        int r = motion.row(row);
        int to = motion.position(k);
        if (r >= 0 && r < out.length && to >= 0 && to < out[r].length) {
            out[r][to] = c;
        }
    }
}
