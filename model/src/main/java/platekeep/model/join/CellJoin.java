package platekeep.model.join;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Motion;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * Joins the cables: each is joined at its source, where it would lie had nobody moved anything, and then put where the
 * moves of both sides bring it.
 */
final class CellJoin {
    private final Grid base;
    private final Labels labels;
    private final Side[] sides;
    private final Layers layers;
    private final Colours colours;
    private final Motion[] motions;
    private final int[] placedBy;
    private final Set<Character> paintedThoughTakenOut = new HashSet<>();
    private final TreeMap<Integer, TreeMap<Integer, TornCell>> torn = new TreeMap<>();
    /** Which side brought a cable to its place in the joined picture, where one alone did; row and index in one number. */
    private final Map<Long, Integer> brought = new HashMap<>();

    private char[][] picture = {};
    private int firstPainted = Integer.MAX_VALUE;
    private int lastPainted = -1;
    private int firstUsed = Integer.MAX_VALUE;
    private int lastUsed = -1;
    private RowJoin rows;

    /** What stands at a cable that both sides changed differently, and what each wants; identities. */
    record TornCell(char base, char mine, char theirs) {
        TornCell with(int side, char value) {
            return side == 0 ? new TornCell(base, value, theirs) : new TornCell(base, mine, value);
        }

        char of(int side) {
            return side == 0 ? mine : theirs;
        }
    }

    /**
     * @param motions where each layer goes in the joined plate
     * @param placedBy for each layer the side that moved it alone, or -1
     */
    CellJoin(Grid base, Labels labels, Side[] sides, Layers layers, Colours colours, Motion[] motions, int[] placedBy) {
        this.base = base;
        this.labels = labels;
        this.sides = sides;
        this.layers = layers;
        this.colours = colours;
        this.motions = motions;
        this.placedBy = placedBy;
    }

    private char before(int layer, int handle, int k) {
        if (handle >= base.height()) {
            return Row.EMPTY;
        }
        return layers.isEmpty() || layers.of(labels.at(handle, k)) == layer ? base.at(handle, k) : Row.EMPTY;
    }

    /** What a side has for a source, as an identity; {@code was} where it says nothing. */
    private char of(int s, int layer, int row, int k, char was) {
        if (row < 0) {
            return was;
        }
        char raw = sides[s].source(layer, row, k);
        return raw == Side.UNSEEN ? was : colours.identity(s, raw, was);
    }

