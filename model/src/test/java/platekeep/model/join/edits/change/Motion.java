package platekeep.model.join.edits.change;

/**
 * What became of the picture as a whole.
 *
 * @param right pleats to the right, negative to the left
 * @param mirrored left to right, within the pleats that the chart had before
 * @param upsideDown top to bottom; the rows take their ids along
 */
public record Motion(int right, boolean mirrored, boolean upsideDown) {
    public static final Motion NONE = new Motion(0, false, false);
}
