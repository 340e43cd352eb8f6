package platekeep.model.join.edits.change;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** The fields of a plate that are joined each on its own, by the name that a clash gives them. */
public final class Facts {
    private Facts() {}

    /** All fields that are there, as values. */
    public static Map<String, Value> of(Plate plate) {
        Map<String, Value> facts = new LinkedHashMap<>();
        facts.put("title", Value.of(plate.title()));
        plate.number().ifPresent(n -> facts.put("number", Value.of(n)));
        plate.origin().value().entries().forEach((k, v) -> facts.put("origin." + k, v));
        plate.state().ifPresent(s -> facts.put("state", Value.of(s.word())));
        plate.cloth().value().entries().forEach((k, v) -> facts.put("cloth." + k, v));
        plate.repeat().ifPresent(r -> facts.put("repeat", r.value()));
        facts.putAll(plate.unknown().entries());
        return facts;
    }

    /** Puts a field into the draft, or takes it away. */
    static void put(Plate before, Draft draft, Map<String, Optional<Value>> fields) {
        if (fields.isEmpty()) {
            return;
        }
        Map<String, Value> facts = of(before);
        fields.forEach((name, value) -> {
            facts.remove(name);
            value.ifPresent(v -> facts.put(name, v));
        });
        draft.title(text(facts.remove("title")));
        draft.number(Optional.ofNullable(facts.remove("number")).map(Facts::text));
        draft.state(Optional.ofNullable(facts.remove("state")).flatMap(v -> State.of(text(v))));
        draft.repeat(Optional.ofNullable(facts.remove("repeat")).map(Facts::repeat));
        draft.origin(origin(part("origin.", facts)));
        draft.cloth(cloth(part("cloth.", facts)));
        draft.unknown(new Unknown(facts));
    }

    private static Map<String, Value> part(String prefix, Map<String, Value> facts) {
        Map<String, Value> part = new LinkedHashMap<>();
        for (String key : List.copyOf(facts.keySet())) {
            if (key.startsWith(prefix)) {
                part.put(key.substring(prefix.length()), facts.remove(key));
            }
        }
        return part;
    }

    private static Origin origin(Map<String, Value> part) {
        return new Origin(
                Optional.ofNullable(part.remove("kind")).map(Facts::text),
                Optional.ofNullable(part.remove("by")).map(Facts::text),
                Optional.ofNullable(part.remove("place")).map(Facts::text),
                Optional.ofNullable(part.remove("use")).map(Facts::text),
                new Unknown(part));
    }

    private static Cloth cloth(Map<String, Value> part) {
        List<String> holding = new ArrayList<>();
        if (part.remove("holding") instanceof Value.Items items) {
            items.items().forEach(i -> holding.add(text(i)));
        }
        return new Cloth(
                Optional.ofNullable(part.remove("gathering rows"))
                        .map(v -> number(v).intValueExact()),
                Optional.ofNullable(part.remove("spacing mm")).map(Facts::number),
                Optional.ofNullable(part.remove("stacked rows"))
                        .map(v -> number(v).intValueExact()),
                Optional.ofNullable(part.remove("fullness")).map(Facts::number),
                holding,
                new Unknown(part));
    }

    private static Repeat repeat(Value value) {
        Map<String, Value> entries = ((Value.Entries) value).entries();
        return new Repeat(
                number(entries.get("every")).intValueExact(),
                number(entries.get("times")).intValueExact(),
                Unknown.NONE);
    }

    private static String text(Value value) {
        return ((Value.Text) value).string();
    }

    private static BigDecimal number(Value value) {
        return ((Value.Num) value).number();
    }
}
