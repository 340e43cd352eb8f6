package platekeep.model.find.words;

/**
 * Small slips of typing: a letter too many, one missing, one wrong, or two exchanged (F. J. Damerau, "A technique for
 * computer detection and correction of spelling errors", Communications of the ACM 7(3), 1964, gives these four).
 *
 * <p>With one slip at most, the first place where the two words differ is where it happened, so one comparison of what
 * follows decides: linear in the length.
 */
public final class Slips {
    private Slips() {}

    /** Whether one slip, or none, makes one word of the other; symmetric. */
    public static boolean atMostOne(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 1) {
            return false;
        }
        int at = firstDifference(a, b);
        return at == a.length() && at == b.length()
                || same(a, at + 1, b, at + 1)
                || same(a, at + 1, b, at)
                || same(a, at, b, at + 1)
                || isExchanged(a, b, at) && same(a, at + 2, b, at + 2);
    }

    /** Whether the two go on alike to their ends from these places. */
    private static boolean same(String a, int fromA, String b, int fromB) {
        return a.length() - fromA == b.length() - fromB && goesOn(a, fromA, b, fromB);
    }

    /** Whether one, from a place in it, is how the other goes on from a place in it. */
    private static boolean goesOn(String part, int from, String whole, int at) {
        int length = part.length() - from;
        return length >= 0 && at <= whole.length() && part.regionMatches(from, whole, at, length);
    }

    /** Whether one slip, or none, makes the beginning of a word of what was typed. */
    public static boolean atMostOneInBeginning(String typed, String word) {
        int at = firstDifference(typed, word);
        return at == typed.length()
                || goesOn(typed, at + 1, word, at)
                || goesOn(typed, at + 1, word, at + 1)
                || goesOn(typed, at, word, at + 1)
                || isExchanged(typed, word, at) && goesOn(typed, at + 2, word, at + 2);
    }

    private static int firstDifference(String a, String b) {
        int most = Math.min(a.length(), b.length());
        int at = 0;
        while (at < most && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return at;
    }

    private static boolean isExchanged(String a, String b, int at) {
        return at + 1 < a.length()
                && at + 1 < b.length()
                && a.charAt(at) == b.charAt(at + 1)
                && a.charAt(at + 1) == b.charAt(at);
    }
}
