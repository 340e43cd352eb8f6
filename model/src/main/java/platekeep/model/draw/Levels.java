package platekeep.model.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Start;

/**
 * How the gathering rows lie behind a picture. A start that says on which gathering row it lies fixes them; else the
 * lowest row of the chart is taken to lie on the last gathering row, and without that number they stay nameless.
 */
final class Levels {
    /** Stacked rows to one gathering space: common practice, no source. */
    static final int STACKED_ROWS = 5;

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,4})(?: (\\d{1,2})/(\\d{1,2}))?");

    private final Plate plate;
    private final double space;
    private final double anchorRow;
    private final OptionalDouble anchorNumber;

    Levels(Plate plate) {
        this.plate = plate;
        this.space = plate.cloth().stackedRows().filter(n -> n > 0).orElse(STACKED_ROWS);
        Optional<Start> fixed = plate.starts().stream()
                .filter(s -> s.on().isPresent() && number(s.on().get()).isPresent() && plate.indexOf(s.row()) >= 0)
                .findFirst();
        this.anchorRow =
                fixed.map(s -> plate.indexOf(s.row()) + 0.5).orElse(plate.rows().size() - 0.5);
        this.anchorNumber = fixed.map(s -> number(s.on().get()))
                .orElseGet(() ->
                        plate.cloth().gatheringRows().map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    /** The number that a text such as {@code 2 1/2} stands for. */
    static OptionalDouble number(String text) {
        Matcher m = NUMBER.matcher(text);
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double whole = Integer.parseInt(m.group(1));
        if (m.group(2) == null) {
            return OptionalDouble.of(whole);
        }
        int below = Integer.parseInt(m.group(3));
        return below == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(whole + Integer.parseInt(m.group(2)) / (double) below);
    }

    /** How far down a gathering row lies, in rows from the top edge of the chart. */
    OptionalDouble y(String gatheringRow) {
        OptionalDouble n = number(gatheringRow);
        if (n.isEmpty() || anchorNumber.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(anchorRow + (n.getAsDouble() - anchorNumber.getAsDouble()) * space);
    }

    /** The gathering row or half space nearest to a height, not above row 1; empty while they have no numbers. */
    Optional<String> nearest(double y) {
        if (anchorNumber.isEmpty()) {
            return Optional.empty();
        }
        long halves = Math.max(2, Math.round(2 * (anchorNumber.getAsDouble() + (y - anchorRow) / space)));
        return Optional.of(halves / 2 + (halves % 2 == 0 ? "" : " 1/2"));
    }

    /** The gathering rows between two heights, top first. */
    List<GatheringRow> between(double top, double bottom) {
        List<GatheringRow> found = new ArrayList<>();
        for (int k = (int) Math.ceil((top - anchorRow) / space); anchorRow + k * space <= bottom; k++) {
            double y = anchorRow + k * space;
            if (anchorNumber.isEmpty()) {
                found.add(new GatheringRow("", y));
            } else if (isThere(anchorNumber.getAsDouble() + k)) {
                found.add(new GatheringRow(Long.toString(Math.round(anchorNumber.getAsDouble() + k)), y));
            }
        }
        return List.copyOf(found);
    }

    private boolean isThere(double number) {
        return number >= 1 && number <= plate.cloth().gatheringRows().orElse(Integer.MAX_VALUE);
    }
}
