package platekeep.client.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import platekeep.model.plate.Age;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;

/**
 * What the form holds, as it is typed; empty texts say nothing.
 *
 * @param themes with commas between
 * @param kind where the plate comes from, a word of {@link Origin#KINDS}
 * @param by whom it is from
 * @param place where the paper lies
 * @param use what may be done with it, a word of {@link Origin#USES}
 */
public record Facts(
        String title, String number, String themes, Set<Age> ages, String kind, String by, String place, String use) {

    /** Nothing is said. */
    public static final Facts NOTHING = new Facts("", "", "", Set.of(), "", "", "", "");

    private static final Pattern LAST_NUMBER = Pattern.compile("\\d{1,8}(?=\\D*$)");

    public Facts {
        ages = Set.copyOf(ages);
    }

    static Facts of(Plate plate) {
        Origin origin = plate.origin();
        return new Facts(
                plate.title(),
                plate.number().orElse(""),
                String.join(", ", plate.themes()),
                Set.copyOf(plate.ages()),
                origin.kind().orElse(""),
                origin.by().orElse(""),
                origin.place().orElse(""),
                origin.use().orElse(""));
    }

    /** These with what another says of the paper where these say nothing; the place goes on to the next page. */
    Facts offered(Facts last) {
        boolean saysNothing = Stream.of(kind, by, place, use).allMatch(String::isEmpty);
        return saysNothing
                ? new Facts(title, number, themes, ages, last.kind(), last.by(), next(last.place()), last.use())
                : this;
    }

    /** The same text with the last number in it one higher: {@code binder 3, page 13} after {@code binder 3, page 12}. */
    static String next(String place) {
        Matcher number = LAST_NUMBER.matcher(place);
        if (!number.find()) {
            return place;
        }
        String digits = number.group();
        String higher = Integer.toString(Integer.parseInt(digits) + 1);
        return place.substring(0, number.start())
                + "0".repeat(Math.max(0, digits.length() - higher.length()))
                + higher
                + place.substring(number.end());
    }

    /** The plate with just these facts. */
    Plate on(Plate plate) {
        Origin before = plate.origin();
        return plate.edit()
                .title(title.isBlank() ? plate.title() : title.strip())
                .number(said(number))
                .themes(words(themes))
                .ages(List.copyOf(ages))
                .origin(new Origin(said(kind), said(by), said(place), said(use), before.unknown()))
                .build();
    }

    /** The plate with what these say put to it: themes and ages beside those that it has, no title. */
    Plate addedTo(Plate plate) {
        Origin before = plate.origin();
        Set<String> allThemes = new TreeSet<>(plate.themes());
        allThemes.addAll(words(themes));
        Set<Age> allAges = new TreeSet<>(plate.ages());
        allAges.addAll(ages);
        return plate.edit()
                .themes(List.copyOf(allThemes))
                .ages(List.copyOf(allAges))
                .origin(new Origin(
                        said(kind).or(before::kind),
                        said(by).or(before::by),
                        said(place).or(before::place),
                        said(use).or(before::use),
                        before.unknown()))
                .build();
    }

    private static Optional<String> said(String text) {
        return Optional.of(text.strip()).filter(t -> !t.isEmpty());
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** What the form holds, all control characters but none of the words taken out. */
    Facts plain() {
        Function<String, String> plain =
                text -> text.replaceAll("\\p{Cntrl}|\\p{Cs}", " ").strip();
        return new Facts(
                plain.apply(title),
                plain.apply(number),
                plain.apply(themes),
                ages,
                kind,
                plain.apply(by),
                plain.apply(place),
                use);
    }
}
