package platekeep.model.find;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;
import platekeep.model.colour.Lab;
import platekeep.model.find.typed.Period;

/** Which plates have which value of each group. Unchangeable but for what it remembers of its own work. */
final class Facets {
    private final List<Summary> summaries;
    private final Map<Group, Map<String, Bits>> values;
    private final ColourBins bins;
    private final Map<Group, List<Value>> inOrder = new EnumMap<>(Group.class);
    private final Map<String, Bits> computed = new HashMap<>();

    /** A value with the plates that have it. */
    record Value(String text, Bits plates, int count) {}

    private Facets(List<Summary> summaries, Map<Group, Map<String, Bits>> values, ColourBins bins) {
        this.summaries = summaries;
        this.values = values;
        this.bins = bins;
        values.forEach((group, all) ->
                inOrder.put(group, sorted(group == Group.COLOUR ? bins.byHue() : group.order(), all)));
    }

    /** Of all summaries, the n-th under the number n. */
    static Facets of(List<Summary> summaries) {
        Map<Integer, Integer> used = new HashMap<>();
        summaries.forEach(summary ->
                summary.colours().stream().distinct().forEach(colour -> used.merge(colour, 1, Integer::sum)));
        Facets none = new Facets(List.of(), new EnumMap<>(Group.class), ColourBins.of(used));
        Map<Integer, Summary> come = new HashMap<>();
        for (int i = 0; i < summaries.size(); i++) {
            come.put(i, summaries.get(i));
        }
        return none.with(summaries, come, Map.of());
    }

    /**
     * The same where some summaries changed.
     *
     * @param newSummaries all of them as they are now
     * @param come those that are new or changed, by number
     * @param gone those that are no more or were otherwise, by number, as they were
     */
    Facets with(List<Summary> newSummaries, Map<Integer, Summary> come, Map<Integer, Summary> gone) {
        Map<Group, Map<String, Bits>> changed = new EnumMap<>(Group.class);
        Set<Bits> own = Collections.newSetFromMap(new IdentityHashMap<>());
        ColourBins newBins = bins.with(come.values().stream()
                .flatMap(summary -> summary.colours().stream())
                .toList());
        int size = newSummaries.size();
        for (Group group : Group.values()) {
            Map<String, Bits> all = new HashMap<>(values.getOrDefault(group, Map.of()));
            gone.forEach((number, summary) -> {
                for (String value : values(group, summary, bins)) {
                    own(all, value, own, size).remove(number);
                }
            });
            come.forEach((number, summary) -> {
                for (String value : values(group, summary, newBins)) {
                    own(all, value, own, size).add(number);
                }
            });
            changed.put(group, all);
        }
        if (newBins.size() != bins.size()) {
            changed.put(Group.COLOUR, colours(newSummaries, newBins));
        }
        changed.values().forEach(all -> all.values().removeIf(plates -> own.contains(plates) && plates.count() == 0));
        return new Facets(newSummaries, changed, newBins);
    }

    private static Collection<String> values(Group group, Summary summary, ColourBins bins) {
        return group == Group.COLOUR ? bins.near(summary) : group.values(summary);
    }

    private static Bits own(Map<String, Bits> all, String value, Set<Bits> own, int size) {
        Bits bits = all.get(value);
        if (bits == null || !own.contains(bits)) {
            bits = bits == null ? new Bits(size) : bits.copy();
            own.add(bits);
            all.put(value, bits);
        }
        return bits;
    }

    /** A new colour may stand for plates that were there before. */
    private static Map<String, Bits> colours(List<Summary> summaries, ColourBins bins) {
        Map<String, Bits> all = new HashMap<>();
        for (int i = 0; i < summaries.size(); i++) {
            for (String value : bins.near(summaries.get(i))) {
                all.computeIfAbsent(value, v -> new Bits(summaries.size())).add(i);
            }
        }
        return all;
    }

    private static List<Value> sorted(Comparator<String> order, Map<String, Bits> all) {
        List<Value> sorted = new ArrayList<>();
        all.forEach((text, plates) -> sorted.add(new Value(text, plates, plates.count())));
        sorted.sort(Comparator.comparing(Value::text, order)
                .thenComparing(Comparator.comparingInt(Value::count).reversed())
                .thenComparing(Value::text));
        return sorted;
    }

    /** All values of a group that a plate has, in their lasting order. */
    List<Value> values(Group group) {
        return inOrder.get(group);
    }

    /** The plates that have a value; for a colour or a range of sizes also one that is not among {@link #values}. */
    Bits plates(Group group, String value) {
        Bits there = values.get(group).get(value);
        return there == null ? computed(group, value) : there;
    }

    /** The plates with a version made then. */
    Bits made(Period period) {
        return where(i -> period.holdsOne(summaries.get(i).told().days()));
    }

    private synchronized Bits computed(Group group, String value) {
        return computed.computeIfAbsent(group + value, key -> switch (group) {
            case PLEATS -> inRange(value, Summary::pleats);
            case ROWS -> inRange(value, Summary::rows);
            case COLOUR -> like(value);
            default -> new Bits(0);
        });
    }

    private Bits inRange(String text, ToIntFunction<Summary> size) {
        return Range.of(text)
                .map(range -> where(i -> {
                    int wide = size.applyAsInt(summaries.get(i));
                    return wide > 0 && range.holds(wide);
                }))
                .orElse(new Bits(0));
    }

    private Bits like(String text) {
        if (!text.matches("#[0-9A-F]{6}")) {
            return new Bits(0);
        }
        Lab wanted = Lab.of(ColourBins.rgb(text));
        Map<Integer, Boolean> known = new HashMap<>();
        return where(i -> summaries.get(i).colours().stream()
                .anyMatch(colour -> known.computeIfAbsent(colour, c -> ColourBins.alike(Lab.of(c), wanted))));
    }

    private Bits where(IntPredicate has) {
        Bits bits = new Bits(summaries.size());
        for (int i = 0; i < summaries.size(); i++) {
            if (has.test(i)) {
                bits.add(i);
            }
        }
        return bits;
    }
}
