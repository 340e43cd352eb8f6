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

    /**
     * A gathering row some part of a space further down, or up where negative.
     *
     * @param above the fraction's upper number
     * @param below its lower number, at least 1
     * @return empty where the text names no gathering row, or the other one could not be written or lies above row 1
     */
    public static Optional<String> lower(String text, int above, int below) {
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        int under = m.group(2) == null ? 1 : Integer.parseInt(m.group(3));
        int over = Integer.parseInt(m.group(1)) * under + (m.group(2) == null ? 0 : Integer.parseInt(m.group(2)));
        int sum = over * below + above * under;
        int all = under * below;
        int rest = Math.floorMod(sum, all);
        int by = gcd(rest, all);
        String lower = Math.floorDiv(sum, all) + (rest == 0 ? "" : " " + rest / by + "/" + all / by);
        return Optional.of(lower).filter(t -> sum >= all && isGatheringRow(t));
    }

    private static int gcd(int a, int b) {
        return a == 0 ? b : gcd(b % a, a);
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
