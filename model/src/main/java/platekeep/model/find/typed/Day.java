package platekeep.model.find.typed;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day, a month, a year or ten years, as it was typed: {@code 2019}, {@code 2019-05}, {@code 5/2019}, {@code May 2019},
 * {@code 2019-05-03}, {@code 3 May 2019}, {@code 1990s}. A day of figures alone is taken with the year first only, since
 * with the year last one country writes the month first and another the day.
 *
 * @param from the first day
 * @param to the last day
 * @param words as it is told
 */
record Day(LocalDate from, LocalDate to, String words) {
    private static final int LETTERS = 3;
    private static final int DECADE = 10;
    private static final String YEAR = "(?:19|20)\\d\\d";
    private static final String MONTH =
            "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?"
                    + "|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\\.?";
    private static final String MONTH_NUMBER = "(?:0?[1-9]|1[0-2])";
    private static final String DAY = "(?:0?[1-9]|[12]\\d|3[01])";
    private static final String DAY_WORD = DAY + "(?:st|nd|rd|th)?";

    /** In the order in which they are tried; each with groups named year, month and day as far as it has them. */
    private static final List<String> FORMS = List.of(
            "(?<day>" + DAY_WORD + ")\\.? ?(?:of )?(?<month>" + MONTH + "),? ?(?<year>" + YEAR + ")",
            "(?<month>" + MONTH + ") ?(?<day>" + DAY_WORD + "),? (?<year>" + YEAR + ")",
            "(?<month>" + MONTH + "),? ?(?:of )?(?<year>" + YEAR + ")",
            "(?<year>" + YEAR + ")[-/.](?<month>" + MONTH_NUMBER + ")[-/.](?<day>" + DAY + ")",
            "(?<year>" + YEAR + ")[-/.](?<month>" + MONTH_NUMBER + ")",
            "(?<month>" + MONTH_NUMBER + ")[-/.](?<year>" + YEAR + ")",
            "(?<year>" + YEAR + ") (?<month>" + MONTH + ")(?!,? ?" + YEAR + ")",
            "(?<decade>(?:19|20)\\d0)['\u2019]?s",
            "(?<year>" + YEAR + ")");

    /** Nothing of a longer number or word, such as {@code H-2019}, stands before and after. */
    static final String BEFORE = "(?<![\\p{L}\\d])(?<![\\p{L}\\d][-/.])";

    static final String AFTER = "(?![-/.][\\p{L}\\d])";

    /** What may be one, without groups of its own. */
    static final String TEXT = "(?:" + String.join("|", FORMS).replaceAll("\\(\\?<[a-z]+>", "(?:") + ")(?![\\p{L}\\d])";

    private static final List<Pattern> PATTERNS =
            FORMS.stream().map(Pattern::compile).toList();

    /**
     * @param text in lower case; empty where it is none or there is no such day
     */
    static Optional<Day> of(String text) {
        return PATTERNS.stream()
                .map(pattern -> pattern.matcher(text))
                .filter(Matcher::matches)
                .findFirst()
                .flatMap(Day::of);
    }

    private static Optional<Day> of(Matcher matcher) {
        String form = matcher.pattern().pattern();
        if (form.contains("?<decade>")) {
            return Optional.of(decade(Integer.parseInt(matcher.group("decade"))));
        }
        int year = Integer.parseInt(matcher.group("year"));
        if (!form.contains("?<month>")) {
            return Optional.of(new Day(LocalDate.of(year, 1, 1), LocalDate.of(year, Month.DECEMBER, 31), "" + year));
        }
        Month month = month(matcher.group("month"));
        return form.contains("?<day>")
                ? day(year, month, matcher.group("day"))
                : Optional.of(month(LocalDate.of(year, month, 1)));
    }

    private static Day decade(int year) {
        return new Day(
                LocalDate.of(year, 1, 1),
                LocalDate.of(year, 1, 1).plusYears(DECADE).minusDays(1),
                "the " + year + "s");
    }

    private static Day month(LocalDate first) {
        return new Day(first, first.plusMonths(1).minusDays(1), name(first.getMonth()) + " " + first.getYear());
    }

    private static Optional<Day> day(int year, Month month, String day) {
        try {
            LocalDate on = LocalDate.of(year, month, Integer.parseInt(day.replaceAll("\\D", "")));
            return Optional.of(new Day(on, on, on.getDayOfMonth() + " " + name(month) + " " + year));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Month month(String text) {
        Predicate<Month> isMeant = Character.isDigit(text.charAt(0))
                ? month -> month.getValue() == Integer.parseInt(text)
                : month -> month.name().toLowerCase(Locale.ROOT).startsWith(text.substring(0, LETTERS));
        return Arrays.stream(Month.values()).filter(isMeant).findFirst().orElseThrow();
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    boolean isOneDay() {
        return from.equals(to);
    }
}
