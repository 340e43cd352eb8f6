package platekeep.model.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.stitch.RowIds;

/**
 * Which row of one plate is which of another. Indexes are top row first, from 0.
 *
 * <p>Two rows with one id are one row. A row without an id, or with one that stands twice, is paired by likeness; where
 * the ids of an id-less plate were derived from its text they count as its ids. Rows with different ids are two rows.
 */
public final class RowPairing {
    private static final int MOST_MOVED = 4;

    private final int[] toAfter;
    private final int[] toBefore;
    private final boolean[] uncertainBefore;
    private final boolean[] uncertainAfter;
    private boolean restsOnLikeness;

    /** How rows that no id names are paired. */
    enum By {
        /** What is alike comes together, as far as it stands in one order. */
        LIKENESS,
        /** The same, and of rows that share no colour those of one shape. */
        SHAPE,
        /** Only what is equal comes together, and what lies between is paired in place. */
        EQUALS,
        /** Every row stayed where it was; only between plates of as many rows. */
        PLACE
    }

    private RowPairing(int before, int after) {
        toAfter = new int[before];
        toBefore = new int[after];
        Arrays.fill(toAfter, -1);
        Arrays.fill(toBefore, -1);
        uncertainBefore = new boolean[before];
        uncertainAfter = new boolean[after];
    }

    /**
     * Pairs the rows of two plates.
     *
     * @param beforeCells the cells of {@code before}, with moves and renamed keys of the whole picture already undone
     * @param afterCells the cells of {@code after} in the same frame
     */
    static RowPairing of(Plate before, Plate after, Grid beforeCells, Grid afterCells, By by) {
        RowPairing pairing = new RowPairing(before.rows().size(), after.rows().size());
        pairing.pairById(before, after, beforeCells, afterCells);
        if (lacksIds(before) || lacksIds(after)) {
            pairing.restsOnLikeness = true;
            if (by == By.PLACE && before.rows().size() == after.rows().size()) {
                pairing.pairInPlace(pairing.new OwnIds(before, after));
            } else {
                pairing.pairByLikeness(
                        pairing.pairedAfterRows(),
                        pairing.new OwnIds(before, after),
                        new Likeness(beforeCells, afterCells, by));
            }
        }
        return pairing;
    }

    /**
     * Other ways to pair: rows that stand once on each side and that this pairing does not bring together, a run of
     * neighbours at a time, are taken to have moved past the others, and those are paired by likeness. The longest runs,
     * at most {@value #MOST_MOVED}.
     */
    List<RowPairing> withRowsMoved(Plate before, Plate after, Grid beforeCells, Grid afterCells) {
        Likeness likeness = new Likeness(beforeCells, afterCells, By.LIKENESS);
        int[] equals = likeness.onlyEquals();
        Alignment.Allowed own = new OwnIds(before, after);
        List<int[]> runs = new ArrayList<>();
        for (int i = 0; i < toAfter.length; i++) {
            int from = i;
            while (i < toAfter.length
                    && equals[i] >= 0
                    && toAfter[i] != equals[i]
                    && own.pair(i, equals[i])
                    && equals[i] - i == equals[from] - from) {
                i++;
            }
            if (i > from) {
                runs.add(new int[] {from, i--});
            }
        }
        return runs.stream()
                .sorted(Comparator.comparingInt(run -> run[0] - run[1]))
                .limit(MOST_MOVED)
                .map(run -> {
                    RowPairing other = new RowPairing(toAfter.length, toBefore.length);
                    other.restsOnLikeness = true;
                    other.pairById(before, after, beforeCells, afterCells);
                    int[] anchors = other.pairedAfterRows();
                    for (int i = run[0]; i < run[1]; i++) {
                        other.pair(i, equals[i]);
                    }
                    other.pairByLikeness(anchors, other.new OwnIds(before, after), likeness);
                    return other;
                })
                .toList();
    }

    private void pairInPlace(Alignment.Allowed allowed) {
        for (int i = 0; i < toAfter.length; i++) {
            if (toAfter[i] < 0 && toBefore[i] < 0 && allowed.pair(i, i)) {
                pair(i, i);
            }
        }
    }

