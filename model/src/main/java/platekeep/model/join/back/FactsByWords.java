package platekeep.model.join.back;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/**
 * Which facts of a plate a statement of a comparison is about: each fact that changed is changed alone, on a plate
 * without its picture, and what the comparison then says is put down to it.
 */
final class FactsByWords {
    private final Map<String, List<Fact>> facts = new HashMap<>();

    private FactsByWords() {}

    static FactsByWords of(Plate base, Plate side) {
        FactsByWords out = new FactsByWords();
        Plate was = slim(base);
        Plate is = slim(side);
        Plate rowsOnly = was.edit().pleats(is.pleats()).rows(is.rows()).build();
        Set<String> ofRows = new HashSet<>(Comparison.of(was, rowsOnly).words());
        for (Fact fact : all(base, side)) {
            if (!fact.same(base, side)) {
                Comparison.of(was, fact.copy(rowsOnly, is)).words().stream()
                        .filter(words -> !ofRows.contains(words))
                        .forEach(words -> out.put(words, fact));
            }
        }
        if (!base.pleats().equals(side.pleats())) {
            for (Fact end : List.of(Ends.LEFT, Ends.RIGHT)) {
                Plate blank = blank(base);
                Comparison.of(blank, end.copy(blank, side)).words().forEach(words -> out.put(words, end));
            }
        }
        return out;
    }

    private void put(String words, Fact fact) {
        facts.computeIfAbsent(words, w -> new ArrayList<>()).add(fact);
    }

    /** The facts that a statement is about; empty when it is about none that can be copied alone. */
    List<Fact> of(String words) {
        return facts.getOrDefault(words, List.of());
    }

    /** One empty position, so that comparing costs next to nothing; the rows stay, since words count them. */
    private static Plate slim(Plate plate) {
        return plate.pleats().isEmpty()
                ? plate
                : plate.edit()
                        .pleats(plate.pleats().map(p -> new Pleats(0, 1)))
                        .rows(plate.rows().stream()
                                .map(row -> row.withCells("."))
                                .toList())
                        .build();
    }

    private static Plate blank(Plate plate) {
        String cells = String.valueOf(Row.EMPTY).repeat(plate.positions());
        return plate.edit()
                .rows(plate.rows().stream().map(row -> row.withCells(cells)).toList())
                .build();
    }

    private static List<Fact> all(Plate base, Plate side) {
        List<Fact> all = new ArrayList<>(singles());
        colours(base, side, all);
        texts(base, side, Plate::themes, (p, l) -> p.edit().themes(l).build(), all);
        texts(base, side, Plate::uses, (p, l) -> p.edit().uses(l).build(), all);
        texts(base, side, Plate::designers, (p, l) -> p.edit().designers(l).build(), all);
        texts(base, side, Plate::notes, (p, l) -> p.edit().notes(l).build(), all);
        members(base, side, Plate::ages, (p, l) -> p.edit().ages(l).build(), a -> a.word(), all);
        members(base, side, Plate::starts, (p, l) -> p.edit().starts(l).build(), s -> s.row() + "|" + s.pleat(), all);
        members(base, side, Plate::lines, (p, l) -> p.edit().lines(l).build(), l -> l.on() + l.toRow() + l.from(), all);
        members(
                base,
                side,
                Plate::marks,
                (p, l) -> p.edit().marks(l).build(),
                m -> m.stitch() + m.row() + m.pleat(),
                all);
        members(base, side, Plate::notions, (p, l) -> p.edit().notions(l).build(), n -> n.kind() + n.size(), all);
        members(base, side, Plate::remarks, (p, l) -> p.edit().remarks(l).build(), r -> r.id().text(), all);
        return all;
    }

