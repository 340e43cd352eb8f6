package platekeep.model.compare;

/**
 * A stretch of a row of one of the two plates.
 *
 * @param side which plate
 * @param row its index, top row 0
 * @param from first position
 * @param to last position
 */
public record Place(Side side, int row, int from, int to) {}
