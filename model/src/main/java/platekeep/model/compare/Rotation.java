package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import platekeep.model.plate.Plate;

/**
 * A move of the whole picture by rows within its chart: blank rows went at one end and as many came at the other, while
 * the picture's rows took their ids along.
 *
 * @param up by how many rows the picture went up; negative: down
 * @param gone handles of the blank rows that made room, from the end where they went
 * @param put handles of the blank rows that came (or came back) at the other end, top row first
 */
public record Rotation(int up, List<Integer> gone, List<Integer> put) {
    public static final Rotation NONE = new Rotation(0, List.of(), List.of());

    /**
     * Finds such a move.
     *
     * @param handles for each row of the later plate its row in the earlier one, or a number beyond those for a new row
     */
    public static Rotation of(Plate base, Plate side, RowPairing pairing, int[] handles) {
        int n = base.rows().size();
        if (n == 0 || handles.length == 0) {
            return NONE;
        }
        boolean[] moved = movedRows(n, handles);
        int topGone = count(n, i -> base.rows().get(i).isBlank() && (pairing.after(i) < 0 || moved[i]));
        int bottomGone = count(n, i -> {
            int k = n - 1 - i;
            return base.rows().get(k).isBlank() && (pairing.after(k) < 0 || moved[k]);
        });
        int rows = handles.length;
        int topCame = count(rows, j -> came(side, handles, moved, n, j));
        int bottomCame = count(rows, j -> came(side, handles, moved, n, rows - 1 - j));
        int up = Math.min(topGone, bottomCame);
        int down = Math.min(bottomGone, topCame);
        if (up == 0 && down == 0 || up == down || up == n || down == n) {
            return NONE;
        }
        return up > down
                ? new Rotation(up, range(0, up), at(handles, rows - up, rows))
                : new Rotation(-down, range(n - down, n), at(handles, 0, down));
    }

    private static boolean[] movedRows(int n, int[] handles) {
        int[] old = Arrays.stream(handles).filter(h -> h < n).toArray();
        boolean[] kept = Increasing.longest(old);
        boolean[] moved = new boolean[n];
        for (int k = 0; k < old.length; k++) {
            moved[old[k]] = !kept[k];
        }
        return moved;
    }

    private static boolean came(Plate side, int[] handles, boolean[] moved, int n, int j) {
        return side.rows().get(j).isBlank() && (handles[j] >= n || moved[handles[j]]);
    }

    private static int count(int most, IntPredicate fits) {
        int k = 0;
        while (k < most && fits.test(k)) {
            k++;
        }
        return k;
    }

    private static List<Integer> range(int from, int to) {
        return IntStream.range(from, to).boxed().toList();
    }

    private static List<Integer> at(int[] handles, int from, int to) {
        return Arrays.stream(handles, from, to).boxed().toList();
    }

    /** Whether the picture kept its height. */
    public boolean isNone() {
        return up == 0;
    }

    /** The side's rows without those that the move put at an end. */
    public int[] without(int[] handles) {
        Set<Integer> taken = new HashSet<>(put);
        return Arrays.stream(handles).filter(h -> !taken.contains(h)).toArray();
    }

    /** The side's rows as they would be had the picture not been moved. */
    public int[] undone(int[] handles) {
        if (isNone()) {
            return handles;
        }
        List<Integer> rows = new ArrayList<>();
        Arrays.stream(without(handles)).forEach(rows::add);
        rows.addAll(up > 0 ? 0 : rows.size(), gone);
        return rows.stream().mapToInt(h -> h).toArray();
    }
}
