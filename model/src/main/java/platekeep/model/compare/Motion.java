package platekeep.model.compare;

/**
 * A move or mirroring of cables: {@code row' = rowSign * row + rowShift}, likewise for positions. Rows are indexes, top
 * row 0, so a move up has a negative {@code rowShift}.
 *
 * @param rowSign 1, or -1 when mirrored top to bottom
 * @param rowShift added after the sign
 * @param positionSign 1, or -1 when mirrored left to right
 * @param positionShift added after the sign
 */
public record Motion(int rowSign, int rowShift, int positionSign, int positionShift) {

    /** Nothing moves. */
    public static final Motion NONE = new Motion(1, 0, 1, 0);

    /** A move without mirroring. */
    public static Motion shift(int rows, int positions) {
        return new Motion(1, rows, 1, positions);
    }

    public int row(int row) {
        return rowSign * row + rowShift;
    }

    public int position(int position) {
        return positionSign * position + positionShift;
    }

    /** The motion that undoes this one. */
    public Motion inverse() {
        return new Motion(rowSign, -rowSign * rowShift, positionSign, -positionSign * positionShift);
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** Whether cables only change their row or position, not their order. */
    public boolean isShift() {
        return rowSign == 1 && positionSign == 1;
    }

    /** Where a place on the pleats goes; a cable at position p covers pleats p and p + 1. */
    public double pleat(double pleat) {
        return positionSign == 1 ? pleat + positionShift : positionShift + 1 - pleat;
    }

    /** What it does to positions alone. */
    Motion across() {
        return new Motion(1, 0, positionSign, positionShift);
    }
}
