package platekeep.model.join;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Puts a chosen value in for a field, a colour, or a thing on the picture. */
final class SettledFields {

    private SettledFields() {}

    static Plate field(Plate plate, String name, Value value) {
        Optional<Value> v = Optional.of(value).filter(x -> !x.equals(Value.NOTHING));
        Optional<String> t = v.filter(Value.Text.class::isInstance).map(Settling::text);
        if (name.startsWith("origin.")) {
            return plate.edit()
                    .origin(origin(plate.origin(), name.substring(7), v, t))
                    .build();
        }
        if (name.startsWith("cloth.")) {
            return plate.edit()
                    .cloth(cloth(plate.cloth(), name.substring(6), v))
                    .build();
        }
        return switch (name) {
            case "title" -> plate.edit().title(t.orElse(plate.title())).build();
            case "number" -> plate.edit().number(t).build();
            case "state" -> plate.edit().state(t.flatMap(State::of)).build();
            case "repeat" ->
                plate.edit()
                        .repeat(v.map(Settling::entries)
                                .map(e -> new Repeat(whole(e, "every"), whole(e, "times"), rest(e, "every", "times"))))
                        .build();
            case "from plate" ->
                plate.edit()
                        .fromPlate(v.map(Settling::entries)
                                .map(e -> new FromPlate(text(e, "id"), text(e, "version"), rest(e, "id", "version"))))
                        .build();
            default -> plate.edit().unknown(with(plate.unknown(), name, v)).build();
        };
    }

    private static Unknown with(Unknown unknown, String key, Optional<Value> value) {
        Map<String, Value> entries = new LinkedHashMap<>(unknown.entries());
        entries.remove(key);
        value.ifPresent(v -> entries.put(key, v));
        return new Unknown(entries);
    }

    private static Origin origin(Origin o, String key, Optional<Value> v, Optional<String> t) {
        return switch (key) {
            case "kind" -> new Origin(t, o.by(), o.place(), o.use(), o.unknown());
            case "by" -> new Origin(o.kind(), t, o.place(), o.use(), o.unknown());
            case "place" -> new Origin(o.kind(), o.by(), t, o.use(), o.unknown());
            case "use" -> new Origin(o.kind(), o.by(), o.place(), t, o.unknown());
            default -> new Origin(o.kind(), o.by(), o.place(), o.use(), with(o.unknown(), key, v));
        };
    }

    private static Cloth cloth(Cloth c, String key, Optional<Value> v) {
        Optional<BigDecimal> n = v.filter(Value.Num.class::isInstance).map(x -> ((Value.Num) x).number());
        Optional<Integer> whole = n.map(BigDecimal::intValue);
        List<String> texts = v.filter(Value.Items.class::isInstance)
                .map(x -> ((Value.Items) x).items().stream().map(Settling::text).toList())
                .orElse(List.of());
        return switch (key) {
            case "gathering rows" ->
                new Cloth(whole, c.spacingMm(), c.stackedRows(), c.fullness(), c.holding(), c.unknown());
            case "spacing mm" ->
                new Cloth(c.gatheringRows(), n, c.stackedRows(), c.fullness(), c.holding(), c.unknown());
            case "stacked rows" ->
                new Cloth(c.gatheringRows(), c.spacingMm(), whole, c.fullness(), c.holding(), c.unknown());
            case "fullness" ->
                new Cloth(c.gatheringRows(), c.spacingMm(), c.stackedRows(), n, c.holding(), c.unknown());
            case "holding" ->
                new Cloth(c.gatheringRows(), c.spacingMm(), c.stackedRows(), c.fullness(), texts, c.unknown());
            default ->
                new Cloth(
                        c.gatheringRows(),
                        c.spacingMm(),
                        c.stackedRows(),
                        c.fullness(),
                        c.holding(),
                        with(c.unknown(), key, v));
        };
    }

    /** An entry that is taken out while cables still need it stays. */
    static Plate colour(Plate plate, char key, Value value) {
        if (value.equals(Value.NOTHING)) {
            boolean used = plate.rows().stream().anyMatch(r -> r.cells().indexOf(key) >= 0)
                    || plate.lines().stream().anyMatch(l -> l.colour() == key)
                    || plate.marks().stream().anyMatch(m -> m.colour() == key);
            return used
                    ? plate
                    : plate.edit().palette(plate.palette().without(key)).build();
        }
        Map<String, Value> e = Settling.entries(value);
        Colour colour = new Colour(
                text(e, "name"),
                text(e, "srgb"),
                whole(e, "strands"),
                optional(e, "floss"),
                rest(e, "name", "srgb", "strands", "floss"));
        return plate.edit().palette(plate.palette().with(key, colour)).build();
    }

