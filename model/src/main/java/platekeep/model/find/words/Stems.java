package platekeep.model.find.words;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.tartarus.snowball.ext.EnglishStemmer;

/**
 * What Lucene's analysis knows of English words: the stem that a word shares with its other forms, words too common to
 * look for, letters without their marks. Nothing else of the program knows Lucene, and nothing of it is loaded before a
 * word is looked for. Safe for many threads.
 *
 * <p>The stemmer is Snowball's English one (M. F. Porter, "The English (Porter2) stemming algorithm", snowballstem.org),
 * a revision of the one in "An algorithm for suffix stripping", Program 14(3), 1980.
 */
public final class Stems {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    /** One letter becomes at most so many. */
    private static final int MOST_LETTERS = 4;

    private final EnglishStemmer stemmer = new EnglishStemmer();
    private final Map<String, String> known = new HashMap<>();

    /** The stem of a plain word; the word itself where it has no other form. */
    public synchronized String of(String word) {
        return known.computeIfAbsent(word, this::stemmed);
    }

    private String stemmed(String word) {
        if (word.chars().anyMatch(Character::isDigit)) {
            return word;
        }
        stemmer.setCurrent(word);
        stemmer.stem();
        return stemmer.getCurrent();
    }

    /** Whether a plain word is one of those that stand in nearly every text, such as {@code the} and {@code with}. */
    public static boolean isCommon(String word) {
        return EnglishAnalyzer.ENGLISH_STOP_WORDS_SET.contains(word);
    }

    /** A text without accents and with letters such as {@code \u00f8} and {@code \u00df} written plainly; other scripts stay. */
    static String latin(String text) {
        String apart =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        char[] in = apart.toCharArray();
        char[] out = new char[in.length * MOST_LETTERS];
        int length = ASCIIFoldingFilter.foldToASCII(in, 0, out, 0, in.length);
        return new String(out, 0, length);
    }
}
