package platekeep.model.draw;

/**
 * A cable's place on the chart, whether a cable lies there or not.
 *
 * @param row the row, top row 0
 * @param index the position, counted from 0 at the chart's left end
 */
public record Spot(int row, int index) {

    /** The spot so many rows down and positions to the right. */
    public Spot moved(int rows, int positions) {
        return new Spot(row + rows, index + positions);
    }
}
