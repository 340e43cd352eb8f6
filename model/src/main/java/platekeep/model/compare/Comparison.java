package platekeep.model.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * Two plates compared: rows lined up, and the change in words. Linear in the cells for edits of ordinary size.
 */
public final class Comparison {
    private final Plate before;
    private final Plate after;
    private final Grid beforeCells;
    private final Grid afterCells;
    private final PlateEdit edit;
    private final List<RowPair> rows;
    private final List<Difference> differences;

    private Comparison(Plate before, Plate after, Grid beforeCells, Grid afterCells, PlateEdit edit) {
        this.before = before;
        this.after = after;
        this.beforeCells = beforeCells;
        this.afterCells = afterCells;
        this.edit = edit;
        rows = lineUp();
        List<Difference> all = new ArrayList<>(new ChartWords(this).differences());
        all.addAll(new FactWords(before, after, edit.renaming(), new CarriedThings(before, after, edit, beforeCells))
                .differences());
        differences = List.copyOf(all);
    }

    /** Compares an earlier plate with a later one, or any two. */
    public static Comparison of(Plate before, Plate after) {
        Map<String, char[]> shared = new HashMap<>();
        Grid.Frame frame = Grid.Frame.around(before, after);
        Grid beforeCells = Grid.of(before, frame, shared);
        Grid afterCells = Grid.of(after, frame, shared);
        return of(before, after, beforeCells, afterCells, PlateEdit.of(before, after, beforeCells, afterCells));
    }

    /** As {@link #of(Plate, Plate)} where the edit between the two has been read already, their cells in one frame. */
    public static Comparison of(Plate before, Plate after, Grid beforeCells, Grid afterCells, PlateEdit edit) {
        return new Comparison(before, after, beforeCells, afterCells, edit);
    }

    public Plate before() {
        return before;
    }

    public Plate after() {
        return after;
    }

    /** Whether the two mean the same. */
    public boolean same() {
        return before.equals(after);
    }

    /** Rows lined up from the top; a removed row stands above the row that followed it. */
    public List<RowPair> rows() {
        return rows;
    }

    /** What changed, shortest statement first within the picture, then the facts. Empty only if the two are the same. */
    public List<Difference> differences() {
        return differences;
    }

    /** The change in plain words, a statement each. */
    public List<String> words() {
        return differences.stream().map(Difference::words).toList();
    }

    /** The positions that both charts lie in. */
    public Grid.Frame frame() {
        return afterCells.frame();
    }

    PlateEdit edit() {
        return edit;
    }

    Grid beforeCells() {
        return beforeCells;
    }

    Grid afterCells() {
        return afterCells;
    }

    private List<RowPair> lineUp() {
        List<RowPair> out = new ArrayList<>();
        boolean[] moved = edit.pairing().moved();
        int next = 0;
        for (int j = 0; j < after.rows().size(); j++) {
            int i = edit.pairing().before(j);
            if (i >= 0 && !moved[j]) {
                next = removedUpTo(next, i, out);
                next = Math.max(next, i + 1);
            }
            out.add(pair(i, j, moved[j]));
        }
        removedUpTo(next, before.rows().size(), out);
        return List.copyOf(out);
    }

    private int removedUpTo(int from, int to, List<RowPair> out) {
        for (int i = from; i < to; i++) {
            if (edit.pairing().after(i) < 0) {
                out.add(new RowPair(Optional.of(i), Optional.empty(), RowPair.Kind.REMOVED, false, List.of()));
            }
        }
        return Math.max(from, to);
    }

    private RowPair pair(int i, int j, boolean moved) {
        if (i < 0) {
            return new RowPair(Optional.empty(), Optional.of(j), RowPair.Kind.ADDED, false, List.of());
        }
        List<CableRun> runs = runs(i, j);
        RowPair.Kind kind = moved ? RowPair.Kind.MOVED : runs.isEmpty() ? RowPair.Kind.SAME : RowPair.Kind.EDITED;
        return new RowPair(Optional.of(i), Optional.of(j), kind, !runs.isEmpty(), runs);
    }

    private List<CableRun> runs(int i, int j) {
        char[] was = beforeCells.row(i);
        char[] is = afterCells.row(j);
        if (was == is && edit.renaming().renamed().isEmpty()) {
            return List.of();
        }
        List<CableRun> runs = new ArrayList<>();
        int k = 0;
        while (k < was.length) {
            if (followed(was[k]) == is[k]) {
                k++;
                continue;
            }
            int end = k;
            StringBuilder old = new StringBuilder();
            while (end < was.length && followed(was[end]) != is[end]) {
                old.append(followed(was[end++]));
            }
            int from = beforeCells.frame().position(k);
            runs.add(new CableRun(from, from + end - k - 1, old.toString(), new String(is, k, end - k)));
            k = end;
        }
        return runs;
    }

    /** The later letter of an earlier key; a colour that went keeps its old letter. */
    char followed(char key) {
        return key == Row.EMPTY ? key : edit.renaming().letters().getOrDefault(key, key);
    }
}
