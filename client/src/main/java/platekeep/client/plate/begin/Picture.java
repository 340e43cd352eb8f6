package platekeep.client.plate.begin;

/**
 * A picture as dots.
 *
 * @param rgb {@code 0xRRGGBB}, row by row from the top; {@link #CLEAR} where it is transparent
 */
record Picture(int width, int height, int[] rgb) {
    /** Where one can see through the picture. */
    static final int CLEAR = -1;

    /** The mean colour of a rectangle in linear light, or {@link #CLEAR} where most of it is. */
    int mean(double left, double top, double right, double bottom) {
        int x0 = clamp((int) Math.floor(left), width - 1);
        int y0 = clamp((int) Math.floor(top), height - 1);
        int x1 = clamp((int) Math.ceil(right) - 1, width - 1);
        int y1 = clamp((int) Math.ceil(bottom) - 1, height - 1);
        double red = 0;
        double green = 0;
        double blue = 0;
        double all = 0;
        double clear = 0;
        for (int y = y0; y <= Math.max(y0, y1); y++) {
            double down = Math.max(1e-9, Math.min(bottom, y + 1) - Math.max(top, y));
            for (int x = x0; x <= Math.max(x0, x1); x++) {
                double part = down * Math.max(1e-9, Math.min(right, x + 1) - Math.max(left, x));
                int dot = rgb[y * width + x];
                all += part;
                clear += dot == CLEAR ? part : 0;
                red += dot == CLEAR ? 0 : part * LIGHT[dot >> 16 & 255];
                green += dot == CLEAR ? 0 : part * LIGHT[dot >> 8 & 255];
                blue += dot == CLEAR ? 0 : part * LIGHT[dot & 255];
            }
        }
        double seen = all - clear;
        return clear * 2 > all ? CLEAR : encoded(red / seen) << 16 | encoded(green / seen) << 8 | encoded(blue / seen);
    }

    private static int clamp(int at, int most) {
        return Math.max(0, Math.min(most, at));
    }

    /** Light of each value of a channel (sRGB, IEC 61966-2-1). */
    private static final double[] LIGHT = lights();

    private static double[] lights() {
        double[] light = new double[256];
        for (int value = 0; value < 256; value++) {
            double c = value / 255.0;
            light[value] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return light;
    }

    private static int encoded(double light) {
        double c = light <= 0.0031308 ? light * 12.92 : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return clamp((int) Math.round(c * 255), 255);
    }
}
