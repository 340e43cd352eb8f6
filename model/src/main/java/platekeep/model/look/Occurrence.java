package platekeep.model.look;

/**
 * A place where a motif occurs.
 *
 * @param row the chart's row on which the motif's upper one lies, top row 0
 * @param position of its leftmost places, by the left pleat
 * @param mirror how it was mirrored
 * @param kinds whether its up cables are up cables there
 */
public record Occurrence(int row, int position, Mirror mirror, Kinds kinds) {

    /** How the ups and downs of a motif fall. */
    public enum Kinds {
        /** As in the motif. */
        SAME,
        /** Each up is a down and each down an up: it lies an odd number of rows and pleats away from where it would not. */
        TURNED,
        /** Some figures of it as in the motif, some turned. */
        MIXED
    }
}
