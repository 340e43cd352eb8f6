package platekeep.model.colour;

/**
 * The colour difference CIEDE2000, all weights 1.
 *
 * <p>Source: Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula: implementation notes, supplementary test data,
 * and mathematical observations", Color Research and Application 30(1), 2005; the steps below are that paper's. About 1
 * is the least that is seen side by side.
 */
public final class Ciede2000 {

    private static final double POW25_7 = Math.pow(25, 7);

    private Ciede2000() {}

    /** The difference of two colours, 0 for the same; symmetric. */
    public static double difference(Lab one, Lab other) {
        double mean = (Math.hypot(one.a(), one.b()) + Math.hypot(other.a(), other.b())) / 2;
        double g = 0.5 * (1 - Math.sqrt(share(mean)));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * other.a();
        double c1 = Math.hypot(a1, one.b());
        double c2 = Math.hypot(a2, other.b());
        double h1 = hue(a1, one.b());
        double h2 = hue(a2, other.b());
        double deltaHue = c1 * c2 == 0 ? 0 : turned(h2 - h1);
        double deltaH = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(deltaHue / 2));
        double l = (one.l() + other.l()) / 2;
        double c = (c1 + c2) / 2;
        double h = meanHue(c1 * c2, h1, h2);
        double bow = (l - 50) * (l - 50);
        double lightness = (other.l() - one.l()) / (1 + 0.015 * bow / Math.sqrt(20 + bow));
        double chroma = (c2 - c1) / (1 + 0.045 * c);
        double hueShare = deltaH / (1 + 0.015 * c * tint(h));
        double rotation =
                -Math.sin(Math.toRadians(2 * 30 * Math.exp(-square((h - 275) / 25)))) * 2 * Math.sqrt(share(c));
        return Math.sqrt(square(lightness) + square(chroma) + square(hueShare) + rotation * chroma * hueShare);
    }

    /** The difference of two colours given as {@code 0xRRGGBB}. */
    public static double difference(int rgb, int otherRgb) {
        return difference(Lab.of(rgb), Lab.of(otherRgb));
    }

    private static double share(double chroma) {
        double c7 = Math.pow(chroma, 7);
        return c7 / (c7 + POW25_7);
    }

    private static double hue(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double turned(double hue) {
        return hue > 180 ? hue - 360 : hue < -180 ? hue + 360 : hue;
    }

    private static double meanHue(double chromas, double h1, double h2) {
        double sum = h1 + h2;
        if (chromas == 0) {
            return sum;
        }
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double tint(double h) {
        return 1
                - 0.17 * Math.cos(Math.toRadians(h - 30))
                + 0.24 * Math.cos(Math.toRadians(2 * h))
                + 0.32 * Math.cos(Math.toRadians(3 * h + 6))
                - 0.20 * Math.cos(Math.toRadians(4 * h - 63));
    }

    private static double square(double x) {
        return x * x;
    }
}
