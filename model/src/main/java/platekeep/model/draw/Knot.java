package platekeep.model.draw;

/**
 * A single stitch on top of the picture.
 *
 * @param stitch french knot, bullion, ...
 * @param x its centre, in pleats from the chart's left edge
 * @param y in rows from the chart's top edge
 * @param rgb {@code 0xRRGGBB}
 */
public record Knot(String stitch, double x, double y, int rgb) {}
