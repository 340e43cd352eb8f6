package platekeep.model.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Colour;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Reads the small objects of a plate: colours, starts, lines, marks and so on; they also stand in clashes. */
final class PartReader {
    private static final List<String> ORIGIN = List.of("kind", "by", "place", "use");
    private static final List<String> FROM_PLATE = List.of("id", "version");
    private static final List<String> COLOUR = List.of("name", "srgb", "strands", "floss");
    private static final List<String> CLOTH =
            List.of("gathering rows", "spacing mm", "stacked rows", "fullness", "holding");
    private static final List<String> START = List.of("row", "pleat", "cable", "on");
    private static final List<String> REPEAT = List.of("every", "times");
    private static final List<String> LINE =
            List.of("on", "to row", "stitch", "steps", "colour", "strands", "from", "to", "start");
    private static final List<String> MARK = List.of("stitch", "row", "pleat", "colour");
    private static final List<String> NOTION = List.of("kind", "size", "count");
    private static final List<String> REMARK = List.of("id", "row", "from", "to", "by", "on", "text", "done");
    private static final RowId STAND_IN = new RowId("0000");

    private final Shapes shapes;
    private Palette palette = Palette.EMPTY;

    PartReader(Shapes shapes) {
        this.shapes = shapes;
    }

    Shapes shapes() {
        return shapes;
    }

    /** The palette that lines, marks and clashes have their letters from: the last one that {@link #palette} read. */
    Palette palette() {
        return palette;
    }

    Palette palette(Optional<Piece> piece) {
        SortedMap<Character, Colour> entries = new TreeMap<>();
        String last = "";
        for (var entry : piece.flatMap(p -> shapes.object(p, "colours"))
                .map(Piece.Obj::members)
                .orElseGet(java.util.Map::of)
                .entrySet()) {
            String key = entry.getKey();
            int at = entry.getValue().at();
            Optional<Colour> colour = colour(entry.getValue().piece());
            if (!Words.COLOUR_KEY.test(key)) {
                shapes.problems()
                        .found(
                                Rule.COLOUR_KEY,
                                at,
                                "the key of a colour is " + Words.COLOUR_KEY_SAID + ", not " + Say.quoted(key)
                                        + "; change it.");
                continue;
            }
            if (CodePoints.ORDER.compare(key, last) < 0) {
                shapes.problems().found(Rule.LIST_ORDER, at, "the colours stood out of order; they are sorted now.");
            }
            last = key;
            entries.put(key.charAt(0), colour.orElse(new Colour("", "#000000", 1)));
        }
        palette = Palette.of(entries);
        return palette;
    }

    Optional<Colour> colour(Piece piece) {
        return fields(
                piece,
                "colour",
                COLOUR,
                f -> new Colour(
                        f.text("name"),
                        f.fitting("srgb", Rule.SRGB_FORM, Words.SRGB, Words.SRGB_SAID),
                        f.whole("strands", Rule.STRANDS, 1, 6),
                        f.maybeText("floss"),
                        f.unknown()));
    }

    Origin origin(Fields plate) {
        return plate.maybeFields("origin", ORIGIN)
                .map(f -> new Origin(
                        f.maybeFitting("kind", Rule.ORIGIN_KIND, Origin.KINDS::contains, Words.oneOf(Origin.KINDS)),
                        f.maybeText("by"),
                        f.maybeText("place"),
                        f.maybeFitting("use", Rule.ORIGIN_USE, Origin.USES::contains, Words.oneOf(Origin.USES)),
                        f.unknown()))
                .orElse(Origin.NONE);
    }

    Optional<FromPlate> fromPlate(Piece piece) {
        return fields(
                piece, "from plate", FROM_PLATE, f -> new FromPlate(f.text("id"), f.text("version"), f.unknown()));
    }

    Cloth cloth(Fields plate) {
        return plate.maybeFields("cloth", CLOTH)
                .map(f -> new Cloth(
                        f.maybeWhole("gathering rows"),
                        f.maybeDecimal("spacing mm"),
                        f.maybeWhole("stacked rows"),
                        f.maybeDecimal("fullness"),
                        holding(f.maybeList("holding")),
                        f.unknown()))
                .orElse(Cloth.NONE);
    }

    List<String> holding(List<Piece> pieces) {
        return pieces.stream()
                .map(p ->
                        shapes.fitting(p, "holding", Rule.GATHERING_ROW, Words.GATHERING_ROW, Words.GATHERING_ROW_SAID))
                .toList();
    }

