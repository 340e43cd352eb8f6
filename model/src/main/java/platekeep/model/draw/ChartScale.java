package platekeep.model.draw;

import platekeep.model.plate.CableKind;

/**
 * How large a plate is drawn.
 *
 * @param pleat dots across one pleat
 * @param half dots down one half-level, which is half a row
 */
public record ChartScale(double pleat, double half) {

    /**
     * A stacked row rises 1.9 mm (five to a gathering space of 9.5 mm) where a finished pleat is about 1 mm wide:
     * common practice, no source.
     */
    public static final double ROW_TO_PLEAT = 1.9;

    /** In proportion to the last fraction of a dot. */
    public static ChartScale exact(double pleat) {
        return new ChartScale(pleat, pleat * ROW_TO_PLEAT / 2);
    }

    /** Whole dots for pleats and half-levels, so that every bar is drawn alike. */
    public static ChartScale whole(int pleat) {
        return new ChartScale(pleat, Math.max(1, Math.round(pleat * ROW_TO_PLEAT / 2)));
    }

    /** The largest exact scale at which so many pleats and rows fit into a box. */
    public static ChartScale fitting(double pleats, double rows, double width, double height) {
        double across = width / Math.max(1, pleats);
        double down = height / (Math.max(1, rows) * ROW_TO_PLEAT);
        return exact(Math.min(across, down));
    }

    /** Dots down one row. */
    public double row() {
        return 2 * half;
    }

    /** The left edge of the cable at an index (0 at the left), and of the pleat there. */
    public double left(double index) {
        return index * pleat;
    }

    /** The top edge of a row (0 at the top). */
    public double top(double row) {
        return row * row();
    }

    /** The top edge of a cable of this kind in a row. */
    public double top(int row, CableKind kind) {
        return top(row) + (kind == CableKind.UP ? 0 : half);
    }

    /** The width of a cable: two pleats. */
    public double cable() {
        return 2 * pleat;
    }
}
