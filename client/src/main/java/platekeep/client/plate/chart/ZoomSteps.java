package platekeep.client.plate.chart;

/** The dots to a pleat that one zooms through; below one, several pleats share a dot. */
final class ZoomSteps {
    private static final double[] STEPS = {
        0.125, 0.25, 0.375, 0.5, 0.75, 1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 17, 20, 24, 28, 34, 40, 48, 64
    };

    private ZoomSteps() {}

    static double least() {
        return STEPS[0];
    }

    static double most() {
        return STEPS[STEPS.length - 1];
    }

    /** So many steps up from a size, or down where negative; the ends are kept to. */
    static double next(double pleat, int by) {
        int at = 0;
        while (at < STEPS.length - 1 && STEPS[at + 1] <= pleat) {
            at++;
        }
        int wanted = by < 0 && STEPS[at] < pleat ? at + by + 1 : at + by;
        return STEPS[Math.max(0, Math.min(STEPS.length - 1, wanted))];
    }
}
