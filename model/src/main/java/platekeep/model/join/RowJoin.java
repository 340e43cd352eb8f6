package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import platekeep.model.compare.Rotation;
import platekeep.model.compare.RowPairing;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;

/**
 * Which rows the joined plate has and in which order. Rows are handles: 0 to n - 1 are the rows of the earlier plate, top
 * row first, n and above are new ones.
 */
final class RowJoin {
    private final Plate base;
    private final Side[] sides;
    private CellJoin cells;
    private final int n;
    private final int[][] handleOf = new int[2][];
    private final int[][] rowOf = new int[2][];
    private final Rotation[] rotations = new Rotation[2];
    private final Map<Integer, Integer> heldFor = new HashMap<>();
    private final List<Torn> torn = new ArrayList<>();
    private final Set<Integer> keptThoughTakenOut = new HashSet<>();
    private final Set<Integer> movedTwice = new HashSet<>();
    private final Set<Integer> twins = new HashSet<>();
    private final Set<Integer> decidedTwice;
    private final boolean[][] amongLikes = new boolean[2][];
    private List<Integer> order = List.of();

    /** Both sides put different rows in at one place: the handles of each side's run, top row first. */
    record Torn(List<Integer> mine, List<Integer> theirs) {}

    RowJoin(Plate base, Side[] sides, CellJoin cells) {
        this.base = base;
        this.sides = sides;
        this.cells = cells;
        n = base.rows().size();
        int next = n;
        for (int s = 0; s < 2; s++) {
            RowPairing pairing = sides[s].edit().pairing();
            int rows = sides[s].plate().rows().size();
            handleOf[s] = new int[rows];
            for (int j = 0; j < rows; j++) {
                handleOf[s][j] = pairing.before(j) >= 0 ? pairing.before(j) : next++;
            }
        }
        for (int s = 0; s < 2; s++) {
            rowOf[s] = new int[next];
            Arrays.fill(rowOf[s], -1);
            for (int j = 0; j < handleOf[s].length; j++) {
                rowOf[s][handleOf[s][j]] = j;
            }
            rotations[s] = Rotation.of(base, sides[s].plate(), pairing(s), handleOf[s]);
        }
        decidedTwice = TwoDecisions.rows(
                base, sides[0].plate(), sides[1].plate(), h -> rowOf[0][h] >= 0, h -> rowOf[1][h] >= 0);
        boolean mine = contested(0);
        boolean theirs = contested(1);
        rotations[0] = mine ? Rotation.NONE : rotations[0];
        rotations[1] = theirs ? Rotation.NONE : rotations[1];
    }

    /** Whether the other side moved a row, elsewhere, that this side's move of the picture brought to an end. */
    private boolean contested(int s) {
        boolean[] movedThere = sides[1 - s].edit().pairing().moved();
        return rotations[s].put().stream()
                .filter(h -> h < n && rowOf[1 - s][h] >= 0)
                .anyMatch(h ->
                        movedThere[rowOf[1 - s][h]] && !rotations[1 - s].put().contains(h));
    }

    private RowPairing pairing(int s) {
        return sides[s].edit().pairing();
    }

    /** Asks these cells from now on. */
    RowJoin with(CellJoin newCells) {
        cells = newCells;
        return this;
    }

    /** How many rows the earlier plate has. */
    int base() {
        return n;
    }

    /** The side's row with this handle, or -1. */
    int row(int side, int handle) {
        return rowOf[side][handle];
    }

    int handle(int side, int row) {
        return handleOf[side][row];
    }

    Rotation rotation(int side) {
        return rotations[side];
    }

    /** Reads a move of the picture by rows as if it had not happened. */
    void undoRotations() {
        for (int s = 0; s < 2; s++) {
            handleOf[s] = rotations[s].undone(handleOf[s]);
            rotations[s] = Rotation.NONE;
        }
    }

