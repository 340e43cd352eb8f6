package platekeep.client.git.plates;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the id in a plate's text without reading the plate: some thousand versions are looked through for it, and a
 * text that is damaged elsewhere still says whose it is. The id stands near the top, so the scan is short.
 */
public final class PlateIdScan {
    private static final Pattern UUID =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");

    private final byte[] text;
    private int at;

    private PlateIdScan(byte[] text) {
        this.text = text;
    }

    /** The value of the outermost object's key {@code id} in lower case; empty where there is none or it is no UUID. */
    public static Optional<String> of(byte[] text) {
        return new PlateIdScan(text).scan().filter(PlateIdScan::isId).map(id -> id.toLowerCase(Locale.ROOT));
    }

    /** Whether a text has the form of a plate's id. */
    public static boolean isId(String text) {
        return UUID.matcher(text).matches();
    }

    private Optional<String> scan() {
        int depth = 0;
        while (at < text.length) {
            byte c = text[at];
            if (c == '"') {
                String string = string();
                if (depth == 1 && string.equals("id") && next() == ':') {
                    at++;
                    return next() == '"' ? Optional.of(string()) : Optional.empty();
                }
                continue;
            }
            if (c == '{' || c == '[') {
                depth++;
            } else if (c == '}' || c == ']') {
                depth--;
            }
            at++;
        }
        return Optional.empty();
    }

    /** The string that begins here, as it is written; afterwards {@code at} is behind it. */
    private String string() {
        int start = ++at;
        while (at < text.length && text[at] != '"') {
            at += text[at] == '\\' ? 2 : 1;
        }
        int end = Math.min(at, text.length);
        at = end + 1;
        return new String(text, start, end - start, StandardCharsets.UTF_8);
    }

    /** The next character that is no white space, not yet taken; 0 at the end. */
    private int next() {
        while (at < text.length && text[at] <= ' ' && text[at] >= 0) {
            at++;
        }
        return at < text.length ? text[at] : 0;
    }
}
