package platekeep.model.plate;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A gathering row as text, counted from the top: a whole number with an optional fraction of the space below it
 * ({@code 2}, {@code 2 1/2}, {@code 2 1/4}).
 */
public final class GatheringRow {

    private static final Pattern TEXT = Pattern.compile("(0|[1-9][0-9]{0,3})(?: ([1-9][0-9]?)/([1-9][0-9]?))?");

    private GatheringRow() {}

    /** Whether the text names a gathering row. */
    public static boolean isGatheringRow(String text) {
        return TEXT.matcher(text).matches();
    }

    /** The place in gathering spaces below row 0; empty when the text names none. */
    public static Optional<Double> place(String text) {
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        double whole = Integer.parseInt(m.group(1));
        double part = m.group(2) == null ? 0 : Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3));
        return Optional.of(whole + part);
    }
}
