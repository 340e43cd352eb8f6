package platekeep.client.command.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import platekeep.model.join.ClashWords;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Value;

/**
 * A plate as plain text for people, one thing a line, so that a tool which shows changed lines shows what changed.
 * Everything that the plate holds is in it.
 */
public final class ReadablePlate {
    private final Plate plate;
    private final List<String> lines = new ArrayList<>();

    private ReadablePlate(Plate plate) {
        this.plate = plate;
    }

    /** With the rows named by their numbers from the bottom, for reading. */
    public static List<String> numbered(Plate plate) {
        int width = String.valueOf(plate.rows().size()).length();
        return new ReadablePlate(plate)
                .all(i -> String.format(Locale.ROOT, "%" + width + "d", plate.numberFromBottom(i)));
    }

    /** With the rows named by their ids, which stay the same when rows are put in or taken out below them. */
    public static List<String> withRowIds(Plate plate) {
        return new ReadablePlate(plate)
                .all(i -> plate.rows().get(i).id().map(Object::toString).orElse("    "));
    }

    private List<String> all(IntFunction<String> rowName) {
        lines.add(plate.title());
        facts();
        chart(rowName);
        extras();
        return lines;
    }

    private void facts() {
        fact("number", plate.number());
        fact("id", Optional.of(plate.id()));
        entries("origin", plate.origin().value());
        plate.fromPlate().ifPresent(from -> entries("from plate", from.value()));
        fact("state", plate.state().map(state -> state.word()));
        facts("for", plate.uses());
        facts("theme", plate.themes());
        facts("age", plate.ages().stream().map(age -> age.word()).toList());
        facts("designer", plate.designers());
        facts("note", plate.notes());
        plate.palette().entries().forEach((key, colour) -> fact("colour " + key, Optional.of(colourText(colour))));
        entries("cloth", plate.cloth().value());
        plate.repeat().ifPresent(repeat -> entries("repeat", repeat.value()));
    }

    private static String colourText(Colour colour) {
        return colour.name() + ", " + colour.srgb() + ", " + count(colour.strands(), "strand")
                + colour.floss().map(floss -> ", floss " + floss).orElse("")
                + (colour.unknown().entries().isEmpty()
                        ? ""
                        : ", " + pairs(colour.unknown().entries()));
    }

    private void chart(IntFunction<String> rowName) {
        if (plate.pleats().isEmpty()) {
            return;
        }
        plate.pleats()
                .ifPresent(pleats -> fact(
                        "chart",
                        Optional.of("pleats " + pleats.from() + " to " + pleats.to() + ", "
                                + count(plate.rows().size(), "row"))));
        List<Row> rows = plate.rows();
        for (int i = 0; i < rows.size(); i++) {
            lines.add("  " + rowName.apply(i) + "  " + rows.get(i).cells());
        }
    }

    private void extras() {
        plate.starts().forEach(start -> entries("start", start.value()));
        plate.lines().forEach(line -> entries("line", line.value()));
        plate.marks().forEach(mark -> entries("mark", mark.value()));
        plate.notions().forEach(notion -> entries("notion", notion.value()));
        plate.remarks().forEach(remark -> entries("remark", remark.value()));
        ClashWords.of(plate).forEach(words -> fact("open clash", Optional.of(words)));
        plate.unknown().entries().forEach((key, value) -> fact(key, Optional.of(value.text())));
    }

    private void fact(String name, Optional<String> text) {
        text.ifPresent(t -> lines.add(name + ": " + t));
    }

    private void facts(String name, List<String> texts) {
        texts.forEach(text -> fact(name, Optional.of(text)));
    }

    private void entries(String name, Value.Entries entries) {
        if (!entries.entries().isEmpty()) {
            fact(name, Optional.of(pairs(entries.entries())));
        }
    }

    private static String pairs(Map<String, Value> entries) {
        return entries.entrySet().stream()
                .map(entry -> entry.getKey() + " " + plain(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String plain(Value value) {
        if (value instanceof Value.Items list) {
            return list.items().stream().map(ReadablePlate::plain).collect(Collectors.joining(" and "));
        }
        return value instanceof Value.Text text ? text.string() : value.text();
    }

    /** A number with its noun: {@code 1 row}, {@code 4 rows}. */
    public static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
