package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** Two designers' changes of one plate put together by the contract's rules. */
public final class Together {
    final Plate base;
    final Change mine;
    final Change theirs;
    final Change joined = new Change();
    /** Clashes, told once it is known where everything ends up. */
    final List<Function<Finished, Clash>> clashes = new ArrayList<>();

    private Together(Plate base, Change mine, Change theirs) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
    }

    /** The right joined plate. */
    public static Plate of(Plate base, Change mine, Change theirs) {
        Together both = new Together(base, mine, theirs);
        ColoursTogether colours = new ColoursTogether(both);
        colours.keys();
        new ShapesTogether(both).join();
        new RowsTogether(both).join();
        new FactsTogether(both).join();
        new StartsTogether(both).join();
        colours.entries();
        Finished finished = new Finished(base, both.joined);
        List<Clash> told = both.clashes.stream().map(c -> c.apply(finished)).toList();
        colours.keepWhatIsNamed(finished, told);
        return Side.joined(new Finished(base, both.joined).plate(told));
    }

    /**
     * Both sides' changes by key: what one changed holds; what both changed alike holds; the rest goes to {@code clash},
     * which gets the key and both values and gives what stands (empty: as it was).
     */
    static <K, V> void each(
            Map<K, Optional<V>> mine, Map<K, Optional<V>> theirs, Map<K, Optional<V>> joined, Differing<K, V> clash) {
        mine.forEach((key, m) -> {
            Optional<V> t = theirs.get(key);
            if (t == null || t.equals(m)) {
                joined.put(key, m);
            } else {
                clash.stands(key, m, t).ifPresent(v -> joined.put(key, v));
            }
        });
        theirs.forEach((key, t) -> {
            if (!mine.containsKey(key)) {
                joined.put(key, t);
            }
        });
    }

    /** What stands where both changed one thing in two ways; empty: as it was before. */
    interface Differing<K, V> {
        Optional<Optional<V>> stands(K key, Optional<V> mine, Optional<V> theirs);
    }

    /** Taken out here and changed there: the changed one stands; changed in two ways: what was. */
    static <V> Optional<Optional<V>> changedStands(Optional<V> mine, Optional<V> theirs) {
        if (mine.isEmpty()) {
            return Optional.of(theirs);
        }
        return theirs.isEmpty() ? Optional.of(mine) : Optional.empty();
    }

    static Clash clash(Clash.What what, Value.Entries place, Value base, Value mine, Value theirs) {
        return new Clash(
                what,
                place,
                base,
                List.of(new Clash.Side(mine, Optional.empty()), new Clash.Side(theirs, Optional.empty())));
    }

    /** One of two, by which side has it. */
    <T> T sideOf(Change side, T ofMine, T ofTheirs) {
        return side == mine ? ofMine : ofTheirs;
    }

    /** Does it for both sides, each with the other beside it. */
    void both(BiFunction<Change, Change, Void> todo) {
        todo.apply(mine, theirs);
        todo.apply(theirs, mine);
    }
}
