package platekeep.client.look;

/** Numbers with what they count. */
final class Counts {
    private Counts() {}

    static String of(int count, String word) {
        return count == 1 ? "1 " + word : String.format(java.util.Locale.ENGLISH, "%,d %ss", count, word);
    }
}