    Optional<Repeat> repeat(Piece piece) {
        return fields(piece, "repeat", REPEAT, f -> new Repeat(f.whole("every"), f.whole("times"), f.unknown()));
    }

    Optional<Start> start(Piece piece) {
        return fields(
                piece,
                "start",
                START,
                f -> new Start(row(f), f.whole("pleat"), cable(f, "cable"), gatheringRow(f, "on"), f.unknown()));
    }

    Optional<Line> line(Piece piece) {
        return fields(
                piece,
                "line",
                LINE,
                f -> new Line(
                        f.fitting("on", Rule.GATHERING_ROW, Words.GATHERING_ROW, Words.GATHERING_ROW_SAID),
                        gatheringRow(f, "to row"),
                        f.text("stitch"),
                        f.maybeWhole("steps"),
                        colourKey(f),
                        f.whole("strands", Rule.STRANDS, 1, 6),
                        f.whole("from"),
                        f.whole("to"),
                        cable(f, "start"),
                        f.unknown()));
    }

    Optional<Mark> mark(Piece piece) {
        return fields(
                piece,
                "mark",
                MARK,
                f -> new Mark(
                        f.text("stitch"),
                        row(f),
                        f.fitting("pleat", Rule.PLEAT_FORM, Words.PLEAT, Words.PLEAT_SAID),
                        colourKey(f),
                        f.unknown()));
    }

    Optional<Notion> notion(Piece piece) {
        return fields(
                piece,
                "notion",
                NOTION,
                f -> new Notion(f.text("kind"), f.maybeText("size"), f.whole("count"), f.unknown()));
    }

    Optional<Remark> remark(Piece piece) {
        return fields(
                piece,
                "remark",
                REMARK,
                f -> new Remark(
                        rowId(f.fitting("id", Rule.ROW_ID, Words.ROW_ID, Words.ROW_ID_SAID)),
                        f.maybeFitting("row", Rule.ROW_ID, Words.ROW_ID, Words.ROW_ID_SAID)
                                .map(RowId::new),
                        f.maybeWhole("from"),
                        f.maybeWhole("to"),
                        f.text("by"),
                        date(f),
                        f.text("text"),
                        f.truth("done"),
                        f.unknown()));
    }

    /** Reads each piece of a list; what is no object is reported and left out. */
    static <T> List<T> each(List<Piece> pieces, Function<Piece, Optional<T>> reader) {
        List<T> out = new ArrayList<>();
        pieces.forEach(piece -> reader.apply(piece).ifPresent(out::add));
        return out;
    }

    private <T> Optional<T> fields(Piece piece, String name, List<String> known, Function<Fields, T> make) {
        return shapes.fields(piece, name, known).map(make);
    }

    private static RowId row(Fields f) {
        return rowId(f.fitting("row", Rule.ROW_ID, Words.ROW_ID, Words.ROW_ID_SAID));
    }

    private static RowId rowId(String text) {
        return text.isEmpty() ? STAND_IN : new RowId(text);
    }

    private static Optional<String> gatheringRow(Fields f, String key) {
        return f.maybeFitting(key, Rule.GATHERING_ROW, Words.GATHERING_ROW, Words.GATHERING_ROW_SAID);
    }

    private static CableKind cable(Fields f, String key) {
        return Words.cable(f.fitting(key, Rule.CABLE_WORD, Words.CABLE, Words.CABLE_SAID))
                .orElse(CableKind.DOWN);
    }

    private char colourKey(Fields f) {
        String key = f.fitting("colour", Rule.COLOUR_KEY, Words.COLOUR_KEY, Words.COLOUR_KEY_SAID);
        if (!key.isEmpty() && !palette.has(key.charAt(0))) {
            shapes.problems()
                    .found(
                            Rule.COLOUR_MISSING,
                            f.at("colour"),
                            "the colour " + Say.quoted(key) + " is not in \"colours\"; add it there.");
        }
        return key.isEmpty() ? 'a' : key.charAt(0);
    }

    private LocalDate date(Fields f) {
        String text = f.fitting("on", Rule.DATE_FORM, Words.DATE, Words.DATE_SAID);
        Optional<LocalDate> date = Words.date(text);
        if (date.isEmpty() && !text.isEmpty()) {
            shapes.problems().found(Rule.DATE_EXISTS, f.at("on"), "the calendar has no day " + text + "; change it.");
        }
        return date.orElse(LocalDate.EPOCH);
    }
}
