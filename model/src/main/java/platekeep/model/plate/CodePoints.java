package platekeep.model.plate;

import java.util.Comparator;

/** The order of texts in a plate: by Unicode code point, which differs from {@code String}'s own beyond U+FFFF. */
public final class CodePoints {

    /** Compares two texts code point by code point; a text sorts after its own beginning. */
    public static final Comparator<String> ORDER = CodePoints::compare;

    private CodePoints() {}

    private static int compare(String a, String b) {
        int n = Math.min(a.length(), b.length());
        for (int i = 0; i < n; i++) {
            char x = a.charAt(i);
            char y = b.charAt(i);
            if (x != y) {
                return Integer.compare(weight(x), weight(y));
            }
        }
        return Integer.compare(a.length(), b.length());
    }

    /** Surrogates stand for code points above all other units, so they weigh more than U+E000 to U+FFFF. */
    private static int weight(char c) {
        return Character.isSurrogate(c) ? c + 0x10000 : c;
    }
}
