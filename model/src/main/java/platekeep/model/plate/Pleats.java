package platekeep.model.plate;

/**
 * The pleats that a chart covers, both ends included. A cable position is named by its left pleat, so the chart has
 * {@code to - from} positions, {@code from} to {@code to - 1}.
 *
 * @param from the first pleat, counted from the plate's fixed origin
 * @param to the last pleat
 */
public record Pleats(int from, int to, Unknown unknown) {

    /** Pleats lie within plus or minus this. */
    public static final int FARTHEST = 100_000;

    /** A chart has at most this many cable positions. */
    public static final int MOST_POSITIONS = 2000;

    public Pleats {
        if (from < -FARTHEST || to > FARTHEST || to - from < 1 || to - from > MOST_POSITIONS) {
            throw new IllegalArgumentException("pleats out of range: " + from + " to " + to);
        }
    }

    public Pleats(int from, int to) {
        this(from, to, Unknown.NONE);
    }

    /** The same with other ends; what is unknown stays. */
    public Pleats withEnds(int newFrom, int newTo) {
        return new Pleats(newFrom, newTo, unknown);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("from", from)
                .put("to", to)
                .putAll(unknown)
                .build();
    }

    /** How many cable positions a row has. */
    public int positions() {
        return to - from;
    }

    /** How many pleats the chart covers. */
    public int count() {
        return to - from + 1;
    }

    /** The index in a row's cells of the position that is named by this pleat. */
    public int index(int position) {
        return position - from;
    }

    /** Whether a cable can lie at this position. */
    public boolean hasPosition(int position) {
        return position >= from && position < to;
    }
}
