package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Edits of an ordered list, by the identity of its elements.
 *
 * @param changed identity to what it became; empty: taken out
 * @param added gap (0: before the first element of the list as it was) to what was put in there
 */
public record ListChange<T>(Map<String, Optional<T>> changed, TreeMap<Integer, List<T>> added) {
    public ListChange() {
        this(new LinkedHashMap<>(), new TreeMap<>());
    }

    boolean isEmpty() {
        return changed.isEmpty() && added.isEmpty();
    }

    List<T> applied(List<T> before, Function<T, String> identity) {
        List<T> out = new ArrayList<>();
        for (int i = 0; i <= before.size(); i++) {
            out.addAll(added.getOrDefault(i, List.of()));
            if (i < before.size()) {
                T element = before.get(i);
                changed.getOrDefault(identity.apply(element), Optional.of(element))
                        .ifPresent(out::add);
            }
        }
        return out;
    }

    /** Whether something was taken out right beside the gap. */
    boolean openBeside(int gap, List<T> before, Function<T, String> identity) {
        return goneAt(gap - 1, before, identity) || goneAt(gap, before, identity);
    }

    private boolean goneAt(int i, List<T> before, Function<T, String> identity) {
        return i >= 0
                && i < before.size()
                && changed.getOrDefault(identity.apply(before.get(i)), Optional.of(before.get(i)))
                        .isEmpty();
    }
}
