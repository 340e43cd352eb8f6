package platekeep.model.join;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import platekeep.model.plate.CodePoints;

/** Sets and ordered lists joined: what one side added or took out holds. */
public final class ListJoin {

    private ListJoin() {}

    /** A set: what is in the result was there and nobody took it out, or somebody added it. Sorted by code point. */
    public static List<String> set(List<String> base, List<String> mine, List<String> theirs) {
        TreeSet<String> out = new TreeSet<>(CodePoints.ORDER);
        out.addAll(mine);
        out.addAll(theirs);
        out.removeIf(t -> base.contains(t) && !(mine.contains(t) && theirs.contains(t)));
        return List.copyOf(out);
    }

    /** An ordered list of texts; a text that stands several times counts by its occurrences from the top. */
    public static List<String> texts(List<String> base, List<String> mine, List<String> theirs) {
        Map<Item, String> b = items(base, Function.identity());
        Map<Item, String> m = items(mine, Function.identity());
        Map<Item, String> t = items(theirs, Function.identity());
        Things<Item, String> things = new Things<>(b, m, t);
        return order(b, m, t, things, Function.identity()).stream()
                .map(Item::key)
                .toList();
    }

    /** A key in a list, told apart from equal ones by its number among them. */
    record Item(String key, int occurrence) {}

    static <V> Map<Item, V> items(List<V> list, Function<V, String> key) {
        Map<Item, V> out = new LinkedHashMap<>();
        Map<String, Integer> seen = new HashMap<>();
        for (V value : list) {
            String k = key.apply(value);
            out.put(new Item(k, seen.merge(k, 1, Integer::sum)), value);
        }
        return out;
    }

    /** @param text what two elements that both sides put in at one place are ordered by */
    static <V> List<Item> order(
            Map<Item, V> base,
            Map<Item, V> mine,
            Map<Item, V> theirs,
            Things<Item, V> things,
            Function<V, String> text) {
        Function<Item, String> textOf = item -> text.apply(mine.containsKey(item) ? mine.get(item) : theirs.get(item));
        return Things.inOrder(
                        List.copyOf(base.keySet()),
                        List.copyOf(mine.keySet()),
                        List.copyOf(theirs.keySet()),
                        (x, y) -> CodePoints.ORDER.compare(textOf.apply(x), textOf.apply(y)))
                .stream()
                .filter(things.result()::containsKey)
                .toList();
    }
}
