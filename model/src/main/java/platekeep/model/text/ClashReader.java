package platekeep.model.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;

/** Reads clashes; what a clash holds is read by what it is about, so that its keys stand in their known order. */
final class ClashReader {
    private static final List<String> SIDE = List.of("value", "by");
    private static final List<String> FIGURE = List.of("rows", "pleats", "mirrored");
    private static final List<String> ENDS = List.of("from", "to");

    private final PartReader parts;
    private final RowsReader rows;
    private final Shapes shapes;

    ClashReader(PartReader parts, RowsReader rows) {
        this.parts = parts;
        this.rows = rows;
        this.shapes = parts.shapes();
    }

    Optional<Clash> clash(Piece piece) {
        Optional<Clash.What> what = shapes.object(piece, "clash").flatMap(this::what);
        return what.flatMap(w -> shapes.fields(piece, "clash", keys(w)).map(f -> clash(w, f)));
    }

    private Optional<Clash.What> what(Piece.Obj object) {
        Piece.Member member = object.members().get("what");
        Optional<Clash.What> what = member != null && member.piece() instanceof Piece.Str text
                ? Clash.What.of(text.text())
                : Optional.empty();
        if (what.isEmpty()) {
            List<String> words =
                    Stream.of(Clash.What.values()).map(Clash.What::word).toList();
            shapes.problems()
                    .found(
                            Rule.CLASH_WHAT,
                            member == null ? object.at() : member.piece().at(),
                            "\"what\" is " + Words.oneOf(words) + "; change it.");
        }
        return what;
    }

    private static List<String> keys(Clash.What what) {
        List<String> keys = new ArrayList<>(List.of("what"));
        keys.addAll(what.placeKeys());
        keys.addAll(List.of("base", "sides"));
        return keys;
    }

    private Clash clash(Clash.What what, Fields f) {
        Map<String, Value> place = new LinkedHashMap<>();
        for (String key : what.placeKeys()) {
            boolean optional = key.equals("to row") || key.equals("size");
            (optional ? f.piece(key) : f.required(key)).ifPresent(p -> place.put(key, placeEntry(what, key, p)));
        }
        Value.Entries where = new Value.Entries(place);
        Value base = f.required("base").map(p -> value(what, where, p)).orElse(Value.NOTHING);
        return new Clash(what, where, base, sides(what, where, f), f.unknown());
    }

    private List<Clash.Side> sides(Clash.What what, Value.Entries where, Fields f) {
        List<Piece> pieces = f.list("sides");
        List<Clash.Side> sides = PartReader.each(
                pieces, piece -> shapes.fields(piece, "side", SIDE).map(s -> side(what, where, s)));
        if (f.piece("sides").filter(Piece.Arr.class::isInstance).isPresent() && pieces.isEmpty()) {
            shapes.problems().found(Rule.CLASH_SIDES, f.at("sides"), "\"sides\" holds what each side wants; add it.");
        }
        List<Clash.Side> sorted =
                sides.stream().sorted(Clash.Side.ORDER).distinct().toList();
        if (sorted.size() < sides.size()) {
            shapes.problems().found(Rule.DOUBLE, f.at("sides"), "a side stood twice here; one is left out now.");
        } else if (!sorted.equals(sides)) {
            shapes.problems()
                    .found(Rule.LIST_ORDER, f.at("sides"), "the sides stood out of order; they are sorted now.");
        }
        return sides;
    }

    private Clash.Side side(Clash.What what, Value.Entries where, Fields s) {
        return new Clash.Side(
                s.required("value").map(p -> value(what, where, p)).orElse(Value.NOTHING),
                s.maybeText("by"),
                s.unknown());
    }

    private Value placeEntry(Clash.What what, String key, Piece piece) {
        return switch (key) {
            case "row" -> rowName(piece, "row", Rule.CLASH_PLACE);
            case "after" -> piece instanceof Piece.Nothing ? Value.NOTHING : rowName(piece, "after", Rule.CLASH_PLACE);
            case "from", "to" -> Value.of(shapes.whole(piece, key));
            case "pleat" ->
                what == Clash.What.MARK
                        ? Value.of(shapes.fitting(piece, key, Rule.CLASH_PLACE, Words.PLEAT, Words.PLEAT_SAID))
                        : Value.of(shapes.whole(piece, key));
            case "end" -> Value.of(shapes.fitting(piece, key, Rule.CLASH_PLACE, ENDS::contains, Words.oneOf(ENDS)));
            case "key" ->
                Value.of(shapes.fitting(piece, key, Rule.CLASH_PLACE, Words.COLOUR_KEY, Words.COLOUR_KEY_SAID));
            case "id" -> Value.of(shapes.fitting(piece, key, Rule.CLASH_PLACE, Words.ROW_ID, Words.ROW_ID_SAID));
            case "on", "to row" ->
                Value.of(shapes.fitting(piece, key, Rule.CLASH_PLACE, Words.GATHERING_ROW, Words.GATHERING_ROW_SAID));
            default -> Value.of(shapes.text(piece, key));
        };
    }

