package platekeep.client.plate.begin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/**
 * A chart typed as text, top row first, a line each. Either one character a cable, or values with commas, semicolons or
 * tabs between them. Nothing lies at a dot, a blank, a hyphen or an empty value; each other character or value is a
 * colour, and a value like {@code #A63C2B} says its shade. Blank lines above and below do not count.
 */
final class TextGrid {
    private static final int MOST_CHARACTERS = 12_000_000;
    private static final String SHADE = "#[0-9a-fA-F]{6}";
    private static final List<String> NOTHING = List.of("", ".", "-", "–");

    private final Map<String, Colour> known;
    private final Map<String, Character> keys = new LinkedHashMap<>();
    private final TreeMap<Character, Colour> colours = new TreeMap<>();

    private TextGrid(Map<String, Colour> known) {
        this.known = known;
    }

    /**
     * The plate of a text.
     *
     * @param known colours by their names in lower case: a value that is such a name is that colour
     */
    static Begun read(String text, String id, String title, Map<String, Colour> known, RandomGenerator random) {
        if (text.length() > MOST_CHARACTERS) {
            return new Begun.Refused("This text has " + text.length() + " characters, far more than the largest chart,"
                    + " which is 2000 rows of 2000 cables. Nothing was begun.");
        }
        List<String> lines = new ArrayList<>(text.lines().toList());
        while (!lines.isEmpty() && lines.get(0).isBlank()) {
            lines.remove(0);
        }
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        return new TextGrid(known).read(lines, new Chart(id, title, random));
    }

    private record Chart(String id, String title, RandomGenerator random) {}

    private Begun read(List<String> lines, Chart chart) {
        if (lines.isEmpty()) {
            return new Begun.Refused("There is no text. Copy a grid first: one line a row, one character a cable.");
        }
        Optional<Character> between = between(lines.get(0));
        List<String> rows = new ArrayList<>();
        for (int n = 0; n < lines.size(); n++) {
            List<String> values = between.isPresent() ? split(lines.get(n), between.get()) : characters(lines.get(n));
            Optional<String> wrong = wrong(n, values, rows);
            if (wrong.isPresent()) {
                return new Begun.Refused(wrong.get() + " Nothing was begun.");
            }
            StringBuilder cells = new StringBuilder();
            for (String value : values) {
                Optional<Character> cell = NOTHING.contains(value) ? Optional.of(Row.EMPTY) : key(value);
                if (cell.isEmpty()) {
                    return new Begun.Refused("Row " + (n + 1) + " from the top has the 63rd colour, \""
                            + shortened(value) + "\"; a palette holds 62. Use fewer. Nothing was begun.");
                }
                cells.append(cell.get());
            }
            rows.add(cells.toString());
        }
        return new Begun.Good(plate(chart, rows));
    }

    private static Optional<Character> between(String line) {
        for (char sign : new char[] {'\t', ';', ','}) {
            if (line.indexOf(sign) >= 0) {
                return Optional.of(sign);
            }
        }
        return Optional.empty();
    }

    private static List<String> split(String line, char between) {
        List<String> values = new ArrayList<>();
        for (String value : line.split(java.util.regex.Pattern.quote(String.valueOf(between)), -1)) {
            String plain = value.strip();
            boolean isQuoted = plain.length() >= 2 && plain.startsWith("\"") && plain.endsWith("\"");
            values.add(isQuoted ? plain.substring(1, plain.length() - 1) : plain);
        }
        return values;
    }

    private static List<String> characters(String line) {
        return line.codePoints().mapToObj(c -> Character.toString(c).strip()).toList();
    }

    private static Optional<String> wrong(int n, List<String> values, List<String> rows) {
        if (n >= Plate.MOST_ROWS) {
            return Optional.of("It has more than " + Plate.MOST_ROWS + " rows, the most that a chart can have.");
        }
        if (values.size() > Pleats.MOST_POSITIONS) {
            return Optional.of("Row " + (n + 1) + " from the top has " + values.size() + " places; a chart has at most "
                    + Pleats.MOST_POSITIONS + ".");
        }
        if (!rows.isEmpty() && rows.get(0).length() != values.size()) {
            return Optional.of("Row " + (n + 1) + " from the top has " + count(values.size()) + ", the first one "
                    + count(rows.get(0).length()) + ". Make all rows equally long, with dots where nothing lies.");
        }
        return values.stream()
                .filter(value -> value.codePoints().anyMatch(c -> Character.isISOControl(c) || c == 0xFFFD))
                .findFirst()
                .map(value -> "Row " + (n + 1) + " from the top holds a character that cannot be read. Is it really a"
                        + " text file?");
    }

    private static String count(int places) {
        return places == 1 ? "1 place" : places + " places";
    }

    private static String shortened(String value) {
        return value.length() > 20 ? value.substring(0, 20) + "…" : value;
    }

    /** The key for a value; empty when there is none left. */
    private Optional<Character> key(String value) {
        Character there = keys.get(value);
        if (there != null) {
            return Optional.of(there);
        }
        Optional<Character> key =
                wanted(value).filter(k -> !colours.containsKey(k)).or(() -> new Palette(colours).freeKey());
        key.ifPresent(k -> {
            keys.put(value, k);
            colours.put(k, colour(value));
        });
        return key;
    }

    private static Optional<Character> wanted(String value) {
        return value.length() == 1 && Palette.isKey(value.charAt(0)) ? Optional.of(value.charAt(0)) : Optional.empty();
    }

    private Colour colour(String value) {
        if (value.matches(SHADE)) {
            return new Colour(value.toUpperCase(Locale.ROOT), value.toUpperCase(Locale.ROOT), 4);
        }
        return Optional.ofNullable(known.get(value.toLowerCase(Locale.ROOT)))
                .orElseGet(() -> new Colour(value.length() > 1 ? value : "colour " + value, shade(colours.size()), 4));
    }

    /** Shades as far apart as a turn by the golden angle brings them. */
    private static String shade(int n) {
        float hue = (float) (n * 0.381966 % 1);
        int rgb = java.awt.Color.HSBtoRGB(hue, n % 2 == 0 ? 0.62f : 0.45f, n % 3 == 0 ? 0.62f : 0.78f);
        return String.format(Locale.ROOT, "#%06X", rgb & 0xFFFFFF);
    }

    private Plate plate(Chart chart, List<String> cells) {
        return Charts.plate(chart.id(), chart.title(), new Palette(colours), cells, chart.random());
    }
}
