package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;

/**
 * What one designer did, in terms of the plate before: rows by identity, gaps between the rows as they were, positions
 * before any move, colours by <em>ink</em>. The ink of a colour that was there is its old key; a new colour's ink is a
 * character that is no key, so two designers' new colours never meet by accident. Mutable; the order in which edits are
 * noted does not count.
 */
public final class Change {
    /** Row to position to ink, {@code '.'} where she took the cable out. */
    public final Map<RowId, TreeMap<Integer, Character>> paint = new LinkedHashMap<>();
    /** Rows taken out. */
    public final Set<RowId> gone = new LinkedHashSet<>();
    /** Gap (0: above the top row) to the rows put in there, top first. */
    public final TreeMap<Integer, List<NewRow>> added = new TreeMap<>();
    /** Row to the gap that it was moved to. */
    public final Map<RowId, Integer> moved = new LinkedHashMap<>();
    /** The new ends of the chart, where they changed. */
    public Optional<Integer> from = Optional.empty();

    public Optional<Integer> to = Optional.empty();
    /** Ink to the changed entry; empty: taken out of the palette. */
    public final Map<Character, Optional<Colour>> entries = new LinkedHashMap<>();
    /** Ink to new colour. */
    public final Map<Character, Fresh> fresh = new LinkedHashMap<>();
    /** Ink to its new key, where keys were renamed. */
    public final Map<Character, Character> keys = new LinkedHashMap<>();

    public Motion motion = Motion.NONE;
    /** Rows that the picture as a whole went up, by rows taken out at one end and put in at the other. */
    public int lifted;

    public final List<FigureMove> figures = new ArrayList<>();
    /** Index of a start of the plate before to what it became; empty: gone. */
    public final Map<Integer, Optional<Start>> starts = new LinkedHashMap<>();

    public final List<Start> newStarts = new ArrayList<>();
    /** Name of a field ({@code title}, {@code origin.use}) to its new value; empty: taken away. */
    public final Map<String, Optional<Value>> fields = new LinkedHashMap<>();
    /** {@code themes}, {@code for} or {@code ages} to word to whether it was put in (else: taken out). */
    public final Map<String, Map<String, Boolean>> sets = new LinkedHashMap<>();

    public ListChange<String> notes = new ListChange<>();
    public ListChange<String> designers = new ListChange<>();
    public ListChange<Line> lines = new ListChange<>();
    public ListChange<Notion> notions = new ListChange<>();
    /** Identity ({@link Identities#of(Mark)}) to new, changed or (empty) removed mark. */
    public final Map<String, Optional<Mark>> marks = new LinkedHashMap<>();

    public final Map<String, Optional<Remark>> remarks = new LinkedHashMap<>();
    /** Indexes of open clashes of the plate before that she settled. */
    public final Set<Integer> settled = new HashSet<>();

    public void paint(RowId row, int position, char ink) {
        paint.computeIfAbsent(row, r -> new TreeMap<>()).put(position, ink);
    }

    public void set(String name, String word, boolean in) {
        sets.computeIfAbsent(name, n -> new LinkedHashMap<>()).put(word, in);
    }

    /** Whether a whole picture or a figure went somewhere else. */
    public boolean moves() {
        return !motion.equals(Motion.NONE) || !figures.isEmpty();
    }

    /** Whether rows came, went or changed places. */
    public boolean touchesRows() {
        return !gone.isEmpty() || !added.isEmpty() || !moved.isEmpty();
    }
}
