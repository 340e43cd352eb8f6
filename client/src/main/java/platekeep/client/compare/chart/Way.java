package platekeep.client.compare.chart;

/** The ways of looking at two charts. */
public enum Way {
    /** One beside the other. */
    SIDE_BY_SIDE("Side by side"),
    /** One over the other, what differs shown. */
    OVERLAY("Overlay"),
    /** One after the other at the same place. */
    BLINK("Blink");

    private final String word;

    Way(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
