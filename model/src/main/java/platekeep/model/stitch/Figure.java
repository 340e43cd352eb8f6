package platekeep.model.stitch;

/**
 * A set of cables that belong together: neighbours in one row, or over the same pleats in rows next to each other.
 *
 * @param number its place among all figures of the plate, from 0: from the bottom, then from the left, by its leftmost
 *     cable in its lowest row
 * @param cables how many cables it has, at least one
 * @param top its highest row, top row of the plate 0
 * @param bottom its lowest row, so never smaller than {@code top}
 * @param from its leftmost position
 * @param to its rightmost position, included
 * @param first the position of the leftmost cable in its lowest row
 */
public record Figure(int number, int cables, int top, int bottom, int from, int to, int first) {

    /** How many pleats it takes, from its leftmost to its rightmost. */
    public int pleats() {
        return to - from + 2;
    }

    /** How many rows it reaches over. */
    public int rows() {
        return bottom - top + 1;
    }
}
