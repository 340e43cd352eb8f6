package platekeep.model.find.words;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes texts apart into plain words: lower case, without accents, letters and digits only. An apostrophe does not part
 * a word; {@code 's} at its end goes.
 */
public final class Words {
    private static final int ASCII = 0x80;

    private Words() {}

    /** The words of a text in order, doubles too. */
    public static List<String> of(String text) {
        List<String> words = new ArrayList<>();
        String plain = isAscii(text) ? text : Stems.latin(text);
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (Character.isLetterOrDigit(c)) {
                word.append(Character.toLowerCase(c));
            } else if (isApostrophe(c) && word.length() > 0) {
                i += isPossessive(plain, i) ? 1 : 0;
            } else if (word.length() > 0) {
                words.add(word.toString());
                word.setLength(0);
            }
        }
        if (word.length() > 0) {
            words.add(word.toString());
        }
        return words;
    }

    /** All words of a text with nothing between them, so that {@code H-07} is {@code h07}. */
    public static String joined(String text) {
        return String.join("", of(text));
    }

    private static boolean isApostrophe(char c) {
        return c == '\'' || c == '\u2019' || c == '\u02bc';
    }

    private static boolean isPossessive(String text, int apostrophe) {
        int s = apostrophe + 1;
        return s < text.length()
                && (text.charAt(s) == 's' || text.charAt(s) == 'S')
                && (s + 1 == text.length() || !Character.isLetterOrDigit(text.charAt(s + 1)));
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= ASCII) {
                return false;
            }
        }
        return true;
    }
}
