package platekeep.client.git.partner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.model.plate.CodePoints;

/**
 * Joins two edits of an ordered list of texts: what one side added, took out or moved holds. Added by both at one place:
 * by text. The same whichever side is which, because the two are put in one order first.
 *
 * <p>Idea: what neither side moved is the frame; everything else stands behind the piece of the frame that it stands
 * behind in the list of the side that put it there. Cost: items times their logarithm.
 */
final class ListJoin {
    /** An item; equal texts in one list are told apart by their count. */
    private record Item(String text, int count) {}

    private final List<Item> base;
    private final List<Item> first;
    private final List<Item> second;
    private final Set<Item> kept;

    private ListJoin(List<String> base, List<String> one, List<String> other) {
        boolean swapped = CodePoints.ORDER.compare(String.join("\n", one), String.join("\n", other)) > 0;
        this.base = items(base);
        this.first = items(swapped ? other : one);
        this.second = items(swapped ? one : other);
        this.kept = new HashSet<>(this.base);
        kept.retainAll(first);
        kept.retainAll(second);
    }

    static List<String> join(List<String> base, List<String> one, List<String> other) {
        if (one.equals(base) || one.equals(other)) {
            return other;
        }
        return other.equals(base) ? one : new ListJoin(base, one, other).joined();
    }

    /** Joins two edits of a set, in the order of the texts. */
    static List<String> joinSet(Collection<String> base, Collection<String> one, Collection<String> other) {
        Set<String> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return all.stream()
                .filter(text -> base.contains(text) ? one.contains(text) && other.contains(text) : true)
                .sorted(CodePoints.ORDER)
                .toList();
    }

    private static List<Item> items(List<String> texts) {
        Map<String, Integer> counts = new HashMap<>();
        return texts.stream()
                .map(text -> new Item(text, counts.merge(text, 1, Integer::sum)))
                .toList();
    }

    private List<String> joined() {
        Set<Item> frame = new LinkedHashSet<>(unmoved(first));
        frame.retainAll(unmoved(second));
        Set<Item> placed = new HashSet<>(frame);
        Map<Item, List<Item>> mine = behind(first, frame, unmoved(first), placed);
        Map<Item, List<Item>> theirs = behind(second, frame, unmoved(second), placed);
        List<Item> out = new ArrayList<>(runs(mine, theirs, START));
        for (Item piece : frame) {
            out.add(piece);
            out.addAll(runs(mine, theirs, piece));
        }
        return out.stream().map(Item::text).collect(Collectors.toList());
    }

    private static final Item START = new Item("", 0);

    private static List<Item> runs(Map<Item, List<Item>> mine, Map<Item, List<Item>> theirs, Item piece) {
        List<Item> a = mine.getOrDefault(piece, List.of());
        List<Item> b = theirs.getOrDefault(piece, List.of());
        boolean swap = !a.isEmpty()
                && !b.isEmpty()
                && CodePoints.ORDER.compare(b.get(0).text(), a.get(0).text()) < 0;
        List<Item> out = new ArrayList<>(swap ? b : a);
        out.addAll(swap ? a : b);
        return out;
    }

    /** What a side added or moved, by the piece of the frame before it; what has a place already is left out. */
    private Map<Item, List<Item>> behind(List<Item> side, Set<Item> frame, Set<Item> unmoved, Set<Item> placed) {
        Set<Item> known = new HashSet<>(base);
        Map<Item, List<Item>> out = new LinkedHashMap<>();
        Item piece = START;
        for (Item item : side) {
            boolean added = !known.contains(item);
            boolean moved = kept.contains(item) && !unmoved.contains(item);
            if (frame.contains(item)) {
                piece = item;
            } else if ((added || moved) && placed.add(item)) {
                out.computeIfAbsent(piece, p -> new ArrayList<>()).add(item);
            }
        }
        return out;
    }

    /** The kept items that stand in a side in the order of the base: a longest such selection, in that order. */
    private Set<Item> unmoved(List<Item> side) {
        Map<Item, Integer> place = new HashMap<>();
        base.stream().filter(kept::contains).forEach(item -> place.put(item, place.size()));
        List<Item> items = side.stream().filter(kept::contains).toList();
        int[] last = new int[items.size()];
        int[] before = new int[items.size()];
        int length = 0;
        for (int i = 0; i < items.size(); i++) {
            int at = place.get(items.get(i));
            int low = 0;
            int high = length;
            while (low < high) {
                int middle = (low + high) / 2;
                if (place.get(items.get(last[middle])) < at) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            before[i] = low == 0 ? -1 : last[low - 1];
            last[low] = i;
            length = Math.max(length, low + 1);
        }
        Item[] chosen = new Item[length];
        for (int i = length == 0 ? -1 : last[length - 1], k = length - 1; i >= 0; i = before[i], k--) {
            chosen[k] = items.get(i);
        }
        return new LinkedHashSet<>(Arrays.asList(chosen));
    }
}
