package platekeep.client.join;

/**
 * A rectangle of a chart, both ends included.
 *
 * @param top the upper row, top row 0
 * @param bottom the lower row
 * @param from the leftmost position, counted from 0 at the chart's left end
 * @param to the rightmost position
 */
record Area(int top, int bottom, int from, int to) {

    /** The smallest area that holds both. */
    Area and(Area other) {
        return new Area(
                Math.min(top, other.top),
                Math.max(bottom, other.bottom),
                Math.min(from, other.from),
                Math.max(to, other.to));
    }

    /** So much larger on all sides, held within so many rows and positions. */
    Area around(int rows, int positions, int mostRows, int mostPositions) {
        return new Area(
                Math.max(0, top - rows),
                Math.min(mostRows - 1, bottom + rows),
                Math.max(0, from - positions),
                Math.min(mostPositions - 1, to + positions));
    }

    /** The same stretch of one row. */
    Area in(int row) {
        return new Area(row, row, from, to);
    }

    int rows() {
        return bottom - top + 1;
    }

    int positions() {
        return to - from + 1;
    }
}