    /** The handles of the joined plate, top row first. */
    List<Integer> order() {
        return order;
    }

    /** Rows that one side took out and the other one changed. */
    Set<Integer> keptThoughTakenOut() {
        return keptThoughTakenOut;
    }

    /** Rows of the earlier plate that stand since an open clash about them was settled in two ways. */
    Set<Integer> decidedTwice() {
        return decidedTwice;
    }

    Set<Integer> movedTwice() {
        return movedTwice;
    }

    /** Rows without ids of which nobody can tell which one was meant. */
    Set<Integer> twins() {
        return twins;
    }

    List<Torn> torn() {
        return torn;
    }

    /** The handle above a row of the earlier plate as a side has it, or -1 at the top. */
    int above(int side, int handle) {
        int row = side < 0 ? handle : rowOf[side][handle];
        return row <= 0 ? -1 : side < 0 ? row - 1 : handleOf[side][row - 1];
    }

    /** The handle that stands for a new row of a side: itself, or the same row of the other side. */
    int held(int handle) {
        return heldFor.getOrDefault(handle, handle);
    }

    void join() {
        findTwins();
        int[] mine = rotations[0].without(handleOf[0]);
        int[] theirs = rotations[1].without(handleOf[1]);
        SequenceJoin join = new SequenceJoin(n, mine, theirs, new Order());
        order = rotated(join.result());
    }

    /** Blank rows that a move of the picture put at an end stand beyond all else there. */
    private List<Integer> rotated(List<Integer> inner) {
        List<Integer> top = new ArrayList<>();
        List<Integer> bottom = new ArrayList<>();
        List<Integer> mine = putAndStanding(0);
        List<Integer> theirs = putAndStanding(1);
        List<Integer> put = mine.isEmpty() ? theirs : mine;
        if (!mine.isEmpty() && !theirs.isEmpty()) {
            put = byIds(mine).compareTo(byIds(theirs)) <= 0 ? mine : theirs;
            List<Integer> other = put == mine ? theirs : mine;
            for (int k = 0; k < put.size() && k < other.size(); k++) {
                heldFor.put(other.get(k), put.get(k));
            }
        }
        Set<Integer> outside = new HashSet<>(put);
        if (mine.isEmpty() != theirs.isEmpty()) {
            put = withEqualRowsPutIn(mine.isEmpty() ? 1 : 0, put);
            put = withRowsBetween(mine.isEmpty() ? 0 : 1, put);
            outside.addAll(put);
            outside.addAll(heldFor.keySet());
        }
        (rotations[0].up() > 0 || rotations[1].up() > 0 ? bottom : top).addAll(put);
        List<Integer> all = new ArrayList<>(top);
        inner.stream().filter(h -> !outside.contains(h)).forEach(all::add);
        all.addAll(bottom);
        return all;
    }

    /** Rows that a side's move of the picture put at an end, without those that the other side took out. */
    private List<Integer> putAndStanding(int s) {
        return rotations[s].put().stream()
                .filter(h -> h >= n || rowOf[1 - s][h] >= 0)
                .toList();
    }

    /** With the new rows that the other side has between two of them that stand side by side. */
    private List<Integer> withRowsBetween(int other, List<Integer> put) {
        List<Integer> all = new ArrayList<>();
        for (int k = 0; k < put.size(); k++) {
            all.add(put.get(k));
            int from = k + 1 < put.size() ? rowOf[other][put.get(k)] : -1;
            int to = from < 0 ? -1 : rowOf[other][put.get(k + 1)];
            if (to > from && Arrays.stream(handleOf[other], from + 1, to).allMatch(h -> h >= n)) {
                Arrays.stream(handleOf[other], from + 1, to).forEach(all::add);
            }
        }
        return all;
    }

