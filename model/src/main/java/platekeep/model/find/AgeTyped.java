package platekeep.model.find;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.model.plate.Age;

/** An age as it is typed, {@code 18 months}, {@code 2 years} or {@code 2 1/2 y}, as the words for ages that fit it. */
public final class AgeTyped {
    private static final int MONTHS = 12;
    private static final Pattern TEXT =
            Pattern.compile("(\\d{1,3})(\\.5| 1/2)?\\s*(m|mo|month|months|y|yr|year|years)( old)?");

    private AgeTyped() {}

    /** The words; empty where the text is no age. */
    public static Optional<List<String>> ages(String text) {
        Matcher matcher = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        boolean isYears = matcher.group(3).startsWith("y");
        int half = matcher.group(2) != null && isYears ? MONTHS / 2 : 0;
        int months = Integer.parseInt(matcher.group(1)) * (isYears ? MONTHS : 1) + half;
        return Optional.of(Arrays.stream(Age.values())
                .filter(age -> age.covers(months))
                .map(Age::word)
                .toList());
    }
}
