package platekeep.model.compare;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import platekeep.model.plate.Row;

/**
 * Whether the whole picture was moved sideways or mirrored left to right, told from the rows' own shapes before any row
 * is paired, and whether its rows were turned upside down.
 */
final class PictureMotion {

    private PictureMotion() {}

    /** What a row shows without the empty cells at its ends. */
    private record Trimmed(String cells, int start, int end) {
        static Trimmed of(char[] row) {
            int start = 0;
            while (start < row.length && row[start] == Row.EMPTY) {
                start++;
            }
            int end = row.length;
            while (end > start && row[end - 1] == Row.EMPTY) {
                end--;
            }
            return new Trimmed(new String(row, start, end - start), start, end);
        }
    }

    /** The sideways motion that most rows agree on; {@link Motion#NONE} when none is clear. Indexes of the frame. */
    static Motion sideways(Grid before, Grid after) {
        if (mostStayed(before, after)) {
            return Motion.NONE;
        }
        Map<String, int[]> rows = new HashMap<>();
        Map<Motion, Integer> votes = new HashMap<>();
        for (int j = 0; j < after.height(); j++) {
            Trimmed t = Trimmed.of(after.row(j));
            if (!t.cells().isEmpty()) {
                remember(rows, t);
            }
        }
        int total = 0;
        for (int i = 0; i < before.height(); i++) {
            Trimmed t = Trimmed.of(before.row(i));
            int[] same = rows.get(t.cells());
            int[] turned = rows.get(new StringBuilder(t.cells()).reverse().toString());
            total += isInSeveralPlaces(same) || isInSeveralPlaces(turned)
                    ? 0
                    : t.cells().length();
            vote(votes, same, t, 1);
            vote(votes, turned, t, -1);
        }
        Motion best = votes.keySet().stream()
                .min(Comparator.comparing((Motion m) -> -votes.get(m)).thenComparing(Runs.PLAINEST))
                .orElse(Motion.NONE);
        int stay = votes.getOrDefault(Motion.NONE, 0);
        int go = votes.getOrDefault(best, 0);
        return go > 2 * stay && 2 * go >= total ? bestOf(votes, go, before, after) : byOutermost(before, after);
    }

    /** Where rows are too like one another to tell: what brings the outermost cables where the outermost are now, if most rows agree. */
    private static Motion byOutermost(Grid before, Grid after) {
        Trimmed was = outermost(before);
        Trimmed is = outermost(after);
        if (was.start() >= was.end() || was.end() - was.start() != is.end() - is.start()) {
            return Motion.NONE;
        }
        Motion moved = Motion.shift(0, is.start() - was.start());
        Motion mirrored = new Motion(1, 0, -1, is.start() + was.end() - 1);
        Motion best = rowsFound(mirrored, before, after) > rowsFound(moved, before, after) ? mirrored : moved;
        long drawn = IntStream.range(0, before.height())
                .filter(i -> !Grid.isBlank(before.row(i)))
                .count();
        int found = rowsFound(best, before, after);
        return 4 * found >= 3 * drawn && found > 2 * rowsFound(Motion.NONE, before, after) ? best : Motion.NONE;
    }

    private static Trimmed outermost(Grid grid) {
        int start = grid.frame().width();
        int end = 0;
        for (int i = 0; i < grid.height(); i++) {
            Trimmed row = Trimmed.of(grid.row(i));
            if (row.start() < row.end()) {
                start = Math.min(start, row.start());
                end = Math.max(end, row.end());
            }
        }
        return new Trimmed("", start, end);
    }

    /** Of the motions that have as many votes (rows that are their own mirror image vote for two) the one after which most is where it is now. */
    private static Motion bestOf(Map<Motion, Integer> votes, int most, Grid before, Grid after) {
        Map<Motion, Integer> found = new HashMap<>();
        for (Map.Entry<Motion, Integer> vote : votes.entrySet()) {
            if (vote.getValue() == most) {
                found.put(vote.getKey(), rowsFound(vote.getKey(), before, after));
            }
        }
        return found.keySet().stream()
                .min(Comparator.comparing((Motion m) -> -found.get(m)).thenComparing(Runs.PLAINEST))
                .orElse(Motion.NONE);
    }

    /** How many rows with cables, moved so, stand in the later plate. */
    private static int rowsFound(Motion motion, Grid before, Grid after) {
        Set<String> rows = new HashSet<>();
        for (int j = 0; j < after.height(); j++) {
            rows.add(new String(after.row(j)));
        }
        Grid moved = before.movedSideways(motion);
        int found = 0;
        for (int i = 0; i < moved.height(); i++) {
            found += !Grid.isBlank(moved.row(i)) && rows.contains(new String(moved.row(i))) ? 1 : 0;
        }
        return found;
    }

    /** Whether more than half of the rows with cables stand in the later plate as they were; rows with equal cells share an array. */
    private static boolean mostStayed(Grid before, Grid after) {
        Set<char[]> rows = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int j = 0; j < after.height(); j++) {
            rows.add(after.row(j));
        }
        int stayed = 0;
        int all = 0;
        for (int i = 0; i < before.height(); i++) {
            if (!Grid.isBlank(before.row(i))) {
                all++;
                stayed += rows.contains(before.row(i)) ? 1 : 0;
            }
        }
        return 2 * stayed > all;
    }

    private static void remember(Map<String, int[]> rows, Trimmed t) {
        int[] known = rows.get(t.cells());
        if (known == null) {
            rows.put(t.cells(), new int[] {t.start(), 1});
        } else if (known[0] != t.start()) {
            known[1] = 0;
        }
    }

    private static boolean isInSeveralPlaces(int[] place) {
        return place != null && place[1] == 0;
    }

    /** A row votes where all its equals lie at one place; otherwise it says nothing. */
    private static void vote(Map<Motion, Integer> votes, int[] place, Trimmed t, int sign) {
        if (place != null && place[1] == 1 && !t.cells().isEmpty()) {
            int shift = sign > 0 ? place[0] - t.start() : place[0] + t.end() - 1;
            votes.merge(new Motion(1, 0, sign, shift), t.cells().length(), Integer::sum);
        }
    }
}
