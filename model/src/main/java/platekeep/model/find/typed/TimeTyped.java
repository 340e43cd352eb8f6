package platekeep.model.find.typed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time as it is typed among other words: {@code boats 2019}, {@code foxes before 2015}, {@code since May 2020},
 * {@code 2015-2017}, {@code between 2015 and 2017}. A season is none: in this trade {@code spring 2019} asks for the
 * theme, in that year.
 */
public final class TimeTyped {
    private static final String BETWEEN = "\\s*(?:-|\u2013|\u2014|\\bto\\b|\\band\\b|\\buntil\\b|\\btill\\b)\\s*";

    private static final Pattern AMONG = Pattern.compile(Day.BEFORE
            + "(?:(?:made|drawn|changed|saved) )?"
            + "(?:(?<lead>before|until|till|up to|since|after|between|from|in|of|on|during) )?(?:the )?(?:year )?"
            + "(?<first>" + Day.TEXT + ")(?:" + BETWEEN + "(?:the )?(?<second>" + Day.TEXT + "))?"
            + "(?<tail> (?:onwards?|on|(?:and|or) (?:later|after|earlier|before))\\b)?" + Day.AFTER);

    /** The end of what was typed may be a time that is not finished yet, and would find nothing as a word. */
    private static final Pattern UNFINISHED = Pattern.compile(
            "(?<=\\S) (?:before|until|till|since|after|between)(?: \\d{0,3})?$|\0" + BETWEEN + "\\d{0,3}$");

    /** Stands where a time was. */
    private static final String HOLE = "\0";

    private TimeTyped() {}

    /**
     * A time among other words.
     *
     * @param text as it was typed, in lower case
     * @param period what it stands for
     */
    public record Phrase(String text, Period period) {}

    /** The times among some words, in order. */
    public static List<Phrase> among(String words) {
        List<Phrase> phrases = new ArrayList<>();
        for (MatchResult one : AMONG.matcher(lower(words)).results().toList()) {
            period(one.group()).ifPresent(period -> phrases.add(new Phrase(one.group(), period)));
        }
        return phrases;
    }

    /** The words without the times among them, and without one that is not finished yet at their end. */
    public static String without(String words) {
        String rest = AMONG.matcher(lower(words))
                .replaceAll(one -> period(one.group()).isPresent() ? HOLE : Matcher.quoteReplacement(one.group()));
        return UNFINISHED.matcher(rest).replaceAll(" ").replace(HOLE, " ");
    }

    private static String lower(String words) {
        return words.toLowerCase(Locale.ROOT).replace(HOLE, " ").replaceAll("\\s+", " ");
    }

    private static Optional<Period> period(String phrase) {
        Matcher matcher = AMONG.matcher(phrase);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Optional<Day> first = Day.of(matcher.group("first"));
        if (matcher.group("second") != null) {
            return first.flatMap(one -> Day.of(matcher.group("second")).map(other -> fromTo(one, other)));
        }
        String lead = matcher.group("lead") == null ? "" : matcher.group("lead");
        String tail = matcher.group("tail") == null ? "" : matcher.group("tail");
        return first.map(day -> of(lead, day, tail));
    }

    private static Period fromTo(Day one, Day other) {
        Day first = one.from().isAfter(other.from()) ? other : one;
        Day last = first == one ? other : one;
        LocalDate to = first.to().isAfter(last.to()) ? first.to() : last.to();
        return new Period(first.from(), to, "from " + first.words() + " to " + last.words());
    }

    private static Period of(String lead, Day day, String tail) {
        return switch (lead) {
            case "before" -> new Period(LocalDate.MIN, day.from().minusDays(1), "before " + day.words());
            case "after" -> new Period(day.to().plusDays(1), LocalDate.MAX, "after " + day.words());
            case "until", "till", "up to" -> upTo(day);
            case "since", "between" -> since(day);
            default -> tailed(day, tail.equals(" on") && !lead.equals("from") ? "" : tail);
        };
    }

    private static Period tailed(Day day, String tail) {
        if (tail.isEmpty()) {
            return new Period(day.from(), day.to(), (day.isOneDay() ? "on " : "in ") + day.words());
        }
        return tail.endsWith("earlier") || tail.endsWith("before") ? upTo(day) : since(day);
    }

    private static Period upTo(Day day) {
        return new Period(LocalDate.MIN, day.to(), "up to " + day.words());
    }

    private static Period since(Day day) {
        return new Period(day.from(), LocalDate.MAX, "since " + day.words());
    }
}
