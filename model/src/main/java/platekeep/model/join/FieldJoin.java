package platekeep.model.join;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Draft;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Joins the fields of a plate, each alone; where both sides changed one in different ways, the earlier value stands. */
final class FieldJoin {
    private final Plate base;
    private final Plate mine;
    private final Plate theirs;
    private final ClashList clashes;

    FieldJoin(Plate base, Plate mine, Plate theirs, ClashList clashes) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
        this.clashes = clashes;
    }

    void into(Draft out) {
        out.title(title());
        out.number(field("number", Plate::number, Value::of));
        out.origin(origin());
        out.fromPlate(field("from plate", Plate::fromPlate, FromPlate::value));
        out.state(field("state", Plate::state, s -> Value.of(s.word())));
        out.cloth(cloth());
        out.repeat(field("repeat", Plate::repeat, Repeat::value));
        out.unknown(unknown("", Plate::unknown));
    }

    /** What a plate has in the field of a clash, in the words of a clash; empty where that is none of the fields. */
    static Optional<Value> value(Plate plate, Clash clash) {
        // asked of the join itself: against two plates that differ from it in the field
        List<Plate> others = Stream.concat(
                        Stream.of(clash.base()), clash.sides().stream().map(Clash.Side::value))
                .distinct()
                .map(v -> Settling.put(plate, clash, v))
                .filter(other -> !other.equals(plate))
                .toList();
        if (others.size() < 2) {
            return Optional.empty();
        }
        ClashList told = new ClashList(Hands.UNKNOWN);
        new FieldJoin(others.get(0), plate, others.get(1), told).into(new Draft(plate.id(), plate.title()));
        return told.take(clash.what(), clash.place())
                .flatMap(c -> c.sides().stream()
                        .map(Clash.Side::value)
                        .filter(v -> Settling.put(plate, clash, v).equals(plate))
                        .findFirst());
    }

    private String title() {
        Optional<String> joined = field("title", p -> Optional.of(p.title()).filter(t -> !t.isEmpty()), Value::of);
        return joined.orElseGet(
                () -> CodePoints.ORDER.compare(mine.title(), theirs.title()) <= 0 ? mine.title() : theirs.title());
    }

    private Origin origin() {
        return new Origin(
                field("origin.kind", p -> p.origin().kind(), Value::of),
                field("origin.by", p -> p.origin().by(), Value::of),
                field("origin.place", p -> p.origin().place(), Value::of),
                field("origin.use", p -> p.origin().use(), Value::of),
                unknown("origin.", p -> p.origin().unknown()));
    }

    private Cloth cloth() {
        return new Cloth(
                field("cloth.gathering rows", p -> p.cloth().gatheringRows(), Value::of),
                field("cloth.spacing mm", p -> p.cloth().spacingMm(), Value.Num::new),
                field("cloth.stacked rows", p -> p.cloth().stackedRows(), Value::of),
                field("cloth.fullness", p -> p.cloth().fullness(), Value.Num::new),
                field("cloth.holding", p -> Optional.of(p.cloth().holding()).filter(h -> !h.isEmpty()), Value::ofTexts)
                        .orElse(List.of()),
                unknown("cloth.", p -> p.cloth().unknown()));
    }

    private Unknown unknown(String prefix, Function<Plate, Unknown> part) {
        TreeSet<String> keys = new TreeSet<>(CodePoints.ORDER);
        keys.addAll(part.apply(base).entries().keySet());
        keys.addAll(part.apply(mine).entries().keySet());
        keys.addAll(part.apply(theirs).entries().keySet());
        Map<String, Value> joined = new LinkedHashMap<>();
        for (String key : keys) {
            field(prefix + key, p -> Optional.ofNullable(part.apply(p).entries().get(key)), v -> v)
                    .ifPresent(v -> joined.put(key, v));
        }
        return new Unknown(joined);
    }

    private <T> Optional<T> field(String name, Function<Plate, Optional<T>> get, Function<T, Value> value) {
        Optional<T> b = get.apply(base);
        Optional<T> m = get.apply(mine);
        Optional<T> t = get.apply(theirs);
        if (m.equals(t) || t.equals(b)) {
            return m;
        }
        if (m.equals(b)) {
            return t;
        }
        clashes.add(
                Clash.What.FIELD,
                ClashList.place("field", Value.of(name)),
                b.map(value).orElse(Value.NOTHING),
                m.map(value).orElse(Value.NOTHING),
                t.map(value).orElse(Value.NOTHING),
                ClashList.NO_ROW);
        return b;
    }
}
