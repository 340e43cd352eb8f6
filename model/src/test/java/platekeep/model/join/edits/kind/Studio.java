package platekeep.model.join.edits.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import platekeep.model.join.edits.change.Change;
import platekeep.model.join.edits.change.ColoursTogether;
import platekeep.model.join.edits.change.Fresh;
import platekeep.model.join.edits.change.Grid;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.join.edits.scene.PictureMaker;
import platekeep.model.join.edits.scene.Words;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** One designer at work: the plate before her, what she has done so far, and the spot that she looks at. */
public final class Studio {
    public final Random chance;
    public final Plate base;
    public final Grid grid;
    public final List<RowId> order;
    public final PictureMaker maker;
    public final Change change = new Change();
    /** The row (top first) and position to work at. */
    public final int row;

    public final int position;
    private char nextInk;

    /** @param firstInk a character that is no key; new colours get it and the ones after it */
    public Studio(Random chance, Plate base, PictureMaker maker, int row, int position, char firstInk) {
        this.chance = chance;
        this.base = base;
        this.grid = Grid.of(base);
        this.order = grid.order();
        this.maker = maker;
        this.row = row;
        this.position = position;
        this.nextInk = firstInk;
    }

    public RowId rowId() {
        return order.get(row);
    }

    int upTo(int bound) {
        return chance.nextInt(bound);
    }

    <T> T any(List<T> list) {
        if (list.isEmpty()) {
            throw new Undetermined("nothing to work on");
        }
        return Words.any(list, chance);
    }

    List<Character> keys() {
        return List.copyOf(base.palette().entries().keySet());
    }

    int from() {
        return base.from();
    }

    int to() {
        return base.from() + base.positions();
    }

    boolean inChart(int p) {
        return p >= from() && p < to();
    }

    /** A colour to draw with: one of the palette, other than {@code not}. */
    char inkBut(char not) {
        return any(keys().stream()
                .filter(k -> k != not && !change.entries.containsKey(k))
                .toList());
    }

    /** Draws a cable, or takes it out; nothing is noted where it changes nothing. */
    void paint(RowId id, int p, char ink) {
        if (!inChart(p) || !grid.has(id)) {
            return;
        }
        for (int i = 0; i < base.clashes().size(); i++) {
            Clash c = base.clashes().get(i);
            boolean here = c.textAt("row").equals(Optional.of(id.text()))
                    && p >= c.numberAt("from").orElse(p) - 1
                    && p <= c.numberAt("to").orElse(p) + 1;
            if (here && !change.settled.contains(i)) {
                throw new Undetermined("painted over an open clash");
            }
        }
        if (grid.at(id, p) == ink) {
            TreeMap<Integer, Character> strokes = change.paint.getOrDefault(id, new TreeMap<>());
            strokes.remove(p);
            if (strokes.isEmpty()) {
                change.paint.remove(id);
            }
        } else {
            change.paint(id, p, ink);
        }
    }

    /** How many cables have a colour. */
    long uses(char ink) {
        return order.stream()
                .flatMap(r -> grid.row(r).values().stream())
                .filter(c -> c == ink)
                .count();
    }

    /** Keys by which at least so many cables go, and at most so many. */
    List<Character> used(long least, long most) {
        return keys().stream()
                .filter(k -> uses(k) >= least && uses(k) <= most)
                .filter(k -> !change.entries.containsKey(k) && !change.keys.containsKey(k))
                .filter(k -> base.marks().stream().noneMatch(m -> m.colour() == k) || least > 0)
                .filter(k -> base.lines().stream().noneMatch(m -> m.colour() == k) || least > 0)
                .filter(k -> !ColoursTogether.named(base).contains(k) || least > 0)
                .toList();
    }

    /** A key that is not in the palette, often the first such one. */
    char freeKey() {
        List<Character> free = new ArrayList<>();
        for (char c : platekeep.model.plate.Palette.KEYS.toCharArray()) {
            boolean taken = base.palette().has(c)
                    || change.keys.containsValue(c)
                    || change.fresh.values().stream().anyMatch(f -> f.key() == c);
            if (!taken) {
                free.add(c);
            }
        }
        return chance.nextInt(3) > 0 ? free.get(0) : any(free);
    }

    /** A new colour under a free key. */
    char newInk() {
        char ink = nextInk++;
        change.fresh.put(ink, new Fresh(freeKey(), Words.colour(chance)));
        return ink;
    }

    /** Rows from the spot on that are still there. */
    List<RowId> rowsFromHere(int count) {
        return order.subList(Math.min(row, order.size() - 1), Math.min(order.size(), row + count));
    }

    boolean blank(RowId id) {
        return grid.row(id).isEmpty();
    }

    static TreeMap<Integer, Character> copy(Map<Integer, Character> cells) {
        return new TreeMap<>(cells);
    }

    static boolean empty(char c) {
        return c == Row.EMPTY;
    }
}
