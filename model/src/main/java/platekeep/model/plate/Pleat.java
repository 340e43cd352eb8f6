package platekeep.model.plate;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place on the pleats as text: {@code 8} is on pleat 8, {@code 8 1/2} in the valley after it. */
public final class Pleat {

    private static final Pattern TEXT = Pattern.compile("(0|-?[1-9][0-9]{0,5})( 1/2)?");

    private Pleat() {}

    /** Whether the text names a pleat or a valley. */
    public static boolean isPleat(String text) {
        return TEXT.matcher(text).matches();
    }

    /** The place as a number; a valley lies half a pleat on. */
    public static double place(String text) {
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("not a pleat: " + text);
        }
        return Integer.parseInt(m.group(1)) + (m.group(2) == null ? 0 : 0.5);
    }

    /** The text for a place given as a whole or half number. */
    public static String text(double place) {
        int whole = (int) Math.floor(place);
        return place == whole ? Integer.toString(whole) : whole + " 1/2";
    }
}
