package platekeep.client.gallery.tag;

/** Numbers with what they count. */
final class Counted {
    private Counted() {}

    static String of(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
