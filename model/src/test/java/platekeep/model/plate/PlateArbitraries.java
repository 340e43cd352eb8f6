package platekeep.model.plate;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * Valid plates of every kind for property tests: with and without rows, row ids, unknown keys, non-BMP characters, marks,
 * remarks, clashes. Ask {@link #plates()} for anything, {@link #charts()} for plates that have a picture.
 */
public final class PlateArbitraries {

    private static final Set<String> KNOWN_SOMEWHERE = Set.of(
            "format",
            "id",
            "title",
            "number",
            "origin",
            "from plate",
            "state",
            "for",
            "themes",
            "ages",
            "designers",
            "notes",
            "colours",
            "pleats",
            "cloth",
            "starts",
            "repeat",
            "rows",
            "lines",
            "marks",
            "notions",
            "remarks",
            "clashes",
            "kind",
            "by",
            "place",
            "use",
            "version",
            "name",
            "srgb",
            "strands",
            "floss",
            "gathering rows",
            "spacing mm",
            "stacked rows",
            "fullness",
            "holding",
            "row",
            "pleat",
            "cable",
            "on",
            "every",
            "times",
            "to row",
            "stitch",
            "steps",
            "colour",
            "from",
            "to",
            "start",
            "size",
            "count",
            "text",
            "done",
            "what",
            "after",
            "end",
            "field",
            "key",
            "base",
            "sides",
            "value",
            "mirrored");

    private PlateArbitraries() {}

    /** Any valid plate, about one in six of them without a chart. */
    public static Arbitrary<Plate> plates() {
        Arbitrary<Plate> scan = withoutChart();
        return Arbitraries.frequencyOf(Tuple.of(1, scan), Tuple.of(5, charts()));
    }

    /** Plates with a palette and at least one row. */
    public static Arbitrary<Plate> charts() {
        return Combinators.combine(palettes(), pleats(), Arbitraries.integers().between(1, 9), withoutChart())
                .flatAs((palette, pleats, rowCount, facts) -> rows(palette, pleats.positions(), rowCount)
                        .flatMap(rows -> onChart(facts.edit()
                                .palette(palette)
                                .pleats(Optional.of(pleats))
                                .rows(rows)
                                .build())));
    }

    /** Texts with letters, quotes, tabs, combining marks and characters beyond U+FFFF; never blank. */
    public static Arbitrary<String> texts() {
        Arbitrary<String> odd = Arbitraries.of(
                "\"",
                "\\",
                "\t",
                "/",
                "\u00e9",
                "e\u0301",
                "\u0301",
                "\u00df",
                "\uac00",
                "\ufb01",
                "\uffff",
                "\ue000",
                "\ud83d\udea2",
                "\ud835\udc9c",
                "\u2028",
                "<b>",
                "{",
                "]",
                ",",
                "\u00a0");
        Arbitrary<String> any = Arbitraries.integers()
                .between(0x20, Character.MAX_CODE_POINT)
                .filter(c -> !Character.isISOControl(c) && (c < 0xd800 || c > 0xdfff))
                .map(Character::toString);
        Arbitrary<String> plain =
                Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(6);
        return Combinators.combine(
                        plain, Arbitraries.oneOf(odd, any, plain).list().ofMaxSize(3))
                .as((word, rest) -> word + String.join("", rest));
    }

    /** Values of unknown keys, a few levels deep. */
    public static Arbitrary<Value> values() {
        return values(2);
    }

    /** Unknown keys, most often none. */
    public static Arbitrary<Unknown> unknowns() {
        Arbitrary<String> keys = texts().filter(key -> !KNOWN_SOMEWHERE.contains(key));
        Arbitrary<Unknown> some =
                Arbitraries.maps(keys, values()).ofMinSize(1).ofMaxSize(3).map(Unknown::new);
        return Arbitraries.frequencyOf(Tuple.of(4, Arbitraries.just(Unknown.NONE)), Tuple.of(1, some));
    }

    public static Arbitrary<Palette> palettes() {
        Arbitrary<Character> keys =
                Arbitraries.of(Palette.KEYS.chars().mapToObj(c -> (char) c).toList());
        return Arbitraries.maps(keys, colours()).ofMinSize(1).ofMaxSize(5).map(Palette::of);
    }

    public static Arbitrary<Colour> colours() {
        return Combinators.combine(
                        texts(),
                        Arbitraries.integers().between(0, 0xffffff),
                        Arbitraries.integers().between(1, 6),
                        texts().optional(),
                        unknowns())
                .as((name, rgb, strands, floss, unknown) ->
                        new Colour(name, String.format("#%06X", rgb), strands, floss, unknown));
    }

    public static Arbitrary<RowId> rowIds() {
        return Arbitraries.integers().between(0, RowId.COUNT - 1).map(RowId::of);
    }

    public static Arbitrary<Pleats> pleats() {
        return Combinators.combine(
                        Arbitraries.integers().between(-50, 50),
                        Arbitraries.integers().between(1, 14),
                        unknowns())
                .as((from, positions, unknown) -> new Pleats(from, from + positions, unknown));
    }

    private static Arbitrary<UUID> ids() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.longs()).as(UUID::new);
    }

    private static Arbitrary<Value> values(int depth) {
        Arbitrary<Value> number = Combinators.combine(
                        Arbitraries.longs().between(-999_999_999_999_999L, 999_999_999_999_999L),
                        Arbitraries.integers().between(0, 15))
                .as((digits, scale) -> new Value.Num(BigDecimal.valueOf(digits, scale)));
        Arbitrary<Value> plain = Arbitraries.oneOf(
                texts().map(Value::of),
                number,
                Arbitraries.of(Value.NOTHING, Value.of(true), Value.of(false), Value.of("")));
        if (depth == 0) {
            return plain;
        }
        Arbitrary<Value> list = values(depth - 1).list().ofMaxSize(3).map(Value.Items::new);
        Arbitrary<Value> object = Arbitraries.maps(texts(), values(depth - 1))
                .ofMaxSize(3)
                .map(entries -> Value.sorted(new Value.Entries(entries)));
        return Arbitraries.oneOf(plain, plain, list, object);
    }

    private static Arbitrary<Plate> withoutChart() {
        Arbitrary<List<String>> list = texts().list().ofMaxSize(3);
        Arbitrary<Draft> tags = Combinators.combine(ids(), texts(), list, list, list, list, ages(), notions())
                .as((id, title, uses, themes, designers, notes, ages, notions) -> new Draft(id.toString(), title)
                        .uses(uses)
                        .themes(themes)
                        .designers(designers)
                        .notes(notes)
                        .ages(ages)
                        .notions(notions));
        return Combinators.combine(
                        tags, texts().optional(), origins(), fromPlates(), states(), cloths(), repeats(), unknowns())
                .as((draft, number, origin, from, state, cloth, repeat, unknown) -> draft.number(number)
                        .origin(origin)
                        .fromPlate(from)
                        .state(state)
                        .cloth(cloth)
                        .repeat(repeat)
                        .unknown(unknown)
                        .build());
    }

    private static Arbitrary<List<Age>> ages() {
        return Arbitraries.of(Age.class).list().ofMaxSize(3);
    }

    private static Arbitrary<Optional<State>> states() {
        return Arbitraries.of(State.class).optional();
    }

    private static Arbitrary<Origin> origins() {
        return Combinators.combine(
                        Arbitraries.of(Origin.KINDS).optional(),
                        texts().optional(),
                        texts().optional(),
                        Arbitraries.of(Origin.USES).optional(),
                        unknowns())
                .as(Origin::new);
    }

    private static Arbitrary<Optional<FromPlate>> fromPlates() {
        return Combinators.combine(texts(), texts(), unknowns())
                .as(FromPlate::new)
                .optional();
    }

    private static Arbitrary<Cloth> cloths() {
        Arbitrary<Optional<Integer>> counts =
                Arbitraries.integers().between(0, 40).optional();
        Arbitrary<Optional<BigDecimal>> measures = Arbitraries.integers()
                .between(0, 9999)
                .map(n -> BigDecimal.valueOf(n, 2))
                .optional();
        return Combinators.combine(
                        counts,
                        measures,
                        counts,
                        measures,
                        gatheringRows().list().ofMaxSize(2),
                        unknowns())
                .as(Cloth::new);
    }

    private static Arbitrary<String> gatheringRows() {
        return Combinators.combine(Arbitraries.integers().between(0, 30), Arbitraries.of("", " 1/2", " 1/4", " 3/4"))
                .as((whole, part) -> whole + part);
    }

    private static Arbitrary<Optional<Repeat>> repeats() {
        Arbitrary<Integer> counts = Arbitraries.integers().between(1, 60);
        return Combinators.combine(counts, counts, unknowns()).as(Repeat::new).optional();
    }

    private static Arbitrary<List<Notion>> notions() {
        return Combinators.combine(
                        texts(), texts().optional(), Arbitraries.integers().between(0, 9), unknowns())
                .as(Notion::new)
                .list()
                .ofMaxSize(2);
    }

    private static Arbitrary<List<Row>> rows(Palette palette, int positions, int count) {
        Arbitrary<String> cells = cells(palette, positions);
        Arbitrary<List<Optional<RowId>>> ids =
                rowIds().optional(0.8).list().ofSize(count).map(PlateArbitraries::withoutDoubles);
        return Combinators.combine(ids, cells.list().ofSize(count)).as((idList, cellList) -> {
            List<Row> rows = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                rows.add(new Row(idList.get(i), cellList.get(i)));
            }
            return rows;
        });
    }

    private static List<Optional<RowId>> withoutDoubles(List<Optional<RowId>> ids) {
        List<Optional<RowId>> out = new ArrayList<>();
        ids.forEach(id -> out.add(id.filter(i -> !out.contains(Optional.of(i)))));
        return out;
    }

    private static Arbitrary<String> cells(Palette palette, int positions) {
        List<Character> letters = new ArrayList<>(palette.entries().keySet());
        letters.add(Row.EMPTY);
        letters.add(Row.EMPTY);
        return Arbitraries.of(letters).list().ofSize(positions).map(list -> {
            StringBuilder out = new StringBuilder();
            list.forEach(out::append);
            return out.toString();
        });
    }

    /** Adds what refers to rows, pleats and colours of a plate. */
    private static Arbitrary<Plate> onChart(Plate plate) {
        Arbitrary<RowId> ids = rowsOf(plate);
        Arbitrary<Character> keys =
                Arbitraries.of(List.copyOf(plate.palette().entries().keySet()));
        return Combinators.combine(
                        starts(plate, ids).list().ofMaxSize(2),
                        lines(plate, keys).list().ofMaxSize(2),
                        marks(plate, ids, keys).list().ofMaxSize(3),
                        remarks(plate, ids).list().uniqueElements(Remark::id).ofMaxSize(3),
                        clashes(plate, ids, keys).list().ofMaxSize(3))
                .as((starts, lines, marks, remarks, clashes) -> plate.edit()
                        .starts(starts)
                        .lines(lines)
                        .marks(marks)
                        .remarks(remarks)
                        .clashes(clashes)
                        .build());
    }

    /** Mostly rows of the plate, at times one that is not there. */
    private static Arbitrary<RowId> rowsOf(Plate plate) {
        List<RowId> there =
                plate.rows().stream().flatMap(row -> row.id().stream()).toList();
        return there.isEmpty()
                ? rowIds()
                : Arbitraries.frequencyOf(Tuple.of(5, Arbitraries.of(there)), Tuple.of(1, rowIds()));
    }

    private static Arbitrary<Integer> positions(Plate plate) {
        return Arbitraries.integers().between(plate.from(), plate.from() + plate.positions() - 1);
    }

    private static Arbitrary<Start> starts(Plate plate, Arbitrary<RowId> ids) {
        return Combinators.combine(
                        ids,
                        positions(plate),
                        Arbitraries.of(CableKind.class),
                        gatheringRows().optional(),
                        unknowns())
                .as(Start::new);
    }

    private static Arbitrary<Line> lines(Plate plate, Arbitrary<Character> keys) {
        Arbitrary<Line> bare = Combinators.combine(
                        gatheringRows(),
                        gatheringRows().optional(),
                        texts(),
                        Arbitraries.integers().between(1, 9).optional(),
                        keys,
                        Arbitraries.integers().between(1, 6),
                        positions(plate),
                        Arbitraries.of(CableKind.class))
                .as((on, to, stitch, steps, key, strands, from, start) ->
                        new Line(on, to, stitch, steps, key, strands, from, from + 4, start, Unknown.NONE));
        return Combinators.combine(bare, unknowns())
                .as((l, unknown) -> new Line(
                        l.on(),
                        l.toRow(),
                        l.stitch(),
                        l.steps(),
                        l.colour(),
                        l.strands(),
                        l.from(),
                        l.to(),
                        l.start(),
                        unknown));
    }

    private static Arbitrary<Mark> marks(Plate plate, Arbitrary<RowId> ids, Arbitrary<Character> keys) {
        Arbitrary<String> places = Combinators.combine(positions(plate), Arbitraries.of("", " 1/2"))
                .as((whole, half) -> whole + half);
        return Combinators.combine(texts(), ids, places, keys, unknowns()).as(Mark::new);
    }

    private static Arbitrary<Remark> remarks(Plate plate, Arbitrary<RowId> ids) {
        Arbitrary<LocalDate> days = Arbitraries.integers()
                .between(0, 700)
                .map(d -> LocalDate.of(2024, 2, 28).plusDays(d));
        return Combinators.combine(
                        rowIds(),
                        ids.optional(),
                        positions(plate).optional(),
                        texts(),
                        days,
                        texts(),
                        Arbitraries.of(true, false),
                        unknowns())
                .as((id, row, at, by, on, text, done, unknown) ->
                        new Remark(id, row, at, at, by, on, text, done, unknown));
    }

    private static Arbitrary<Clash> clashes(Plate plate, Arbitrary<RowId> ids, Arbitrary<Character> keys) {
        return Arbitraries.of(Clash.What.class)
                .flatMap(what -> clashPlace(what, plate, ids, keys)
                        .flatMap(place -> Combinators.combine(
                                        clashValue(what, place, plate, ids, keys),
                                        Combinators.combine(
                                                        clashValue(what, place, plate, ids, keys),
                                                        texts().optional(),
                                                        unknowns())
                                                .as(Clash.Side::new)
                                                .list()
                                                .ofMinSize(1)
                                                .ofMaxSize(3),
                                        unknowns())
                                .as((base, sides, unknown) -> new Clash(what, place, base, sides, unknown))));
    }

    private static Arbitrary<Value.Entries> clashPlace(
            Clash.What what, Plate plate, Arbitrary<RowId> ids, Arbitrary<Character> keys) {
        Arbitrary<Value> rows = Arbitraries.oneOf(
                ids.map(id -> Value.of(id.text())),
                Arbitraries.integers().between(1, plate.rows().size()).map(Value::of));
        Map<String, Arbitrary<Value>> entries = new LinkedHashMap<>();
        for (String key : what.placeKeys()) {
            entries.put(
                    key,
                    switch (key) {
                        case "row" -> rows;
                        case "after" -> Arbitraries.oneOf(rows, Arbitraries.just(Value.NOTHING));
                        case "from", "to" -> positions(plate).map(Value::of);
                        case "pleat" ->
                            positions(plate).map(p -> what == Clash.What.MARK ? Value.of(p + " 1/2") : Value.of(p));
                        case "end" -> Arbitraries.of("from", "to").map(Value::of);
                        case "key" -> keys.map(k -> Value.of(k.toString()));
                        case "id" -> rowIds().map(id -> Value.of(id.text()));
                        case "on", "to row" -> gatheringRows().map(Value::of);
                        case "field" ->
                            Arbitraries.of("title", "origin.use", "cloth.fullness", "repeat", "unheard of")
                                    .map(Value::of);
                        default -> texts().map(CodePoints::nfc).map(Value::of);
                    });
        }
        Arbitrary<Map<String, Value>> all = Arbitraries.just(new TreeMap<>());
        for (Map.Entry<String, Arbitrary<Value>> entry : entries.entrySet()) {
            all = Combinators.combine(all, entry.getValue()).as((map, value) -> {
                Map<String, Value> more = new LinkedHashMap<>(map);
                more.put(entry.getKey(), value);
                return more;
            });
        }
        return all.map(Value.Entries::new).map(PlateArbitraries::upToOneEnd);
    }

    /** Makes {@code to} at least {@code from}. */
    private static Value.Entries upToOneEnd(Value.Entries place) {
        if (place.entries().get("from") instanceof Value.Num from
                && place.entries().get("to") instanceof Value.Num to
                && to.number().compareTo(from.number()) < 0) {
            Map<String, Value> entries = new LinkedHashMap<>(place.entries());
            entries.put("to", from);
            return new Value.Entries(entries);
        }
        return place;
    }

    private static Arbitrary<Value> clashValue(
            Clash.What what, Value.Entries place, Plate plate, Arbitrary<RowId> ids, Arbitrary<Character> keys) {
        Palette palette = plate.palette();
        Arbitrary<Value> some =
                switch (what) {
                    case CABLES -> cells(palette, length(place)).map(Value::of);
                    case ROW, TWINS -> cells(palette, plate.positions()).map(Value::of);
                    case ROWS ->
                        Combinators.combine(rowIds(), cells(palette, plate.positions()))
                                .as((id, cells) -> Value.ofTexts(List.of(id.text() + " " + cells)));
                    case ORDER -> ids.map(id -> Value.of(id.text()));
                    case PLEATS -> positions(plate).map(Value::of);
                    case FIELD -> fieldValue(place);
                    case COLOUR -> colours().map(Colour::value);
                    case START -> starts(plate, ids).map(Start::value);
                    case LINE -> lines(plate, keys).map(Line::value);
                    case MARK -> marks(plate, ids, keys).map(Mark::value);
                    case NOTION ->
                        notions().filter(n -> !n.isEmpty()).map(n -> n.get(0).value());
                    case REMARK -> remarks(plate, ids).map(Remark::value);
                    case FIGURE ->
                        Combinators.combine(positions(plate), positions(plate), Arbitraries.of(true, false))
                                .as((rows, pleats, mirrored) -> new Value.Builder()
                                        .put("rows", rows)
                                        .put("pleats", pleats)
                                        .put("mirrored", Value.of(mirrored))
                                        .build());
                };
        return Arbitraries.frequencyOf(Tuple.of(4, some), Tuple.of(1, Arbitraries.just(Value.NOTHING)));
    }

    private static int length(Value.Entries place) {
        Value.Num from = (Value.Num) place.entries().get("from");
        Value.Num to = (Value.Num) place.entries().get("to");
        return to.number().intValue() - from.number().intValue() + 1;
    }

    private static Arbitrary<Value> fieldValue(Value.Entries place) {
        return switch (((Value.Text) place.entries().get("field")).string()) {
            case "title" -> texts().map(CodePoints::nfc).map(Value::of);
            case "origin.use" -> Arbitraries.of(Origin.USES).map(Value::of);
            case "cloth.fullness" ->
                Arbitraries.integers().between(1, 99).map(n -> new Value.Num(BigDecimal.valueOf(n, 1)));
            case "repeat" ->
                repeats().filter(Optional::isPresent).map(r -> r.get().value());
            default -> values();
        };
    }
}
