package platekeep.model.find.words;

/** How a word of a text answers a word that was typed, the nearest first. */
public enum Likeness {
    /** The very word. */
    EXACT,
    /** Another form of it, by the stem. */
    STEM,
    /** It begins so. */
    BEGINNING,
    /** It may have been meant, by one slip of typing. */
    SLIP
}
