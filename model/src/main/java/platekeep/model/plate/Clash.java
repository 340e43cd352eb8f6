package platekeep.model.plate;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What a join could not settle, kept in the plate as data until somebody decides.
 *
 * @param what the kind of thing that clashes
 * @param place where, by the keys that {@link What#placeKeys()} lists, in that order
 * @param base what stood before; {@link Value#NOTHING} where there was nothing
 * @param sides what the sides want instead, sorted
 */
public record Clash(What what, Value.Entries place, Value base, List<Side> sides, Unknown unknown) {

    /** The kinds of clash, in the order in which clashes are listed. */
    public enum What {
        CABLES("row", "from", "to"),
        ROW("row"),
        ROWS("after"),
        TWINS("row"),
        ORDER("row"),
        PLEATS("end"),
        FIELD("field"),
        COLOUR("key"),
        START("row", "pleat"),
        LINE("on", "to row", "from"),
        MARK("stitch", "row", "pleat"),
        NOTION("kind", "size"),
        REMARK("id"),
        FIGURE("row", "from", "to");

        private final List<String> placeKeys;

        What(String... placeKeys) {
            this.placeKeys = List.of(placeKeys);
        }

        /** The keys that say where, in the order in which they are written. */
        public List<String> placeKeys() {
            return placeKeys;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<What> of(String word) {
            return List.of(values()).stream().filter(w -> w.word().equals(word)).findFirst();
        }
    }

    /**
     * One side's answer.
     *
     * @param value what it wants there; {@link Value#NOTHING} where it took it away
     * @param by the hand, where it is known
     */
    public record Side(Value value, Optional<String> by, Unknown unknown) {

        /** Sides stand by value (nothing first), then by hand. */
        public static final Comparator<Side> ORDER =
                Comparator.comparing(Side::value, Value.ORDER).thenComparing(s -> s.by().orElse(""), CodePoints.ORDER);

        public Side {
            by = CodePoints.said(by);
        }

        public Side(Value value, Optional<String> by) {
            this(value, by, Unknown.NONE);
        }

        public Value.Entries entries() {
            return new Value.Builder()
                    .put("value", value)
                    .putIf("by", by, Value::of)
                    .putAll(unknown)
                    .build();
        }
    }

    public Clash {
        place = inOrder(what, place);
        sides = sides.stream().sorted(Side.ORDER).distinct().toList();
    }

    public Clash(What what, Value.Entries place, Value base, List<Side> sides) {
        this(what, place, base, sides, Unknown.NONE);
    }

    private static Value.Entries inOrder(What what, Value.Entries place) {
        Map<String, Value> sorted = new LinkedHashMap<>();
        for (String key : what.placeKeys()) {
            Optional.ofNullable(place.entries().get(key)).ifPresent(value -> sorted.put(key, value));
        }
        place.entries().forEach(sorted::putIfAbsent);
        return new Value.Entries(sorted);
    }

    /** The place's value under a key, if it has one. */
    public Optional<Value> at(String key) {
        return Optional.ofNullable(place.entries().get(key));
    }

    /** The place's text under a key; empty when it is absent, null or a number. */
    public Optional<String> textAt(String key) {
        return at(key).filter(Value.Text.class::isInstance).map(v -> ((Value.Text) v).string());
    }

    /** The place's whole number under a key; empty when it is absent or no number. */
    public Optional<Integer> numberAt(String key) {
        return at(key).filter(Value.Num.class::isInstance)
                .map(v -> ((Value.Num) v).number().intValue());
    }

    /** The same clash at another place. */
    public Clash withPlace(Value.Entries other) {
        return new Clash(what, other, base, sides, unknown);
    }

    /** The same clash with what stood before, and each answer, changed in one way. */
    public Clash withValues(UnaryOperator<Value> change) {
        List<Side> changed = sides.stream()
                .map(side -> new Side(change.apply(side.value()), side.by(), side.unknown()))
                .toList();
        return new Clash(what, place, change.apply(base), changed, unknown);
    }

    /** The clash as it stands in the text. */
    public Value.Entries value() {
        Map<String, Value> out = new LinkedHashMap<>();
        out.put("what", Value.of(what.word()));
        out.putAll(place.entries());
        out.put("base", base);
        out.put(
                "sides",
                new Value.Items(sides.stream().map(s -> (Value) s.entries()).toList()));
        out.putAll(unknown.entries());
        return new Value.Entries(out);
    }
}
