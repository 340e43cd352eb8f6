package platekeep.model.look;

/**
 * How strictly a motif is looked for.
 *
 * @param colours whether its colours may be others
 * @param gaps what may lie where the motif has no cable
 * @param mirrors whether it may be mirrored
 * @param kinds whether its up cables have to be up cables there
 */
public record Wanted(Colours colours, Gaps gaps, Mirrors mirrors, Kind kinds) {

    /** Any colours, nothing of the motif's own colours in its gaps, mirrored too, up and down as may be. */
    public static final Wanted USUAL = new Wanted(Colours.ANY, Gaps.APART, Mirrors.ALL, Kind.ANY);

    /** Which colours. */
    public enum Colours {
        /** Each colour of the motif stands for one colour there, no two for the same. */
        ANY,
        /** The same colours as they are seen, whatever their letters. */
        SAME
    }

    /** What may lie where the motif has no cable. */
    public enum Gaps {
        /** Nothing, or colours that are none of the motif's there, so that its outline stays. */
        APART,
        /** Nothing. */
        OPEN,
        /** Anything. */
        ANY
    }

    /** Mirrored or not. */
    public enum Mirrors {
        NONE,
        ALL
    }

    /** Up and down. */
    public enum Kind {
        ANY,
        /** Up is up and down is down; mirrored top to bottom, up is down. */
        SAME
    }
}
