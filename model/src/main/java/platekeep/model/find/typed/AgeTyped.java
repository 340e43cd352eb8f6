package platekeep.model.find.typed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.model.plate.Age;

/**
 * An age as it is typed, {@code 18 months}, {@code 2 years} or {@code 2 1/2 y}, as the words for ages that fit it; alone or
 * among other words, as in {@code boats for a two-year-old}.
 */
public final class AgeTyped {
    private static final int MONTHS = 12;
    private static final List<String> NUMBERS =
            List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final Pattern TEXT =
            Pattern.compile("(\\d{1,3})(\\.5| 1/2)?\\s*(m|mo|month|months|y|yr|year|years)( old)?");

    /** Among other words the unit is spelled out, so that a number of her own is none. */
    private static final Pattern AMONG = Pattern.compile("(?<![\\p{L}\\d])"
            + "(?:for )?(?:(?:an|the) )?(?:ages? )?(?:of )?(?:an? )?"
            + "((\\d{1,3}|" + String.join("|", NUMBERS) + ")(\\.5| 1/2)?[\\s-]*(months?|years?|yrs?)(?:[\\s-]olds?)?)"
            + "(?![\\p{L}\\d])");

    private AgeTyped() {}

    /**
     * An age among other words.
     *
     * @param text as it was typed, without what leads to it
     * @param ages the words for ages that fit it, none where it is nobody's
     */
    public record Phrase(String text, List<String> ages) {
        public Phrase {
            ages = List.copyOf(ages);
        }
    }

    /** The words; empty where the text is no age. */
    public static Optional<List<String>> ages(String text) {
        Matcher matcher = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        return matcher.matches()
                ? Optional.of(ages(matcher.group(1), matcher.group(2), matcher.group(3)))
                : Optional.empty();
    }

    /** The ages among some words, in order. */
    public static List<Phrase> among(String words) {
        List<Phrase> phrases = new ArrayList<>();
        for (MatchResult found :
                AMONG.matcher(words.toLowerCase(Locale.ROOT)).results().toList()) {
            phrases.add(new Phrase(found.group(1), ages(found.group(2), found.group(3), found.group(4))));
        }
        return phrases;
    }

    /** The words without the ages among them. */
    public static String without(String words) {
        return AMONG.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" ");
    }

    private static List<String> ages(String number, String half, String unit) {
        boolean isYears = unit.startsWith("y");
        int spelled = NUMBERS.indexOf(number) + 1;
        int count = spelled > 0 ? spelled : Integer.parseInt(number);
        int more = half != null && isYears ? MONTHS / 2 : 0;
        int months = count * (isYears ? MONTHS : 1) + more;
        return Arrays.stream(Age.values())
                .filter(age -> age.covers(months))
                .map(Age::word)
                .toList();
    }
}
