package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Clashes that were open before and still are: their places and values follow renamings, moves and widening. */
final class OpenClashes {
    private OpenClashes() {}

    static List<Clash> carried(Finished to) {
        List<Clash> out = new ArrayList<>();
        for (int i = 0; i < to.base.clashes().size(); i++) {
            Clash clash = to.base.clashes().get(i);
            Optional<RowId> row = clash.textAt("row").map(RowId::new);
            boolean gone = row.isPresent() && !to.grid.has(row.get());
            if (!to.change.settled.contains(i) && !gone) {
                out.add(carried(clash, to));
            }
        }
        return out;
    }

    private static Clash carried(Clash clash, Finished to) {
        return switch (clash.what()) {
            case FIELD -> clash;
            case CABLES -> cables(clash, to);
            case ROW ->
                values(
                        clash,
                        clash.place(),
                        text -> row(text, new RowId(clash.textAt("row").orElseThrow()), to));
            case COLOUR -> values(clash, key(clash, to), t -> t);
            default -> asItWas(clash, to);
        };
    }

    private static Clash asItWas(Clash clash, Finished to) {
        boolean plain = !to.change.moves()
                && to.change.keys.isEmpty()
                && to.change.from.isEmpty()
                && to.change.to.isEmpty()
                && !to.change.touchesRows();
        if (!plain) {
            throw new Undetermined("how an open clash of this kind follows");
        }
        return clash;
    }

    private static Value.Entries key(Clash clash, Finished to) {
        char ink = clash.textAt("key").orElseThrow().charAt(0);
        return new Value.Builder().put("key", String.valueOf(to.letter(ink))).build();
    }

    static Clash cables(Clash clash, Finished to) {
        RowId row = new RowId(clash.textAt("row").orElseThrow());
        int from = clash.numberAt("from").orElseThrow();
        int end = clash.numberAt("to").orElseThrow();
        Cell first = new Cell(row, from);
        for (int p = from; p <= end; p++) {
            if (to.carry.moveOf(new Cell(row, p)) != to.carry.moveOf(first)) {
                throw new Undetermined("a clash that lies half on a moved figure");
            }
        }
        int a = to.carry.cell(first).position();
        int b = to.carry.cell(new Cell(row, end)).position();
        Value.Entries place = new Value.Builder()
                .put("row", to.carry.cell(first).row().text())
                .put("from", Math.min(a, b))
                .put("to", Math.max(a, b))
                .build();
        boolean mirrored = to.carry.mirrors(first);
        return values(clash, place, text -> {
            String letters = to.letters(text);
            return mirrored ? new StringBuilder(letters).reverse().toString() : letters;
        });
    }

    private static String row(String text, RowId row, Finished to) {
        TreeMap<Integer, Character> cells = new TreeMap<>();
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != Row.EMPTY) {
                cells.put(to.base.from() + i, text.charAt(i));
            }
        }
        if (!cells.isEmpty() && (cells.firstKey() < to.pleats.from() || cells.lastKey() >= to.pleats.to())) {
            throw new Undetermined("a clash's row is cut off");
        }
        return to.rowText(row, cells);
    }

    private static Clash values(Clash clash, Value.Entries place, UnaryOperator<String> texts) {
        List<Clash.Side> sides = clash.sides().stream()
                .map(s -> new Clash.Side(value(s.value(), texts), s.by(), s.unknown()))
                .toList();
        return new Clash(clash.what(), place, value(clash.base(), texts), sides, clash.unknown());
    }

    private static Value value(Value value, UnaryOperator<String> texts) {
        return value instanceof Value.Text text ? Value.of(texts.apply(text.string())) : value;
    }

    /** A place from keys and values, in the order given. */
    static Value.Entries place(Object... keysAndValues) {
        Map<String, Value> out = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            Object v = keysAndValues[i + 1];
            out.put(
                    (String) keysAndValues[i],
                    v instanceof Integer n ? Value.of(n) : v instanceof Value known ? known : Value.of((String) v));
        }
        return new Value.Entries(out);
    }
}
