package platekeep.model.look;

/**
 * Where the middle of a shape lies and how far it spreads, by which pictures are brought to one place and size before
 * they are compared: one cable more at the edge moves these a little, where it would move a box around the picture a
 * lot.
 *
 * <p>Central moments as in M.-K. Hu, "Visual pattern recognition by moment invariants", IRE Transactions on Information
 * Theory 8 (1962), 179-187, of the places inside, each a unit square.
 *
 * @param across the middle, from the left edge of the box
 * @param down the middle, from its upper edge
 * @param wide the standard deviation from left to right, the root of the second central moment over the area
 * @param high the same from top to bottom
 */
record Moments(double across, double down, double wide, double high) {
    /** A unit square has this second moment about its own middle. */
    private static final double OWN = 1.0 / 12;

    static Moments of(Shape shape) {
        long area = 0;
        long x = 0;
        long y = 0;
        long xx = 0;
        long yy = 0;
        byte[] cells = shape.cells();
        int width = shape.width();
        for (int r = 0; r < shape.height(); r++) {
            long inRow = 0;
            for (int i = 0; i < width; i++) {
                if (cells[r * width + i] != Shape.OUTSIDE) {
                    inRow++;
                    x += i;
                    xx += (long) i * i;
                }
            }
            area += inRow;
            y += inRow * r;
            yy += inRow * r * r;
        }
        double across = (double) x / area;
        double down = (double) y / area;
        return new Moments(
                across + 0.5,
                down + 0.5,
                Math.sqrt((double) xx / area - across * across + OWN),
                Math.sqrt((double) yy / area - down * down + OWN));
    }

    /** Those of the shape in a mirror, in a box of this size. */
    Moments mirrored(Mirror mirror, int width, int height) {
        return new Moments(
                mirror.turnsAcross() ? width - across : across, mirror.turnsOver() ? height - down : down, wide, high);
    }
}
