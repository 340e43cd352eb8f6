package platekeep.model.find;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range of sizes, both ends included; written {@code 41-80}, or {@code 201-} where it has no upper end.
 *
 * @param from at least 0
 * @param to not below {@code from}
 */
public record Range(int from, int to) {
    /** Where a range has no upper end. */
    public static final int OPEN = Integer.MAX_VALUE;

    /** Pleats that a plate needs, as the gallery groups them. */
    static final List<Range> PLEATS = upTo(40, 60, 80, 100, 140, 200);

    /** Rows of a plate, likewise. */
    static final List<Range> ROWS = upTo(10, 20, 30, 40, 60);

    private static final Pattern TYPED = Pattern.compile(
            "(?:up to|at most|<) ?(\\d{1,9})|(?:from|at least|>) ?(\\d{1,9})|(\\d{1,9})(?: ?(?:-|to) ?(\\d{1,9}))?");
    private static final Pattern TEXT = Pattern.compile("(\\d{1,9})-(\\d{0,9})");

    public Range {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("no range: " + from + " to " + to);
        }
    }

    private static List<Range> upTo(Integer... ends) {
        List<Range> ranges = new java.util.ArrayList<>();
        int from = 1;
        for (int end : ends) {
            ranges.add(new Range(from, end));
            from = end + 1;
        }
        ranges.add(new Range(from, OPEN));
        return List.copyOf(ranges);
    }

    /** As it is typed: {@code 60-90}, {@code 60 to 90}, {@code up to 90}, {@code from 60} or just {@code 60}. */
    public static Optional<Range> typed(String text) {
        Matcher matcher = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        if (matcher.group(1) != null) {
            return of("1-" + matcher.group(1));
        }
        if (matcher.group(2) != null) {
            return of(matcher.group(2) + "-");
        }
        return of(matcher.group(3) + "-" + (matcher.group(4) == null ? matcher.group(3) : matcher.group(4)));
    }

    /** From its text. */
    public static Optional<Range> of(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int from = Integer.parseInt(matcher.group(1));
        int to = matcher.group(2).isEmpty() ? OPEN : Integer.parseInt(matcher.group(2));
        return to < from ? Optional.empty() : Optional.of(new Range(from, to));
    }

    public String text() {
        return from + "-" + (to == OPEN ? "" : to);
    }

    /** In words for people, such as {@code 41 to 80}. */
    public String words() {
        return to == OPEN ? from + " and more" : from <= 1 ? "up to " + to : from == to ? "" + to : from + " to " + to;
    }

    public boolean holds(int size) {
        return size >= from && size <= to;
    }
}
