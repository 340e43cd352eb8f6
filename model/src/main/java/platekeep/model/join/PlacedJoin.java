package platekeep.model.join;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleat;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Joins what lies on the picture or around it: marks, remarks, geometric lines, notions. */
final class PlacedJoin {
    private final Plate base;
    private final Side[] sides;
    private final Colours colours;
    private final Placing placing;
    private final RowJoin rows;
    private final ClashList clashes;

    PlacedJoin(Plate base, Side[] sides, Colours colours, Placing placing, RowJoin rows, ClashList clashes) {
        this.base = base;
        this.sides = sides;
        this.colours = colours;
        this.placing = placing;
        this.rows = rows;
        this.clashes = clashes;
    }

    private Plate plate(int s) {
        return s < 0 ? base : sides[s].plate();
    }

    /** The colour's identity; {@code was} is what the same thing had before, so that one that only followed is no change. */
    private char identity(int s, char letter, Optional<Character> was) {
        if (s < 0) {
            return letter;
        }
        return was.map(w -> colours.identity(s, letter, w)).orElseGet(() -> colours.identity(s, letter));
    }

    /** Identities that a side newly uses in a line or mark though the other side took the colour out. */
    static Set<Character> usedThoughTakenOut(Plate base, Side[] sides, Colours colours) {
        Set<Character> used = new HashSet<>();
        for (int s = 0; s < 2; s++) {
            int side = s;
            addNewlyUsed(
                    base.lines().stream().map(Line::colour).toList(),
                    sides[s].plate().lines().stream()
                            .map(l -> colours.identity(side, l.colour()))
                            .toList(),
                    used);
            addNewlyUsed(
                    base.marks().stream().map(Mark::colour).toList(),
                    sides[s].plate().marks().stream()
                            .map(m -> colours.identity(side, m.colour()))
                            .toList(),
                    used);
            used.removeIf(id -> !colours.tookOut(0, id) && !colours.tookOut(1, id));
        }
        return used;
    }

    /** Adds what is used more often than it was. */
    private static void addNewlyUsed(List<Character> was, List<Character> is, Set<Character> used) {
        is.stream()
                .filter(id -> Collections.frequency(is, id) > Collections.frequency(was, id))
                .forEach(used::add);
    }

    private char letter(char identity) {
        return colours.letter(identity);
    }

    List<Mark> marks() {
        Map<String, Placing.Spot> spots = new HashMap<>();
        List<Map<String, Mark>> all = new ArrayList<>();
        for (int s = -1; s < 2; s++) {
            Map<String, Mark> byKey = new LinkedHashMap<>();
            for (Mark mark : plate(s).marks()) {
                Placing.Spot spot = placing.pleat(s, mark.row(), mark.place());
                String key = mark.stitch() + "|" + where(spot);
                spots.putIfAbsent(key, spot);
                Optional<Mark> was = s < 0
                        ? Optional.empty()
                        : Optional.ofNullable(all.get(0).get(key));
                byKey.put(key, mark.at(NOWHERE, "0").withColour(identity(s, mark.colour(), was.map(Mark::colour))));
            }
            all.add(byKey);
        }
        Things<String, Mark> things = new Things<>(all.get(0), all.get(1), all.get(2));
        Set<String> kept = new HashSet<>(things.result().keySet());
        for (String key : things.result().keySet()) {
            settleRow(things, key, spots.get(key), kept);
        }
        keepOnStandingRows(things, spots, kept);
        Map<String, Mark> standing = new LinkedHashMap<>(things.result());
        List<Mark> out = new ArrayList<>();
        for (String key : keys(all)) {
            Function<Mark, Mark> there = mark -> placed(mark, spots.get(key));
            if (things.torn().contains(key) || leftOver.contains(key)) {
                Mark any = all.stream()
                        .map(m -> m.get(key))
                        .filter(m -> m != null)
                        .findFirst()
                        .orElseThrow();
                Mark at = there.apply(any);
                Value.Entries place = new Value.Builder()
                        .put("stitch", at.stitch())
                        .put("row", at.row().text())
                        .put("pleat", at.pleat())
                        .build();
                clash(Clash.What.MARK, place, key, things, m -> there.apply(m).value(), spots.get(key));
            }
            if (kept.contains(key)) {
                Mark mark = standing.getOrDefault(key, all.get(0).get(key));
                out.add(there.apply(mark));
            }
        }
        leftOver.clear();
        return out;
    }