    /** Whether a side changed a cable of a row of the earlier plate, moves and renamed keys aside. */
    boolean changed(int s, int handle, int row) {
        if (layers.isEmpty() && isAsItWas(s, handle, row)) {
            return false;
        }
        for (int layer = 0; layer < layers.count(); layer++) {
            for (int k = 0; k < base.frame().width(); k++) {
                char was = before(layer, handle, k);
                if (of(s, layer, row, k, was) != was) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a new row of mine and a new row of theirs hold the same cables. */
    boolean sameNewRow(int mine, int theirs) {
        for (int layer = 0; layer < layers.count(); layer++) {
            for (int k = 0; k < base.frame().width(); k++) {
                if (of(0, layer, mine, k, Row.EMPTY) != of(1, layer, theirs, k, Row.EMPTY)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Puts the picture together; row order must be known. */
    void join(RowJoin rowJoin) {
        rows = rowJoin;
        List<Integer> order = rows.order();
        int width = base.frame().width();
        picture = new char[order.size()][width];
        for (char[] row : picture) {
            Arrays.fill(row, Row.EMPTY);
        }
        for (int layer = 0; layer < layers.count(); layer++) {
            for (int r = 0; r < order.size(); r++) {
                int handle = order.get(r);
                if (isUntouched(handle)) {
                    copy(handle, r);
                } else {
                    joinRow(layer, r, handle);
                }
            }
        }
    }

    private void joinRow(int layer, int r, int handle) {
        Motion motion = motions[layer];
        int mine = rows.row(0, handle);
        int theirs = rows.row(1, handle);
        for (int k = 0; k < base.frame().width(); k++) {
            char was = before(layer, handle, k);
            char a = of(0, layer, mine, k, was);
            char b = of(1, layer, theirs, k, was);
            if (was != Row.EMPTY || a != Row.EMPTY || b != Row.EMPTY) {
                joinOne(layer, motion.row(r), motion.position(k), new TornCell(was, a, b));
            }
        }
    }

    /** Whether both sides have an earlier row just as it was and nothing moves. Rows with equal cells share an array. */
    private boolean isUntouched(int handle) {
        return layers.isEmpty()
                && motions[0].isNone()
                && handle < base.height()
                && isAsItWas(0, handle, rows.row(0, handle))
                && isAsItWas(1, handle, rows.row(1, handle));
    }

    private boolean isAsItWas(int s, int handle, int row) {
        return row >= 0
                && !sides[s].moves()
                && base.row(handle) == sides[s].grid().row(row)
                && colours.keptLetters(s);
    }

    private void copy(int handle, int r) {
        char[] row = base.row(handle);
        System.arraycopy(row, 0, picture[r], 0, row.length);
        int first = 0;
        while (first < row.length && row[first] == Row.EMPTY) {
            first++;
        }
        if (first < row.length) {
            int last = row.length - 1;
            while (row[last] == Row.EMPTY) {
                last--;
            }
            firstUsed = Math.min(firstUsed, first);
            lastUsed = Math.max(lastUsed, last);
        }
    }

    private void joinOne(int layer, int row, int k, TornCell cell) {
        if (row < 0 || row >= picture.length || k < 0 || k >= base.frame().width()) {
            return;
        }
        noteTakenOut(cell);
        char joined = Cells.join(cell.base(), cell.mine(), cell.theirs());
        if (joined == Cells.TORN) {
            tear(row, k, cell);
            show(row, k, cell.base());
            return;
        }
        if (joined != Row.EMPTY) {
            boolean painted = joined != cell.base() || !motions[layer].isNone();
            place(layer, row, k, joined, cell);
            if (painted) {
                firstPainted = Math.min(firstPainted, k);
                lastPainted = Math.max(lastPainted, k);
            }
        }
    }

    /** A colour that one side took out is newly painted with by the other. */
    private void noteTakenOut(TornCell cell) {
        for (int s = 0; s < 2; s++) {
            if (cell.of(s) != cell.base() && colours.tookOut(1 - s, cell.of(s))) {
                paintedThoughTakenOut.add(cell.of(s));
            }
        }
    }

    private void tear(int row, int k, TornCell cell) {
        torn.computeIfAbsent(row, r -> new TreeMap<>()).put(k, cell);
    }

    private TornCell tornAt(int row, int k) {
        Map<Integer, TornCell> cells = torn.get(row);
        return cells == null ? null : cells.get(k);
    }

    private void place(int layer, int row, int k, char value, TornCell cell) {
        if (value == Row.EMPTY) {
            return;
        }
        TornCell there = tornAt(row, k);
        char standing = picture[row][k];
        int by = movedBy(layer, cell);
        if (there != null && standing != value && by >= 0 && there.of(by) == Row.EMPTY && there.base() != Row.EMPTY) {
            torn.get(row).put(k, there.with(by, value));
            return;
        }
        if (standing != Row.EMPTY && standing != value) {
            tear(row, k, meeting(broughtBy(row, k), standing, by, value));
            picture[row][k] = Row.EMPTY;
            return;
        }
        if (by >= 0 && !layers.isEmpty()) {
            brought.put((long) row << 32 | k, by);
        }
        show(row, k, value);
    }

    /** Two cables that come to lie on one place; where not just one side brought just one of them, in an order that is no side's. */
    private TornCell meeting(int standingBy, char standing, int valueBy, char value) {
        if (standingBy != valueBy) {
            boolean mine = valueBy == 0 || valueBy < 0 && standingBy == 1;
            return new TornCell(Row.EMPTY, mine ? value : standing, mine ? standing : value);
        }
        boolean inOrder = colours.wish(standing) <= colours.wish(value);
        return new TornCell(Row.EMPTY, inOrder ? standing : value, inOrder ? value : standing);
    }

    private int broughtBy(int row, int k) {
        return brought.getOrDefault((long) row << 32 | k, -1);
    }

    private void show(int row, int k, char value) {
        if (value == Row.EMPTY) {
            return;
        }
        picture[row][k] = value;
        firstUsed = Math.min(firstUsed, k);
        lastUsed = Math.max(lastUsed, k);
    }

    /** Who brought a cable to its place: the side that moved its layer, else the one that painted it; -1 for both or neither. */
    private int movedBy(int layer, TornCell cell) {
        if (placedBy[layer] >= 0) {
            return placedBy[layer];
        }
        boolean mine = cell.mine() != cell.base();
        return mine == (cell.theirs() != cell.base()) ? -1 : mine ? 0 : 1;
    }

    /** The joined picture in identities, top row first, over the whole frame. */
    char[][] picture() {
        return picture;
    }

    /** Torn cables by row of the joined plate, then by index. */
    TreeMap<Integer, TreeMap<Integer, TornCell>> torn() {
        return torn;
    }

    Set<Character> paintedThoughTakenOut() {
        return paintedThoughTakenOut;
    }

    /** The cells of an earlier row, or of one as a side has it ({@code s} 0 or 1), at their places in the joined plate. */
    char[] rowAs(int s, int handle) {
        char[] out = new char[base.frame().width()];
        Arrays.fill(out, Row.EMPTY);
        for (int layer = 0; layer < layers.count(); layer++) {
            for (int k = 0; k < out.length; k++) {
                char was = before(layer, handle, k);
                char value = s < 0 ? was : of(s, layer, rows.row(s, handle), k, was);
                int to = motions[layer].position(k);
                if (value != Row.EMPTY && to >= 0 && to < out.length) {
                    out[to] = value;
                }
            }
        }
        return out;
    }

    /** Whether somebody painted, put in or moved a cable at this index or farther left. */
    boolean paintedUpTo(int index) {
        return firstPainted <= index;
    }

    /** Whether somebody painted, put in or moved a cable at this index or farther right. */
    boolean paintedFrom(int index) {
        return lastPainted >= index;
    }

    boolean usedUpTo(int index) {
        return firstUsed <= index;
    }

    boolean usedFrom(int index) {
        return lastUsed >= index;
    }

    int firstPainted() {
        return firstPainted;
    }

    int lastPainted() {
        return lastPainted;
    }
}
