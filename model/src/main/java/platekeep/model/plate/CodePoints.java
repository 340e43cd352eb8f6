package platekeep.model.plate;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Texts in a plate: their order is by Unicode code point, which differs from {@code String}'s own beyond U+FFFF; their
 * form is Unicode's normal form C.
 */
public final class CodePoints {

    /** Texts wholly below this are in normal form C already. */
    private static final char FIRST_COMBINING = 0x300;

    /** Compares two texts code point by code point; a text sorts after its own beginning. */
    public static final Comparator<String> ORDER = CodePoints::compare;

    private CodePoints() {}

    /** The text in Unicode's normal form C: what can be one character is one. Known texts of a plate are kept so. */
    public static String nfc(String text) {
        return isBelowCombining(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    /** Each text in normal form C. */
    static List<String> nfc(List<String> texts) {
        for (String text : texts) {
            if (!isBelowCombining(text)) {
                return texts.stream().map(CodePoints::nfc).toList();
            }
        }
        return List.copyOf(texts);
    }

    /** Whether the texts are in their normal form and rise, each once. */
    static boolean rise(List<String> texts) {
        String before = "";
        for (String text : texts) {
            if (!isBelowCombining(text) || compare(before, text) >= 0) {
                return false;
            }
            before = text;
        }
        return true;
    }

    private static boolean isBelowCombining(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= FIRST_COMBINING) {
                return false;
            }
        }
        return true;
    }

    /** The text in normal form C; one with nothing in it counts as none. */
    static Optional<String> said(Optional<String> text) {
        return text.map(CodePoints::nfc).filter(t -> !t.isEmpty());
    }

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
