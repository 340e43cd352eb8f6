package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.model.join.ClashWords;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** What a clash is about and what its answers are, in words. */
final class ValueWords {
    private ValueWords() {}

    /** Where and what: {@code Cables in row 7, pleats 12 to 14}. */
    static String place(Plate plate, Clash clash) {
        return switch (clash.what()) {
            case COLOUR ->
                "The colour "
                        + clash.textAt("key")
                                .map(key -> plate.palette()
                                        .get(key.charAt(0))
                                        .map(Colour::name)
                                        .orElse(key))
                                .orElse("");
            case FIELD -> "The " + field(clash.textAt("field").orElse("entry"));
            case START -> "The start" + at(plate, clash);
            case MARK -> "The " + clash.textAt("stitch").orElse("mark") + at(plate, clash);
            case LINE ->
                "The geometric line on gathering row " + clash.textAt("on").orElse("");
            case NOTION ->
                "The notion " + clash.textAt("kind").orElse("")
                        + clash.textAt("size").map(size -> ", " + size).orElse("");
            case REMARK -> "A remark";
            default -> ClashWords.place(plate, clash);
        };
    }

    /** What stands in the joined plate while a clash is open, and how it can be decided. */
    static String meanwhile(Clash clash) {
        boolean isTakenOut =
                clash.sides().stream().anyMatch(side -> side.value().equals(Value.NOTHING));
        String stands =
                switch (clash.what()) {
                    case ROW -> "the changed row stands";
                    case ROWS -> "the rows of both stand";
                    case TWINS -> "all of these rows stand";
                    case PLEATS -> "the wider chart stands";
                    case START, LINE, MARK, NOTION, REMARK ->
                        isTakenOut ? "the changed one stands" : "what was before stands";
                    default -> "what was before stands";
                };
        boolean isPaintable = clash.what() == Clash.What.CABLES || clash.what() == Clash.What.ROW;
        return "Until you decide, " + stands + (isPaintable ? ". Take one, or paint it in the chart." : ". Take one.");
    }

    private static String field(String key) {
        return switch (key) {
            case "origin.kind" -> "kind of origin";
            case "origin.by" -> "origin";
            case "origin.place" -> "place of the paper";
            case "origin.use" -> "allowed use";
            default -> key.startsWith("cloth.") ? key.substring(6) + " of the cloth" : key;
        };
    }

    private static String at(Plate plate, Clash clash) {
        String row = clash.textAt("row")
                .filter(RowId::isRowId)
                .map(id -> plate.indexOf(new RowId(id)))
                .filter(r -> r >= 0)
                .map(r -> " in row " + plate.numberFromBottom(r))
                .orElse("");
        String pleat = clash.textAt("pleat")
                .or(() -> clash.numberAt("pleat").map(String::valueOf))
                .map(p -> ", pleat " + p)
                .orElse("");
        return row + pleat;
    }

    /** A value: cells by colour names as they come, {@code 4 chalk, 2 empty}; all else as people say it. */
    static String of(Plate plate, Clash clash, Value value) {
        return switch (clash.what()) {
            case CABLES -> text(value).map(cells -> runs(plate, cells)).orElse("nothing");
            case ROW, TWINS -> row(plate, clash, value);
            case ROWS -> rows(value);
            case ORDER -> above(plate, value);
            case PLEATS -> "the chart ends at pleat " + ClashWords.value(value);
            case COLOUR -> entry(value).map(ValueWords::colour).orElse("taken out");
            case FIGURE -> entry(value).map(ValueWords::motion).orElse("where it was");
            default -> value.equals(Value.NOTHING) ? "nothing" : ClashWords.value(value);
        };
    }

    private static Optional<String> text(Value value) {
        return value instanceof Value.Text t ? Optional.of(t.string()) : Optional.empty();
    }

    private static Optional<Map<String, Value>> entry(Value value) {
        return value instanceof Value.Entries e ? Optional.of(e.entries()) : Optional.empty();
    }

    private static String row(Plate plate, Clash clash, Value value) {
        if (value.equals(Value.NOTHING)) {
            return "the row taken out";
        }
        return RowChange.of(clash.base(), value)
                .map(c -> "the row with pleats " + (plate.from() + c.from()) + " to " + (plate.from() + c.to() + 1)
                        + ": " + runs(plate, c.cells()))
                .orElse("the row as it was");
    }

    private static String runs(Plate plate, String cables) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int k = 1; k <= cables.length(); k++) {
            if (k == cables.length() || cables.charAt(k) != cables.charAt(start)) {
                String name = plate.palette()
                        .get(cables.charAt(start))
                        .map(Colour::name)
                        .orElse("empty");
                runs.add((k - start) + " " + name);
                start = k;
            }
        }
        return String.join(", ", runs);
    }

    private static String rows(Value value) {
        int n = value instanceof Value.Items items ? items.items().size() : 0;
        return n == 0 ? "no row" : n + (n == 1 ? " row" : " rows");
    }

    private static String above(Plate plate, Value value) {
        return text(value)
                .filter(RowId::isRowId)
                .map(id -> plate.indexOf(new RowId(id)))
                .filter(r -> r >= 0)
                .map(r -> "below row " + plate.numberFromBottom(r))
                .orElse("at the top");
    }

    private static String colour(Map<String, Value> entry) {
        return entry.entrySet().stream()
                .map(e -> switch (e.getKey()) {
                    case "strands" -> ClashWords.value(e.getValue()) + " strands";
                    case "floss" -> "floss " + ClashWords.value(e.getValue());
                    default -> ClashWords.value(e.getValue());
                })
                .collect(Collectors.joining(", "));
    }

    private static String motion(Map<String, Value> move) {
        List<String> parts = new ArrayList<>();
        text(move.getOrDefault("mirrored", Value.NOTHING)).ifPresent(how -> parts.add("mirrored " + how));
        moved(move, "rows", "row", " up", " down").ifPresent(parts::add);
        moved(move, "pleats", "pleat", " right", " left").ifPresent(parts::add);
        return parts.isEmpty() ? "where it was" : "moved: " + String.join(", ", parts);
    }

    private static Optional<String> moved(Map<String, Value> move, String key, String one, String more, String less) {
        int n = move.get(key) instanceof Value.Num num ? num.number().intValue() : 0;
        String many = Math.abs(n) + " " + one + (Math.abs(n) == 1 ? "" : "s");
        return n == 0 ? Optional.empty() : Optional.of(many + (n > 0 ? more : less));
    }
}
