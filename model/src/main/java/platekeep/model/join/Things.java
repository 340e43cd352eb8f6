package platekeep.model.join;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * Things known by a key, joined one by one: added, taken out, changed. Where both sides changed one differently, or one
 * took out what the other changed, that key is torn.
 *
 * @param <K> what tells two things apart
 * @param <V> what they are
 */
final class Things<K, V> {
    private final Map<K, V> base;
    private final Map<K, V> mine;
    private final Map<K, V> theirs;
    private final Map<K, V> result = new LinkedHashMap<>();
    private final Set<K> torn = new LinkedHashSet<>();

    Things(Map<K, V> base, Map<K, V> mine, Map<K, V> theirs) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
        Set<K> keys = new LinkedHashSet<>(base.keySet());
        keys.addAll(mine.keySet());
        keys.addAll(theirs.keySet());
        keys.forEach(this::join);
    }

    private void join(K key) {
        V b = base.get(key);
        V m = mine.get(key);
        V t = theirs.get(key);
        V joined;
        if (Objects.equals(m, t) || Objects.equals(t, b)) {
            joined = m;
        } else if (Objects.equals(m, b)) {
            joined = t;
        } else {
            torn.add(key);
            joined = m == null ? t : t == null ? m : b;
        }
        if (joined != null) {
            result.put(key, joined);
        }
    }

    /** What stands, by key; for a torn key the earlier thing, or the changed one where the other side took it out. */
    Map<K, V> result() {
        return result;
    }

    Set<K> torn() {
        return torn;
    }

    Optional<V> base(K key) {
        return Optional.ofNullable(base.get(key));
    }

    Optional<V> side(int s, K key) {
        return Optional.ofNullable((s == 0 ? mine : theirs).get(key));
    }

    /** The keys of lists in the order that both sides' changes give them; what both added at one place goes by text. */
    static <K> List<K> inOrder(List<K> base, List<K> mine, List<K> theirs, BiFunction<K, K, Integer> byText) {
        Map<K, Integer> numbers = new LinkedHashMap<>();
        base.forEach(k -> numbers.putIfAbsent(k, numbers.size()));
        int n = numbers.size();
        mine.forEach(k -> numbers.putIfAbsent(k, numbers.size()));
        theirs.forEach(k -> numbers.putIfAbsent(k, numbers.size()));
        List<K> keys = new ArrayList<>(numbers.keySet());
        Set<K> inMine = new LinkedHashSet<>(mine);
        Set<K> inTheirs = new LinkedHashSet<>(theirs);
        SequenceJoin join = new SequenceJoin(n, ints(mine, numbers), ints(theirs, numbers), new SequenceJoin.Policy() {
            @Override
            public boolean stays(int element) {
                return inMine.contains(keys.get(element)) || inTheirs.contains(keys.get(element));
            }

            @Override
            public boolean same(List<Integer> a, List<Integer> b) {
                return a.equals(b);
            }

            @Override
            public List<Integer> both(List<Integer> a, List<Integer> b, int above) {
                List<Integer> all = new ArrayList<>(a);
                all.addAll(b);
                all.sort((x, y) -> byText.apply(keys.get(x), keys.get(y)));
                return all;
            }

            @Override
            public void movedTwice(int element) {
                // the order of a list is not worth a question: the earlier place holds
            }
        });
        return join.result().stream().map(keys::get).toList();
    }

    private static <K> int[] ints(List<K> list, Map<K, Integer> numbers) {
        return list.stream().distinct().mapToInt(numbers::get).toArray();
    }
}