    /** Whether a row had no id to be known by. */
    boolean restsOnLikeness() {
        return restsOnLikeness;
    }

    /** Whether another pairing pairs every row with the same one. */
    boolean pairsAs(RowPairing other) {
        return Arrays.equals(toAfter, other.toAfter) && Arrays.equals(toBefore, other.toBefore);
    }

    /**
     * How much there is to tell of rows that have no partner or stand elsewhere among the others: as much as two cables
     * each, of blank ones as much as three at most, since they come, go and move together.
     */
    int rowsToTell(Grid before, Grid after) {
        int drawn = 0;
        int blank = 0;
        boolean[] moved = moved();
        for (int j = 0; j < toBefore.length; j++) {
            if (moved[j] || toBefore[j] < 0) {
                boolean isBlank = Grid.isBlank(after.row(j));
                blank += isBlank ? 1 : 0;
                drawn += isBlank ? 0 : 1;
            }
        }
        for (int i = 0; i < toAfter.length; i++) {
            if (toAfter[i] < 0) {
                boolean isBlank = Grid.isBlank(before.row(i));
                blank += isBlank ? 1 : 0;
                drawn += isBlank ? 0 : 1;
            }
        }
        return 2 * drawn + Math.min(3, 2 * blank);
    }

    /** Whether rows of both plates have no partner: some may be one row, coloured anew. */
    boolean leavesRowsOnBothSides() {
        return Arrays.stream(toAfter).anyMatch(j -> j < 0)
                && Arrays.stream(toBefore).anyMatch(i -> i < 0);
    }

    /** The row of the later plate, or -1 where the row went. */
    public int after(int beforeRow) {
        return toAfter[beforeRow];
    }

    /** The row of the earlier plate, or -1 where the row is new. */
    public int before(int afterRow) {
        return toBefore[afterRow];
    }

    /** Whether another reading, equally good, does something else with this row of the earlier plate. */
    public boolean isUncertainBefore(int beforeRow) {
        return uncertainBefore[beforeRow];
    }

    /** Whether another reading, equally good, finds this row of the later plate elsewhere in the earlier one. */
    public boolean isUncertainAfter(int afterRow) {
        return uncertainAfter[afterRow];
    }

    /** Which rows of the later plate, being paired, changed their place among the others. */
    public boolean[] moved() {
        int[] paired = pairedAfterRows();
        boolean[] kept =
                Increasing.longest(Arrays.stream(paired).map(j -> toBefore[j]).toArray());
        boolean[] moved = new boolean[toBefore.length];
        for (int k = 0; k < paired.length; k++) {
            moved[paired[k]] = !kept[k];
        }
        return moved;
    }

    /** Whether any row changed its place among the others. */
    boolean movesRows() {
        int last = -1;
        for (int j : pairedAfterRows()) {
            if (toBefore[j] < last) {
                return true;
            }
            last = toBefore[j];
        }
        return false;
    }

    /** Whether nearly all rows stand in the opposite order. */
    boolean isTurnedOver() {
        int pairs = 0;
        int falling = 0;
        int last = -1;
        for (int i = 0; i < toAfter.length; i++) {
            if (toAfter[i] >= 0) {
                pairs++;
                falling += last > toAfter[i] ? 1 : 0;
                last = toAfter[i];
            }
        }
        return pairs >= 3 && falling * 5 >= (pairs - 1) * 4;
    }

    /** The pairing read with the rows of the earlier plate in the opposite order. */
    RowPairing turnedOver() {
        RowPairing other = new RowPairing(toAfter.length, toBefore.length);
        for (int i = 0; i < toAfter.length; i++) {
            int opposite = toAfter.length - 1 - i;
            other.uncertainBefore[opposite] = uncertainBefore[i];
            if (toAfter[i] >= 0) {
                other.pair(opposite, toAfter[i]);
            }
        }
        System.arraycopy(uncertainAfter, 0, other.uncertainAfter, 0, uncertainAfter.length);
        return other;
    }

