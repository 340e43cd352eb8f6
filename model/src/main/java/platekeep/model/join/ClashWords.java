package platekeep.model.join;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Open clashes in words, a sentence each. Rows are counted from the bottom, pleats as a stitcher counts them. */
public final class ClashWords {
    private final Plate plate;

    private ClashWords(Plate plate) {
        this.plate = plate;
    }

    /** The plate's open clashes in their order. */
    public static List<String> of(Plate plate) {
        ClashWords words = new ClashWords(plate);
        return plate.clashes().stream().map(words::sentence).toList();
    }

    private String sentence(Clash clash) {
        String sides = clash.sides().stream()
                .map(side -> text(side.value())
                        + side.by().map(by -> " (" + by + ")").orElse(""))
                .collect(Collectors.joining(" or "));
        return place(clash) + ": before " + text(clash.base()) + ", now " + sides + ".";
    }

    private static String text(Value value) {
        if (value instanceof Value.Nothing) {
            return "nothing";
        }
        if (value instanceof Value.Entries object) {
            return object.entries().entrySet().stream()
                    .map(entry -> entry.getKey() + " " + text(entry.getValue()))
                    .collect(Collectors.joining(", "));
        }
        return value instanceof Value.Text text ? text.string() : value.text();
    }

    /** Where and what one clash of the plate is: {@code Cables in row 7, pleats 12 to 14}. */
    public static String place(Plate plate, Clash clash) {
        return new ClashWords(plate).place(clash);
    }

    /** A value of a clash in words; cells stay cells. */
    public static String value(Value value) {
        return text(value);
    }

    private String place(Clash clash) {
        return switch (clash.what()) {
            case CABLES -> "Cables in " + row(clash) + pleats(clash);
            case ROW -> "All of " + row(clash);
            case ROWS ->
                "New rows below " + clash.textAt("after").map(this::rowOf).orElse("the top");
            case TWINS -> "Rows that look alike at " + row(clash);
            case ORDER -> "The place of " + row(clash);
            case PLEATS ->
                "The "
                        + clash.textAt("end")
                                .map(end -> "from".equals(end) ? "left" : "right")
                                .orElse("") + " end of the chart";
            case FIELD -> "The entry " + clash.textAt("field").orElse("");
            case COLOUR -> "The colour " + clash.textAt("key").orElse("");
            case FIGURE -> "The figure that stood on " + row(clash) + pleats(clash);
            case START, LINE, MARK, NOTION, REMARK ->
                "The " + clash.what().word() + " at " + clash.place().text();
        };
    }

    private String row(Clash clash) {
        Optional<Integer> number = clash.numberAt("row");
        return number.map(n -> "row " + n)
                .orElseGet(() -> clash.textAt("row").map(this::rowOf).orElse("a row"));
    }

    private String rowOf(String id) {
        int index = RowId.isRowId(id) ? plate.indexOf(new RowId(id)) : -1;
        return index < 0 ? "row " + id : "row " + plate.numberFromBottom(index);
    }

    private static String pleats(Clash clash) {
        Optional<Integer> from = clash.numberAt("from");
        Optional<Integer> to = clash.numberAt("to");
        return from.isPresent() && to.isPresent() ? ", pleats " + from.get() + " to " + (to.get() + 1) : "";
    }
}