    /** A row by its id, or one without an id by its number from the bottom. */
    private Value rowName(Piece piece, String key, Rule rule) {
        if (piece instanceof Piece.Num) {
            return Value.of(shapes.whole(piece, key));
        }
        String id = shapes.fitting(piece, key, rule, Words.ROW_ID, Words.ROW_ID_SAID);
        return Value.of(id);
    }

    /** A value of base or of a side; nothing where there was nothing. */
    private Value value(Clash.What what, Value.Entries where, Piece piece) {
        if (piece instanceof Piece.Nothing) {
            return Value.NOTHING;
        }
        return switch (what) {
            case CABLES -> cells(piece, extent(where));
            case ROW -> cells(piece, OptionalInt.empty());
            case TWINS -> cells(piece, OptionalInt.empty());
            case ROWS ->
                new Value.Items(shapes.list(piece, "value").stream()
                        .map(p -> Value.of(rows.row(p, Optional.empty()).text()))
                        .toList());
            case ORDER -> rowName(piece, "value", Rule.CLASH_VALUE);
            case PLEATS -> Value.of(shapes.whole(piece, "value"));
            case FIELD -> field(where, piece);
            case COLOUR ->
                parts.colour(piece).map(Colour::value).map(Value.class::cast).orElse(Value.NOTHING);
            case START ->
                parts.start(piece).map(Start::value).map(Value.class::cast).orElse(Value.NOTHING);
            case LINE ->
                parts.line(piece).map(Line::value).map(Value.class::cast).orElse(Value.NOTHING);
            case MARK ->
                parts.mark(piece).map(Mark::value).map(Value.class::cast).orElse(Value.NOTHING);
            case NOTION ->
                parts.notion(piece).map(Notion::value).map(Value.class::cast).orElse(Value.NOTHING);
            case REMARK ->
                parts.remark(piece).map(Remark::value).map(Value.class::cast).orElse(Value.NOTHING);
            case FIGURE -> figure(piece);
        };
    }

    private static OptionalInt extent(Value.Entries where) {
        if (where.entries().get("from") instanceof Value.Num from
                && where.entries().get("to") instanceof Value.Num to) {
            BigDecimal length = to.number().subtract(from.number()).add(BigDecimal.ONE);
            return OptionalInt.of(length.max(BigDecimal.ZERO)
                    .min(BigDecimal.valueOf(Integer.MAX_VALUE))
                    .intValue());
        }
        return OptionalInt.empty();
    }

    private Value cells(Piece piece, OptionalInt length) {
        String text = shapes.text(piece, "value");
        return piece instanceof Piece.Str
                ? Value.of(rows.cells(text, piece.at() + 1, Optional.empty(), length))
                : Value.NOTHING;
    }

    private Value figure(Piece piece) {
        return shapes.fields(piece, "value", FIGURE)
                .map(f -> (Value) new Value.Builder()
                        .putIf("rows", f.maybeWhole("rows"), Value::of)
                        .putIf("pleats", f.maybeWhole("pleats"), Value::of)
                        .putIf("mirrored", f.piece("mirrored").map(shapes::unknown), v -> v)
                        .putAll(f.unknown())
                        .build())
                .orElse(Value.NOTHING);
    }

    private Value field(Value.Entries where, Piece piece) {
        String name = where.entries().get("field") instanceof Value.Text text ? text.string() : "";
        return switch (name) {
            case "title" ->
                Value.of(shapes.fitting(piece, name, Rule.CLASH_VALUE, Words.NOT_BLANK, "a title that is not blank"));
            case "number", "origin.by", "origin.place" -> Value.of(shapes.text(piece, name));
            case "state" -> word(piece, name, Words.STATE::test, Words.STATE_SAID);
            case "origin.kind" -> word(piece, name, Origin.KINDS::contains, Words.oneOf(Origin.KINDS));
            case "origin.use" -> word(piece, name, Origin.USES::contains, Words.oneOf(Origin.USES));
            case "cloth.gathering rows", "cloth.stacked rows" -> Value.of(shapes.whole(piece, name));
            case "cloth.spacing mm", "cloth.fullness" -> new Value.Num(shapes.decimal(piece, name));
            case "cloth.holding" -> Value.ofTexts(parts.holding(shapes.list(piece, name)));
            case "repeat" ->
                parts.repeat(piece).map(Repeat::value).map(Value.class::cast).orElse(Value.NOTHING);
            case "from plate" ->
                parts.fromPlate(piece).map(from -> (Value) from.value()).orElse(Value.NOTHING);
            default -> shapes.unknown(piece);
        };
    }

    private Value word(Piece piece, String name, Predicate<String> fits, String said) {
        return Value.of(shapes.fitting(piece, name, Rule.CLASH_VALUE, fits, said));
    }
}