    /** How many rows with cables in them are paired with their equals. */
    int pairedEqual(Grid before, Grid after) {
        int equal = 0;
        for (int i = 0; i < toAfter.length; i++) {
            if (toAfter[i] >= 0
                    && !Grid.isBlank(before.row(i))
                    && Arrays.equals(before.row(i), after.row(toAfter[i]))) {
                equal++;
            }
        }
        return equal;
    }

    /** Whether a row with cables in it has its equal in the other plate, and neither of the two is paired with an equal. */
    boolean leavesEqualsApart(Grid before, Grid after) {
        Set<String> left = new HashSet<>();
        for (int i = 0; i < toAfter.length; i++) {
            boolean equal = toAfter[i] >= 0 && Arrays.equals(before.row(i), after.row(toAfter[i]));
            if (!equal && !Grid.isBlank(before.row(i))) {
                left.add(new String(before.row(i)));
            }
        }
        for (int j = 0; j < toBefore.length && !left.isEmpty(); j++) {
            boolean equal = toBefore[j] >= 0 && Arrays.equals(after.row(j), before.row(toBefore[j]));
            if (!equal && left.contains(new String(after.row(j)))) {
                return true;
            }
        }
        return false;
    }

    private int[] pairedAfterRows() {
        int[] out = new int[toBefore.length];
        int n = 0;
        for (int j = 0; j < toBefore.length; j++) {
            if (toBefore[j] >= 0) {
                out[n++] = j;
            }
        }
        return Arrays.copyOf(out, n);
    }

    private void pair(int i, int j) {
        toAfter[i] = j;
        toBefore[j] = i;
    }

