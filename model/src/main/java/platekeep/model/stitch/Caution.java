package platekeep.model.stitch;

/**
 * A caution to print with a plate.
 *
 * @param text what to mind, ending with whose rules hold
 * @param source where it is from, in short
 */
public record Caution(String text, String source) {

    /** What every caution ends with: it defers to the rules of the place. */
    public static final String DEFER = " Follow the rules where you live; this is no legal advice.";

    static Caution of(String text, String source) {
        return new Caution(text + DEFER, source);
    }
}