    private static final RowId NOWHERE = new RowId("0000");
    private final Set<String> leftOver = new HashSet<>();

    private static String where(Placing.Spot spot) {
        return spot.handle() + "|" + spot.named().map(RowId::text).orElse("") + "|" + spot.layer() + "|" + spot.place();
    }

    private static <V> Set<String> keys(List<Map<String, V>> all) {
        Set<String> keys = new LinkedHashSet<>();
        all.forEach(m -> keys.addAll(m.keySet()));
        return keys;
    }

    private Mark placed(Mark mark, Placing.Spot spot) {
        return mark.at(placing.row(spot), Pleat.text(placing.pleat(spot))).withColour(letter(mark.colour()));
    }

    /** What lies on a row that one side took out goes too, unless the other side put it there or changed it. */
    private <V> void settleRow(Things<String, V> things, String key, Placing.Spot spot, Set<String> kept) {
        if (placing.isThere(spot)) {
            return;
        }
        boolean changed = false;
        for (int s = 0; s < 2; s++) {
            boolean here = things.side(s, key).isPresent();
            changed |= here
                    && rows.row(s, spot.handle()) >= 0
                    && !things.side(s, key).equals(things.base(key));
        }
        if (changed) {
            leftOver.add(key);
        } else {
            kept.remove(key);
        }
    }

    /** A row that stands because it was changed keeps what lay on it, though the side that took it out lacks that too. */
    private <V> void keepOnStandingRows(Things<String, V> things, Map<String, Placing.Spot> spots, Set<String> kept) {
        spots.forEach((key, spot) -> {
            if (!rows.keptThoughTakenOut().contains(spot.handle()) || kept.contains(key)) {
                return;
            }
            int there = rows.row(0, spot.handle()) >= 0 ? 0 : 1;
            if (things.side(there, key).isPresent() && things.base(key).isPresent()) {
                kept.add(key);
            }
        });
    }

    private <V> void clash(
            Clash.What what,
            Value.Entries place,
            String key,
            Things<String, V> things,
            Function<V, Value> value,
            Placing.Spot spot) {
        clashes.add(
                what,
                place,
                things.base(key).map(value).orElse(Value.NOTHING),
                things.side(0, key).map(value).orElse(Value.NOTHING),
                things.side(1, key).map(value).orElse(Value.NOTHING),
                placing.resultRow(spot).orElse(ClashList.NO_ROW));
    }

    List<Remark> remarks() {
        Map<String, Remark> b = remarks(-1);
        Map<String, Remark> m = remarks(0);
        Map<String, Remark> t = remarks(1);
        Things<String, Remark> things = new Things<>(b, m, t);
        List<Remark> out = new ArrayList<>();
        for (String key : keys(List.of(b, m, t))) {
            Remark any = Optional.ofNullable(things.result().get(key))
                    .or(() -> onStandingRow(things, key))
                    .orElse(null);
            boolean gone = any != null && any.row().map(r -> isGone(r)).orElse(false);
            boolean leftWithoutRow = gone && !things.base(key).equals(Optional.of(any));
            if (things.torn().contains(key) || leftWithoutRow) {
                clash(
                        Clash.What.REMARK,
                        ClashList.place("id", Value.of(key)),
                        key,
                        things,
                        Remark::value,
                        new Placing.Spot(Optional.empty(), -1, 0, 0));
            }
            if (any != null && (!gone || leftWithoutRow)) {
                out.add(any);
            }
        }
        return out;
    }

    /** A remark that went with a row that the other side changed, so that it stands; as that side has it. */
    private Optional<Remark> onStandingRow(Things<String, Remark> things, String key) {
        Optional<RowId> row = base.remarks().stream()
                .filter(r -> r.id().text().equals(key))
                .findFirst()
                .flatMap(Remark::row);
        int handle = row.map(r -> placing.position(-1, r, 0).handle()).orElse(-1);
        if (!rows.keptThoughTakenOut().contains(handle)) {
            return Optional.empty();
        }
        return things.side(rows.row(0, handle) >= 0 ? 0 : 1, key);
    }

    private boolean isGone(RowId row) {
        return !placing.isThere(placing.position(-1, row, 0)) && !placing.hasRow(row);
    }