    private static boolean lacksIds(Plate plate) {
        Set<RowId> seen = new HashSet<>();
        for (Row row : plate.rows()) {
            if (row.id().isEmpty() || !seen.add(row.id().get())) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasIds(Plate plate) {
        return plate.rows().stream().anyMatch(r -> r.id().isPresent());
    }

    /** The ids that count: those that stand there, and derived ones where only the other plate has its own. */
    private static List<Optional<RowId>> ids(Plate plate, Plate other) {
        boolean derive = plate.rows().stream().anyMatch(r -> r.id().isEmpty()) && hasIds(other);
        Plate named = derive ? RowIds.given(plate) : plate;
        return named.rows().stream().map(Row::id).toList();
    }

    private void pairById(Plate before, Plate after, Grid beforeCells, Grid afterCells) {
        Map<RowId, List<Integer>> places = new HashMap<>();
        List<Optional<RowId>> afterIds = ids(after, before);
        for (int j = 0; j < afterIds.size(); j++) {
            int row = j;
            afterIds.get(j)
                    .ifPresent(id ->
                            places.computeIfAbsent(id, k -> new ArrayList<>(1)).add(row));
        }
        List<Optional<RowId>> beforeIds = ids(before, after);
        for (int i = 0; i < toAfter.length; i++) {
            boolean own = before.rows().get(i).id().isPresent();
            List<Integer> all = beforeIds.get(i).map(places::get).orElse(null);
            // an id that was derived on both sides says nothing
            List<Integer> found = all == null || own
                    ? all
                    : new ArrayList<>(all.stream()
                            .filter(j -> after.rows().get(j).id().isPresent())
                            .toList());
            if (found != null && !found.isEmpty()) {
                int j = found.size() == 1 ? found.get(0) : likest(beforeCells, i, afterCells, found);
                all.remove((Integer) j);
                pair(i, j);
            }
        }
    }

    /** Of several rows under one id the one that has most cables in common; the first of equally good ones. */
    private static int likest(Grid before, int row, Grid after, List<Integer> candidates) {
        int best = candidates.get(0);
        int most = -1;
        for (int j : candidates) {
            int same = 0;
            for (int k = 0; k < before.frame().width(); k++) {
                same += before.at(row, k) == after.at(j, k) ? 1 : 0;
            }
            if (same > most) {
                most = same;
                best = j;
            }
        }
        return best;
    }

    /** @param paired rows of the later plate, in order, whose partners are known and stand between the others */
    private void pairByLikeness(int[] paired, Alignment.Allowed free, Likeness likeness) {
        boolean[] kept =
                Increasing.longest(Arrays.stream(paired).map(j -> toBefore[j]).toArray());
        int b = 0;
        int a = 0;
        for (int k = 0; k < paired.length; k++) {
            if (kept[k]) {
                align(likeness, free, b, toBefore[paired[k]], a, paired[k]);
                b = toBefore[paired[k]] + 1;
                a = paired[k] + 1;
            }
        }
        align(likeness, free, b, toAfter.length, a, toBefore.length);
        pairMoved(likeness, free);
    }

    /** Which rows may be paired by likeness: at least one of the two must have no id of its own. */
    private final class OwnIds implements Alignment.Allowed {
        private final boolean[] beforeHas;
        private final boolean[] afterHas;

        OwnIds(Plate before, Plate after) {
            beforeHas = own(before);
            afterHas = own(after);
        }

        private boolean[] own(Plate plate) {
            Set<RowId> seen = new HashSet<>();
            boolean[] own = new boolean[plate.rows().size()];
            for (int i = 0; i < own.length; i++) {
                Optional<RowId> id = plate.rows().get(i).id();
                own[i] = id.isPresent() && seen.add(id.get());
            }
            return own;
        }

        @Override
        public boolean pair(int beforeRow, int afterRow) {
            return !beforeHas[beforeRow] || !afterHas[afterRow];
        }
    }

    private void align(Likeness likeness, Alignment.Allowed allowed, int b0, int b1, int a0, int a1) {
        int[] before = free(toAfter, b0, b1);
        int[] after = free(toBefore, a0, a1);
        if (before.length == 0 || after.length == 0) {
            return;
        }
        Alignment alignment = new Alignment(likeness, before, after, allowed);
        int[] partners = alignment.partners();
        for (int k = 0; k < partners.length; k++) {
            uncertainBefore[before[k]] = alignment.uncertainBefore(k);
            if (partners[k] >= 0) {
                pair(before[k], after[partners[k]]);
            }
        }
        for (int k = 0; k < after.length; k++) {
            uncertainAfter[after[k]] = alignment.uncertainAfter(k);
        }
    }

    private static int[] free(int[] partner, int from, int to) {
        int[] out = new int[to - from];
        int n = 0;
        for (int i = from; i < to; i++) {
            if (partner[i] < 0) {
                out[n++] = i;
            }
        }
        return Arrays.copyOf(out, n);
    }

    /**
     * What is left, equal and alone on each side was moved. Of blank rows as many are left on each side: they may be the
     * same ones, or others.
     */
    private void pairMoved(Likeness likeness, Alignment.Allowed allowed) {
        Map<Integer, Left> left = new HashMap<>();
        for (int i = 0; i < toAfter.length; i++) {
            if (toAfter[i] < 0) {
                left.computeIfAbsent(
                                likeness.beforeClass(i), rowClass -> new Left(new ArrayList<>(1), new ArrayList<>(1)))
                        .before()
                        .add(i);
            }
        }
        for (int j = 0; j < toBefore.length; j++) {
            Left there = toBefore[j] < 0 ? left.get(likeness.afterClass(j)) : null;
            if (there != null) {
                there.after().add(j);
            }
        }
        for (Left rows : left.values()) {
            int count = rows.before().size();
            if (rows.after().size() != count) {
                continue;
            }
            boolean blank = likeness.isBlank(rows.before().get(0));
            for (int k = 0; k < count && (blank || count == 1); k++) {
                int i = rows.before().get(k);
                int j = rows.after().get(k);
                if (allowed.pair(i, j)) {
                    pair(i, j);
                    uncertainBefore[i] |= blank;
                    uncertainAfter[j] |= blank;
                }
            }
        }
    }

    /** Rows of equal cells that found no partner where they stand, as they stand on each side. */
    private record Left(List<Integer> before, List<Integer> after) {}
}
