package platekeep.client.git.partner;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import platekeep.model.plate.CodePoints;

/** The rule that all joins begin with: where only one side changed, or both did the same, there is nothing to decide. */
final class Settle {
    private Settle() {}

    /**
     * What stands where it is clear; empty when both changed in two ways. The inner value is empty where there is
     * nothing, or no longer.
     */
    static <T> Optional<Optional<T>> settled(Optional<T> base, Optional<T> mine, Optional<T> theirs) {
        if (mine.equals(theirs) || theirs.equals(base)) {
            return Optional.of(mine);
        }
        return mine.equals(base) ? Optional.of(theirs) : Optional.empty();
    }

    /** Of two texts: what is clear, else the one that sorts first. */
    static String one(Optional<String> base, String mine, String theirs) {
        return settled(base, Optional.of(mine), Optional.of(theirs))
                .flatMap(clear -> clear)
                .orElse(CodePoints.ORDER.compare(mine, theirs) <= 0 ? mine : theirs);
    }

    /** What the sides have, those that have something, by text. */
    static <T> List<T> sorted(Optional<T> mine, Optional<T> theirs, Function<T, String> text) {
        return Stream.of(mine, theirs)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(text, CodePoints.ORDER))
                .toList();
    }

    /** Joins two edits of a map, each key alone; where both changed one key in two ways, what sorts first stands. */
    static <T> Map<String, T> maps(
            Map<String, T> base, Map<String, T> mine, Map<String, T> theirs, Function<T, String> text) {
        Map<String, T> out = new TreeMap<>();
        TreeSet<String> keys = new TreeSet<>(mine.keySet());
        keys.addAll(theirs.keySet());
        for (String key : keys) {
            Optional<T> a = Optional.ofNullable(mine.get(key));
            Optional<T> b = Optional.ofNullable(theirs.get(key));
            settled(Optional.ofNullable(base.get(key)), a, b)
                    .orElseGet(() -> Optional.of(sorted(a, b, text).get(0)))
                    .ifPresent(value -> out.put(key, value));
        }
        return out;
    }
}
