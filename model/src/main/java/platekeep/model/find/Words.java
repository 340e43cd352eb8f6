package platekeep.model.find;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words as they are compared: lower case, without accents, English plurals also as singulars. */
final class Words {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern GAPS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private Words() {}

    /** All words of the texts, each between blanks, a plural followed by its singular. */
    static String indexed(List<String> texts) {
        StringBuilder out = new StringBuilder(" ");
        for (String text : texts) {
            for (String word : split(text)) {
                out.append(word).append(' ');
                String singular = singular(word);
                if (!singular.equals(word)) {
                    out.append(singular).append(' ');
                }
            }
        }
        return out.toString();
    }

    /** The words of a question, in the singular. */
    static List<String> asked(String question) {
        return split(question).stream().map(Words::singular).toList();
    }

    private static List<String> split(String text) {
        String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return Arrays.stream(GAPS.split(plain)).filter(word -> !word.isEmpty()).toList();
    }

    /** Boats to boat, foxes to fox, berries to berry; grass stays. */
    static String singular(String word) {
        if (word.length() < 4 || !word.endsWith("s") || word.endsWith("ss")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        String stem = word.substring(0, word.length() - 2);
        if (word.endsWith("es")
                && (stem.endsWith("x") || stem.endsWith("ss") || stem.endsWith("sh") || stem.endsWith("ch"))) {
            return stem;
        }
        return word.substring(0, word.length() - 1);
    }
}
