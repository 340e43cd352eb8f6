package platekeep.client.paper.picture;

/** A picture's bytes do not hold what they should; the message goes on a sentence that begins with the file's name. */
final class Damaged extends Exception {
    private static final long serialVersionUID = 1L;

    Damaged(String sentence) {
        super(sentence);
    }

    static Damaged cutOff() {
        return new Damaged("ends in the middle of the picture; scan it or copy it again");
    }

    static Damaged broken() {
        return new Damaged("is damaged; scan it or copy it again");
    }
}
