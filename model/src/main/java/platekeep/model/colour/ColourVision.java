package platekeep.model.colour;

/**
 * How people see colours: ordinarily, or without one of the three kinds of cones.
 *
 * <p>Source of the matrices (severity 1.0, in linear light): Machado, Oliveira, Fernandes, "A physiologically-based model
 * for simulation of color vision deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), 2009.
 */
public enum ColourVision {
    ORDINARY(1, 0, 0, 0, 1, 0, 0, 0, 1),
    /** Without the cones for long waves (red). */
    PROTAN(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    /** Without the cones for middle waves (green). */
    DEUTAN(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    /** Without the cones for short waves (blue). */
    TRITAN(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    private final double[] matrix;

    ColourVision(double... matrix) {
        this.matrix = matrix;
    }

    /** The colour (both {@code 0xRRGGBB}) that stands for what is seen; what lies outside sRGB is cut off. */
    public int seen(int rgb) {
        double[] c = Srgb.linear(rgb);
        return this == ORDINARY ? rgb & 0xFFFFFF : Srgb.encoded(row(0, c), row(1, c), row(2, c));
    }

    private double row(int row, double[] c) {
        return entry(row, 0) * c[0] + entry(row, 1) * c[1] + entry(row, 2) * c[2];
    }

    double entry(int row, int column) {
        return matrix[row * 3 + column];
    }
}
