package platekeep.model.colour;

/** Channels of sRGB (IEC 61966-2-1) to linear light and back. */
final class Srgb {

    private Srgb() {}

    /** The linear light of the three channels, each 0 to 1. */
    static double[] linear(int rgb) {
        return new double[] {linearChannel(rgb >> 16 & 0xFF), linearChannel(rgb >> 8 & 0xFF), linearChannel(rgb & 0xFF)
        };
    }

    /** The nearest colour of sRGB; light outside 0 to 1 is cut off. */
    static int encoded(double red, double green, double blue) {
        return channel(red) << 16 | channel(green) << 8 | channel(blue);
    }

    private static double linearChannel(int value) {
        double c = value / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int channel(double light) {
        double c = Math.min(1, Math.max(0, light));
        double encoded = c <= 0.0031308 ? c * 12.92 : 1.055 * Math.pow(c, 1 / 2.4) - 0.055;
        return (int) Math.round(encoded * 255);
    }
}
