package platekeep.model.colour;

/** The contrast of text and marks against what they lie on, by WCAG 2.2 ("contrast ratio", "relative luminance"). */
public final class Contrast {

    /** What text needs at least (WCAG 2.2, 1.4.3 level AA). */
    public static final double TEXT = 4.5;

    /** What large text, and marks that carry meaning, need at least (WCAG 2.2, 1.4.3 and 1.4.11 level AA). */
    public static final double MARKS = 3;

    private Contrast() {}

    /** The contrast of two colours ({@code 0xRRGGBB}), 1 to 21; symmetric. */
    public static double of(int rgb, int otherRgb) {
        double one = luminance(rgb);
        double other = luminance(otherRgb);
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    /** The relative luminance, 0 black to 1 white. */
    public static double luminance(int rgb) {
        double[] c = Srgb.linear(rgb);
        return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
    }
}
