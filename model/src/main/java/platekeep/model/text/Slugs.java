package platekeep.model.text;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;

/**
 * File names in a library. A slug is a title in lower-case ASCII letters, digits and hyphens, at most
 * {@link #LONGEST} characters, never a name that some system keeps for itself. A file is named once, by its first title;
 * it never follows a change of title.
 */
public final class Slugs {

    /** A slug has at most so many characters. */
    public static final int LONGEST = 60;

    /** The slug of a title that has no letter or digit that could be written so; also the drawer of such slugs. */
    public static final String NOTHING = "0";

    private static final int ID_DIGITS = 8;
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern APOSTROPHES = Pattern.compile("['\\u2019\\u02bc]");
    private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
    private static final Pattern ENDS = Pattern.compile("^-+|-+$");

    /** Names of devices on Windows, with or without an extension (Microsoft, "Naming Files, Paths, and Namespaces"). */
    private static final Pattern RESERVED = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

    /** Letters of Latin script that do not come apart into a letter and a mark. */
    private static final Map<Integer, String> LETTERS = Map.of(
            (int) '\u00e6',
            "ae",
            (int) '\u0153',
            "oe",
            (int) '\u00f8',
            "o",
            (int) '\u00df',
            "ss",
            (int) '\u0111',
            "d",
            (int) '\u00f0',
            "d",
            (int) '\u00fe',
            "th",
            (int) '\u0142',
            "l",
            (int) '\u0131',
            "i");

    private Slugs() {}

    /** The slug of a title; never empty. */
    public static String of(String title) {
        String apart = MARKS.matcher(Normalizer.normalize(title, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        String latin = apart.codePoints()
                .mapToObj(c -> LETTERS.getOrDefault(c, Character.toString(c)))
                .collect(Collectors.joining());
        String words = OTHERS.matcher(APOSTROPHES.matcher(latin).replaceAll("")).replaceAll("-");
        String slug = trimmed(words);
        if (slug.length() > LONGEST) {
            slug = trimmed(slug.substring(0, LONGEST));
        }
        if (slug.isEmpty()) {
            return NOTHING;
        }
        return RESERVED.matcher(slug).matches() ? slug + "-" + NOTHING : slug;
    }

    /** Where a new plate goes: {@code plates/h/harbour-light.json}; drawer {@code 0} where no letter comes first. */
    public static String path(Plate plate) {
        String slug = of(plate.title());
        char first = slug.charAt(0);
        String drawer = first >= 'a' && first <= 'z' ? String.valueOf(first) : NOTHING;
        return "plates/" + drawer + "/" + slug + ".json";
    }

    /** Where a new series goes: {@code series/harbour-days.json}. */
    public static String path(Series series) {
        return "series/" + of(series.title()) + ".json";
    }

    /** The same place with {@code -} and the first eight digits of an id put to the name, for where it is taken. */
    public static String withId(String path, String id) {
        int dot = path.lastIndexOf('.');
        return path.substring(0, dot) + "-" + id.substring(0, ID_DIGITS).toLowerCase(Locale.ROOT) + path.substring(dot);
    }

    /** Of two plates that want one place, whether the first gives way: the one with the greater id does. */
    public static boolean givesWay(String id, String otherId) {
        return id.toLowerCase(Locale.ROOT).compareTo(otherId.toLowerCase(Locale.ROOT)) > 0;
    }

    private static String trimmed(String slug) {
        return ENDS.matcher(slug).replaceAll("");
    }
}