    static Plate thing(Plate plate, Clash clash, Value value) {
        return switch (clash.what()) {
            case START ->
                plate.edit()
                        .starts(replaced(plate.starts(), s -> sits(s, clash), value, SettledFields::start))
                        .build();
            case LINE ->
                plate.edit()
                        .lines(replaced(plate.lines(), l -> fits(clash, l.value()), value, SettledFields::line))
                        .build();
            case MARK ->
                plate.edit()
                        .marks(replaced(plate.marks(), m -> fits(clash, m.value()), value, SettledFields::mark))
                        .build();
            case NOTION ->
                plate.edit()
                        .notions(replaced(plate.notions(), n -> fits(clash, n.value()), value, SettledFields::notion))
                        .build();
            case REMARK ->
                plate.edit()
                        .remarks(replaced(plate.remarks(), r -> fits(clash, r.value()), value, SettledFields::remark))
                        .build();
            default -> plate;
        };
    }

    /** A start that moved is still the one in question when it is the clash's base or one of its sides. */
    private static boolean sits(Start start, Clash clash) {
        return fits(clash, start.value())
                || start.value().equals(clash.base())
                || clash.sides().stream().anyMatch(side -> start.value().equals(side.value()));
    }

    private static boolean fits(Clash clash, Value.Entries thing) {
        return clash.place().entries().entrySet().stream()
                .allMatch(e ->
                        thing.entries().getOrDefault(e.getKey(), Value.NOTHING).equals(e.getValue()));
    }

    private static <T> List<T> replaced(
            List<T> list, Predicate<T> one, Value value, Function<Map<String, Value>, T> read) {
        List<T> out = new ArrayList<>();
        Optional<T> chosen = Optional.of(value)
                .filter(v -> !v.equals(Value.NOTHING))
                .map(Settling::entries)
                .map(read);
        boolean put = false;
        for (T thing : list) {
            if (!one.test(thing)) {
                out.add(thing);
            } else if (!put) {
                chosen.ifPresent(out::add);
                put = true;
            }
        }
        if (!put) {
            chosen.ifPresent(out::add);
        }
        return out;
    }

    private static Start start(Map<String, Value> e) {
        return new Start(
                new RowId(text(e, "row")),
                whole(e, "pleat"),
                kind(text(e, "cable")),
                optional(e, "on"),
                rest(e, "row", "pleat", "cable", "on"));
    }

    private static CableKind kind(String word) {
        return word.equals("up") ? CableKind.UP : CableKind.DOWN;
    }

    private static Line line(Map<String, Value> e) {
        return new Line(
                text(e, "on"),
                optional(e, "to row"),
                text(e, "stitch"),
                Optional.ofNullable(e.get("steps")).map(v -> whole(e, "steps")),
                text(e, "colour").charAt(0),
                whole(e, "strands"),
                whole(e, "from"),
                whole(e, "to"),
                kind(text(e, "start")),
                rest(e, "on", "to row", "stitch", "steps", "colour", "strands", "from", "to", "start"));
    }

    private static Mark mark(Map<String, Value> e) {
        return new Mark(
                text(e, "stitch"),
                new RowId(text(e, "row")),
                text(e, "pleat"),
                text(e, "colour").charAt(0),
                rest(e, "stitch", "row", "pleat", "colour"));
    }

    private static Notion notion(Map<String, Value> e) {
        return new Notion(text(e, "kind"), optional(e, "size"), whole(e, "count"), rest(e, "kind", "size", "count"));
    }

    private static Remark remark(Map<String, Value> e) {
        return new Remark(
                new RowId(text(e, "id")),
                optional(e, "row").map(RowId::new),
                Optional.ofNullable(e.get("from")).map(v -> whole(e, "from")),
                Optional.ofNullable(e.get("to")).map(v -> whole(e, "to")),
                text(e, "by"),
                LocalDate.parse(text(e, "on")),
                text(e, "text"),
                Value.of(true).equals(e.get("done")),
                rest(e, "id", "row", "from", "to", "by", "on", "text", "done"));
    }

    private static String text(Map<String, Value> e, String key) {
        return Settling.text(e.getOrDefault(key, Value.NOTHING));
    }

    private static Optional<String> optional(Map<String, Value> e, String key) {
        return Optional.ofNullable(e.get(key)).map(Settling::text);
    }

    private static int whole(Map<String, Value> e, String key) {
        if (e.get(key) instanceof Value.Num n) {
            return n.number().intValueExact();
        }
        throw new IllegalArgumentException("a whole number is wanted under " + key);
    }

    private static Unknown rest(Map<String, Value> e, String... known) {
        Map<String, Value> rest = new LinkedHashMap<>(e);
        rest.keySet().removeAll(Set.of(known));
        return new Unknown(rest);
    }
}