    /** Blank rows that the other side put in at the end to which the move brought as many are the same rows. */
    private List<Integer> withEqualRowsPutIn(int s, List<Integer> put) {
        List<Integer> others = newBlankAtEnd(1 - s, rotations[s].up() > 0);
        if (others.size() != put.size() || put.stream().anyMatch(h -> h < n)) {
            return put;
        }
        List<Integer> held = s == 0 ? put : others;
        for (int k = 0; k < put.size(); k++) {
            hold(held.get(k), (s == 0 ? others : put).get(k));
        }
        return held;
    }

    private List<Integer> newBlankAtEnd(int s, boolean bottom) {
        List<Integer> found = new ArrayList<>();
        int[] handles = handleOf[s];
        for (int k = 0; k < handles.length; k++) {
            int row = bottom ? handles.length - 1 - k : k;
            if (handles[row] < n || !sides[s].plate().rows().get(row).isBlank()) {
                break;
            }
            found.add(bottom ? 0 : found.size(), handles[row]);
        }
        return found;
    }

    /** A new row of theirs is a new row of mine. */
    private void hold(int mine, int theirs) {
        if (mine != theirs) {
            heldFor.put(theirs, mine);
            rowOf[1][mine] = rowOf[1][theirs];
        }
    }

    private String byIds(List<Integer> run) {
        StringBuilder out = new StringBuilder();
        run.forEach(h -> out.append(idOf(h).map(RowId::text).orElse("")).append(' '));
        return out.toString();
    }

