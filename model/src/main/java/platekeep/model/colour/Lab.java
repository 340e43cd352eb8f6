package platekeep.model.colour;

/**
 * A colour in CIELAB (CIE 15) against the white of D65.
 *
 * @param l lightness, 0 black to 100 white
 * @param a green (below 0) to red
 * @param b blue (below 0) to yellow
 */
public record Lab(double l, double a, double b) {

    private static final double[] WHITE = {0.95047, 1, 1.08883};
    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    /** From {@code 0xRRGGBB} in sRGB. */
    public static Lab of(int rgb) {
        double[] c = Srgb.linear(rgb);
        double x = 0.4124564 * c[0] + 0.3575761 * c[1] + 0.1804375 * c[2];
        double y = 0.2126729 * c[0] + 0.7151522 * c[1] + 0.0721750 * c[2];
        double z = 0.0193339 * c[0] + 0.1191920 * c[1] + 0.9503041 * c[2];
        double fx = bent(x / WHITE[0]);
        double fy = bent(y / WHITE[1]);
        double fz = bent(z / WHITE[2]);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** The nearest {@code 0xRRGGBB}; what lies outside sRGB is cut off channel by channel. */
    public int rgb() {
        double fy = (l + 16) / 116;
        double x = WHITE[0] * straight(fy + a / 500);
        double y = WHITE[1] * straight(fy);
        double z = WHITE[2] * straight(fy - b / 200);
        return Srgb.encoded(
                3.2404542 * x - 1.5371385 * y - 0.4985314 * z,
                -0.9692660 * x + 1.8760108 * y + 0.0415560 * z,
                0.0556434 * x - 0.2040259 * y + 1.0572252 * z);
    }

    private static double bent(double t) {
        return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double straight(double f) {
        double cubed = f * f * f;
        return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA;
    }
}
