package platekeep.model.find;

/** What needs to be known of a plate at a glance, the weightiest first. */
public enum Mark {
    /** A join left something open. */
    CLASH("clash"),
    /** The check found what cannot be worked. */
    ERRORS("check errors"),
    /** It was changed and is not saved as a version yet. */
    DRAFT("draft"),
    /** It has versions that the partner has not got yet. */
    UNSENT("not sent"),
    /** Somebody said something about it that is not settled. */
    REMARKS("open remarks"),
    /** It lies on paper and has no chart yet. */
    SCAN("only a scan yet");

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