    private static List<Fact> singles() {
        List<Fact> all = new ArrayList<>(List.of(
                Fact.single(Plate::title, (p, v) -> p.edit().title(v).build()),
                Fact.single(Plate::number, (p, v) -> p.edit().number(v).build()),
                Fact.single(Plate::state, (p, v) -> p.edit().state(v).build()),
                Fact.single(Plate::repeat, (p, v) -> p.edit().repeat(v).build()),
                Fact.single(Plate::fromPlate, (p, v) -> p.edit().fromPlate(v).build()),
                Fact.single(Plate::unknown, (p, v) -> p.edit().unknown(v).build())));
        origin(Origin::kind, (o, v) -> new Origin(v, o.by(), o.place(), o.use(), o.unknown()), all);
        origin(Origin::by, (o, v) -> new Origin(o.kind(), v, o.place(), o.use(), o.unknown()), all);
        origin(Origin::place, (o, v) -> new Origin(o.kind(), o.by(), v, o.use(), o.unknown()), all);
        origin(Origin::use, (o, v) -> new Origin(o.kind(), o.by(), o.place(), v, o.unknown()), all);
        Function<Cloth, Optional<BigDecimal>> spacing = Cloth::spacingMm;
        cloth(
                Cloth::gatheringRows,
                (c, v) -> new Cloth(v, c.spacingMm(), c.stackedRows(), c.fullness(), c.holding(), c.unknown()),
                all);
        cloth(
                spacing,
                (c, v) -> new Cloth(c.gatheringRows(), v, c.stackedRows(), c.fullness(), c.holding(), c.unknown()),
                all);
        cloth(
                Cloth::stackedRows,
                (c, v) -> new Cloth(c.gatheringRows(), c.spacingMm(), v, c.fullness(), c.holding(), c.unknown()),
                all);
        cloth(
                Cloth::fullness,
                (c, v) -> new Cloth(c.gatheringRows(), c.spacingMm(), c.stackedRows(), v, c.holding(), c.unknown()),
                all);
        cloth(
                Cloth::holding,
                (c, v) -> new Cloth(c.gatheringRows(), c.spacingMm(), c.stackedRows(), c.fullness(), v, c.unknown()),
                all);
        return all;
    }

    private static <T> void origin(Function<Origin, T> get, BiFunction<Origin, T, Origin> put, List<Fact> all) {
        all.add(Fact.single(
                p -> get.apply(p.origin()),
                (p, v) -> p.edit().origin(put.apply(p.origin(), v)).build()));
    }

    private static <T> void cloth(Function<Cloth, T> get, BiFunction<Cloth, T, Cloth> put, List<Fact> all) {
        all.add(Fact.single(
                p -> get.apply(p.cloth()),
                (p, v) -> p.edit().cloth(put.apply(p.cloth(), v)).build()));
    }

    private static void colours(Plate base, Plate side, List<Fact> all) {
        Set<Character> keys = new TreeSet<>(base.palette().entries().keySet());
        keys.addAll(side.palette().entries().keySet());
        keys.forEach(key -> all.add(Fact.single(p -> p.palette().get(key), (p, v) -> withColour(p, key, v))));
    }

    /** A colour that is used stays. */
    private static Plate withColour(Plate plate, char key, Optional<Colour> colour) {
        if (colour.isPresent()) {
            return plate.edit().palette(plate.palette().with(key, colour.get())).build();
        }
        boolean used = plate.rows().stream().anyMatch(r -> r.cells().indexOf(key) >= 0)
                || plate.lines().stream().anyMatch(l -> l.colour() == key)
                || plate.marks().stream().anyMatch(m -> m.colour() == key);
        return used ? plate : plate.edit().palette(plate.palette().without(key)).build();
    }

    private static void texts(
            Plate base,
            Plate side,
            Function<Plate, List<String>> get,
            BiFunction<Plate, List<String>, Plate> put,
            List<Fact> all) {
        members(base, side, get, put, text -> text, all);
    }

    private static <T> void members(
            Plate base,
            Plate side,
            Function<Plate, List<T>> get,
            BiFunction<Plate, List<T>, Plate> put,
            Function<T, String> key,
            List<Fact> all) {
        Set<String> keys = new LinkedHashSet<>();
        get.apply(base).forEach(t -> keys.add(key.apply(t)));
        get.apply(side).forEach(t -> keys.add(key.apply(t)));
        keys.forEach(one -> all.add(Fact.member(get, put, key, one)));
    }
}
