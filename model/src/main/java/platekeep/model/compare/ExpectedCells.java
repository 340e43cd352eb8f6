package platekeep.model.compare;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/** The earlier picture in the rows of the later plate, with everything put where its move brought it. */
final class ExpectedCells {
    private final Comparison comparison;
    private final Labels labels;

    ExpectedCells(Comparison comparison, Labels labels) {
        this.comparison = comparison;
        this.labels = labels;
    }

    /** Hears where a cable of the earlier plate lies now. */
    interface Each {

        /**
         * A cable was brought to a place.
         *
         * @param row a row of the later plate
         * @param index in the frame
         * @param key its key in the earlier plate
         */
        void cable(int row, int index, char key);
    }

    /** As wide as the frame, as high as the later plate, in its letters. */
    Grid grid() {
        if (nothingWent()) {
            return inPlace();
        }
        char[][] out = new char[comparison.afterCells().height()]
                [comparison.afterCells().frame().width()];
        for (char[] row : out) {
            Arrays.fill(row, Row.EMPTY);
        }
        PlateEdit edit = comparison.edit();
        forEach((row, index, key) ->
                out[row][index] = edit.renaming().letter(key).orElse(key));
        return Grid.ofRows(comparison.afterCells().frame(), out);
    }

    private boolean nothingWent() {
        PlateEdit edit = comparison.edit();
        return !edit.moves()
                && edit.renaming().renamed().isEmpty()
                && edit.renaming().merged().isEmpty();
    }

    /** Rows that stayed as they were share their cells with the earlier plate. */
    private Grid inPlace() {
        Grid before = comparison.beforeCells();
        char[] blank = new char[before.frame().width()];
        Arrays.fill(blank, Row.EMPTY);
        char[][] out = new char[comparison.afterCells().height()][];
        for (int j = 0; j < out.length; j++) {
            int i = comparison.edit().pairing().before(j);
            out[j] = i < 0 ? blank : before.row(i);
        }
        return Grid.ofRows(before.frame(), out);
    }

    /** Brings every cable to its place; where two come to lie at one, the figure that made a move of its own is last. */
    void forEach(Each each) {
        Grid before = comparison.beforeCells();
        PlateEdit edit = comparison.edit();
        int width = before.frame().width();
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
                        put(each, edit.motionOf(figure), row, k, c);
                    }
                }
            }
        }
    }

    private void put(Each each, Motion motion, int row, int k, char c) {
        int r = motion.row(row);
        int to = motion.position(k);
        Grid after = comparison.afterCells();
        if (r >= 0 && r < after.height() && to >= 0 && to < after.frame().width()) {
            each.cable(r, to, c);
        }
    }
}
