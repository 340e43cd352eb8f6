package platekeep.model.draw;

/**
 * A piece of thread that lies on the cloth beside the cables of the picture, as in a geometric line.
 *
 * @param x1 its left end, in pleats from the chart's left edge
 * @param y1 in rows from the chart's top edge
 * @param x2 its right end
 * @param y2 in rows
 * @param rgb {@code 0xRRGGBB}
 */
public record Strand(double x1, double y1, double x2, double y2, int rgb) {}