    /** The id that a handle brings along; of a row that both have, the earlier plate's or the smaller of theirs. */
    Optional<RowId> idOf(int handle) {
        Optional<RowId> id = handle < n ? base.rows().get(handle).id() : Optional.empty();
        return id.or(() -> IntStream.range(0, 2)
                .filter(s -> rowOf[s][handle] >= 0)
                .mapToObj(s -> sides[s].plate().rows().get(rowOf[s][handle]).id())
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder()));
    }

    /** A row that one side may have taken out or matched otherwise, in rows that the other side changed as well. */
    private void findTwins() {
        for (int s = 0; s < 2; s++) {
            RowPairing pairing = sides[s].edit().pairing();
            for (int i = 0; i < n; i++) {
                if (pairing.isUncertainBefore(i) && touched(1 - s, i) && !sameRows()) {
                    twins.add(i);
                }
            }
        }
    }

    /** Whether a side changed a row of the earlier plate, took it out, or put rows in between it and its like. */
    private boolean touched(int s, int i) {
        int row = sides[s].edit().pairing().after(i);
        if (row < 0 || cells.changed(s, i, row)) {
            return true;
        }
        return newBetweenTwins(s, i - 1, row) || newBetweenTwins(s, i, row + 1) || newAmongLikes(s, i);
    }

    /** Whether a side put a row in among rows that are like row i and as uncertain, not all of them side by side. */
    private boolean newAmongLikes(int s, int i) {
        amongLikes[s] = amongLikes[s] == null ? newAmongLikes(s) : amongLikes[s];
        return amongLikes[s][i];
    }

    /**
     * For each row of the earlier plate whether the side put a row in between the first and the last of its likes. Rows
     * between which one is paired for certain cannot change places.
     */
    private boolean[] newAmongLikes(int s) {
        RowPairing other = sides[1 - s].edit().pairing();
        int[] newUpTo = new int[handleOf[s].length + 1];
        for (int row = 0; row < handleOf[s].length; row++) {
            newUpTo[row + 1] = newUpTo[row] + (handleOf[s][row] >= n ? 1 : 0);
        }
        boolean[] among = new boolean[n];
        int start = 0;
        for (int k = 0; k <= n; k++) {
            boolean certain = k < n && other.after(k) >= 0 && !other.isUncertainBefore(k);
            if (k == n || certain) {
                markNewAmongLikes(s, start, k, newUpTo, among);
                start = k + 1;
            }
        }
        return among;
    }

    private void markNewAmongLikes(int s, int from, int to, int[] newUpTo, boolean[] among) {
        RowPairing other = sides[1 - s].edit().pairing();
        Map<String, int[]> reach = new HashMap<>();
        for (int k = from; k < to; k++) {
            int row = other.isUncertainBefore(k) ? rowOf[s][k] : -1;
            if (row >= 0) {
                int[] ends = reach.computeIfAbsent(base.rows().get(k).cells(), c -> new int[] {row, row});
                ends[0] = Math.min(ends[0], row);
                ends[1] = Math.max(ends[1], row);
            }
        }
        for (int k = from; k < to; k++) {
            int[] ends =
                    other.isUncertainBefore(k) ? reach.get(base.rows().get(k).cells()) : null;
            among[k] = ends != null && newUpTo[ends[1]] > newUpTo[ends[0]];
        }
    }

    /** Whether a side put a row in between row i of the earlier plate and the one below, which are alike. */
    private boolean newBetweenTwins(int s, int i, int belowRow) {
        boolean alike = i >= 0
                && i + 1 < n
                && base.rows().get(i).cells().equals(base.rows().get(i + 1).cells());
        return alike
                && belowRow > 0
                && belowRow < handleOf[s].length
                && (sides[s].edit().pairing().before(belowRow) < 0
                        || sides[s].edit().pairing().before(belowRow - 1) < 0);
    }

    /** Both sides have the very same rows: nothing is to be told apart. */
    private boolean sameRows() {
        return sides[0].plate().rows().equals(sides[1].plate().rows());
    }

    private final class Order implements SequenceJoin.Policy {
        @Override
        public boolean stays(int element) {
            boolean mine = rowOf[0][element] >= 0;
            boolean theirs = rowOf[1][element] >= 0;
            if (mine == theirs || decidedTwice.contains(element)) {
                return mine || decidedTwice.contains(element);
            }
            int other = mine ? 0 : 1;
            if (twins.contains(element)) {
                return true;
            }
            if (cells.changed(other, element, rowOf[other][element])) {
                keptThoughTakenOut.add(element);
                return true;
            }
            return false;
        }

        @Override
        public boolean same(List<Integer> mine, List<Integer> theirs) {
            if (mine.size() != theirs.size()) {
                return false;
            }
            boolean equal = IntStream.range(0, mine.size()).allMatch(k -> sameRow(mine.get(k), theirs.get(k)));
            if (equal) {
                for (int k = 0; k < mine.size(); k++) {
                    hold(mine.get(k), theirs.get(k));
                }
            }
            return equal;
        }

        private boolean sameRow(int a, int b) {
            return a == b || a >= n && b >= n && cells.sameNewRow(rowOf[0][a], rowOf[1][b]);
        }

        @Override
        public List<Integer> both(List<Integer> mine, List<Integer> theirs, int above) {
            List<Integer> first = sortKey(mine).compareTo(sortKey(theirs)) <= 0 ? mine : theirs;
            List<Integer> all = new ArrayList<>(first);
            all.addAll(first == mine ? theirs : mine);
            if (!theirs.isEmpty()) {
                torn.add(new Torn(mine, theirs));
            }
            return all;
        }

        /** The ids, or the cells where there are none, from the top; the cells tell apart what has equal ids. */
        private String sortKey(List<Integer> run) {
            StringBuilder key = new StringBuilder();
            for (int handle : run) {
                idOf(handle).ifPresent(id -> key.append(id.text()).append(' '));
                key.append(cellsOf(handle)).append('\n');
            }
            return key.toString();
        }

        @Override
        public void movedTwice(int element) {
            movedTwice.add(element);
        }
    }

    /** The cells of a new row, or those of an earlier one before anybody changed them. */
    String cellsOf(int handle) {
        for (int s = 0; s < 2 && handle >= n; s++) {
            if (rowOf[s][handle] >= 0) {
                return sides[s].plate().rows().get(rowOf[s][handle]).cells();
            }
        }
        return base.rows().get(handle).cells();
    }
}