    /** Remarks by id, their places already those of the joined plate. */
    private Map<String, Remark> remarks(int s) {
        Map<String, Remark> out = new LinkedHashMap<>();
        for (Remark remark : plate(s).remarks()) {
            out.put(
                    remark.id().text(),
                    remark.row().map(row -> placed(s, remark, row)).orElse(remark));
        }
        return out;
    }

    private Remark placed(int s, Remark remark, RowId row) {
        Placing.Spot from = placing.position(s, row, remark.from().orElse(plate(s).from()));
        if (from.handle() < 0) {
            return remark;
        }
        if (remark.from().isEmpty() || remark.to().isEmpty()) {
            return new Remark(
                    remark.id(),
                    Optional.of(placing.rowAlone(s, row)),
                    remark.from(),
                    remark.to(),
                    remark.by(),
                    remark.on(),
                    remark.text(),
                    remark.done(),
                    remark.unknown());
        }
        Placing.Spot to = placing.position(s, row, remark.to().get());
        int a = placing.position(from);
        int b = from.layer() == to.layer()
                ? placing.position(to)
                : a + remark.to().get() - remark.from().get();
        return remark.at(placing.row(from), Math.min(a, b), Math.max(a, b));
    }

    List<Line> lines() {
        List<Map<ListJoin.Item, Line>> all = new ArrayList<>();
        for (int s = -1; s < 2; s++) {
            int side = s;
            Map<ListJoin.Item, Line> items = ListJoin.items(
                    plate(s).lines(), l -> l.on() + "|" + l.toRow().orElse("") + "|" + l.from());
            Map<ListJoin.Item, Line> before = s < 0 ? Map.of() : all.get(0);
            items.replaceAll((key, line) -> line.withColour(identity(
                    side, line.colour(), Optional.ofNullable(before.get(key)).map(Line::colour))));
            all.add(items);
        }
        Things<ListJoin.Item, Line> things = new Things<>(all.get(0), all.get(1), all.get(2));
        Function<Line, Line> named = line -> line.withColour(letter(line.colour()));
        for (ListJoin.Item key : things.torn()) {
            Line any = things.side(0, key).or(() -> things.side(1, key)).orElseThrow();
            clashes.add(
                    Clash.What.LINE,
                    new Value.Builder()
                            .put("on", any.on())
                            .putIf("to row", any.toRow(), Value::of)
                            .put("from", any.from())
                            .build(),
                    things.base(key).map(l -> (Value) named.apply(l).value()).orElse(Value.NOTHING),
                    things.side(0, key).map(l -> (Value) named.apply(l).value()).orElse(Value.NOTHING),
                    things.side(1, key).map(l -> (Value) named.apply(l).value()).orElse(Value.NOTHING),
                    ClashList.NO_ROW);
        }
        return ListJoin.order(
                        all.get(0),
                        all.get(1),
                        all.get(2),
                        things,
                        line -> named.apply(line).value().text())
                .stream()
                .map(things.result()::get)
                .map(named)
                .toList();
    }

    List<Notion> notions() {
        List<Map<ListJoin.Item, Notion>> all = new ArrayList<>();
        for (int s = -1; s < 2; s++) {
            all.add(ListJoin.items(
                    plate(s).notions(), n -> n.kind() + "|" + n.size().orElse("")));
        }
        Things<ListJoin.Item, Notion> things = new Things<>(all.get(0), all.get(1), all.get(2));
        for (ListJoin.Item key : things.torn()) {
            Notion any = things.side(0, key).or(() -> things.side(1, key)).orElseThrow();
            clashes.add(
                    Clash.What.NOTION,
                    new Value.Builder()
                            .put("kind", any.kind())
                            .putIf("size", any.size(), Value::of)
                            .build(),
                    things.base(key).map(n -> (Value) n.value()).orElse(Value.NOTHING),
                    things.side(0, key).map(n -> (Value) n.value()).orElse(Value.NOTHING),
                    things.side(1, key).map(n -> (Value) n.value()).orElse(Value.NOTHING),
                    ClashList.NO_ROW);
        }
        return ListJoin.order(
                        all.get(0),
                        all.get(1),
                        all.get(2),
                        things,
                        notion -> notion.value().text())
                .stream()
                .map(things.result()::get)
                .toList();
    }
}
