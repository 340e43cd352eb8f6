package platekeep.client.look;

import platekeep.model.look.Wanted;

/**
 * How a search is to be made.
 *
 * @param times whether versions are gone through that are no more
 * @param motif how strictly a motif is looked for
 */
public record Options(Times times, Wanted motif) {

    public static final Options FIRST = new Options(Times.NOW, Wanted.USUAL);

    /** Which versions. */
    public enum Times {
        NOW,
        /** What is there now, and what plates that are there or were put away once looked like. */
        ONCE_TOO
    }

    Options with(Times newTimes) {
        return new Options(newTimes, motif);
    }

    Options with(Wanted newMotif) {
        return new Options(times, newMotif);
    }
}
