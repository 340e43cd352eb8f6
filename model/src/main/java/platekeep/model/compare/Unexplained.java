package platekeep.model.compare;

import java.util.Map;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * How many cables a reading of an edit leaves to be told one by one: earlier ones that are not where, and in the colour
 * in which, the reading has them, and later ones in rows that were there before, on places where it brings none.
 *
 * @param labels the figures of the earlier cells; not asked where none moved on its own
 * @param letters the later letter of each earlier key, {@link Row#EMPTY} for one that went
 */
record Unexplained(
        Grid before,
        Grid after,
        RowPairing pairing,
        Labels labels,
        Map<Integer, Motion> figures,
        Motion picture,
        char[] letters) {

    /** The letters where every key is what it was. */
    static char[] sameLetters() {
        char[] same = new char[128];
        for (char c = 0; c < same.length; c++) {
            same[c] = c;
        }
        return same;
    }

    int count() {
        int width = before.frame().width();
        boolean[][] brought = new boolean[after.height()][];
        int count = 0;
        for (int i = 0; i < before.height(); i++) {
            int row = pairing.after(i);
            for (int k = 0; k < width; k++) {
                char c = before.at(i, k);
                if (c == Row.EMPTY) {
                    continue;
                }
                Motion motion = figures.isEmpty() ? picture : figures.getOrDefault(labels.at(i, k), picture);
                int there = motion.row(row);
                int place = motion.position(k);
                count += row >= 0 && letters[c] != Row.EMPTY && letters[c] == after.at(there, place) ? 0 : 1;
                if (row >= 0 && there >= 0 && there < brought.length && place >= 0 && place < width) {
                    brought[there] = brought[there] == null ? new boolean[width] : brought[there];
                    brought[there][place] = true;
                }
            }
        }
        return count + putIn(brought, width);
    }

    private int putIn(boolean[][] brought, int width) {
        int count = 0;
        for (int j = 0; j < after.height(); j++) {
            boolean wasThere = pairing.before(j) >= 0;
            for (int k = 0; wasThere && k < width; k++) {
                count += after.at(j, k) != Row.EMPTY && (brought[j] == null || !brought[j][k]) ? 1 : 0;
            }
        }
        return count;
    }
}
