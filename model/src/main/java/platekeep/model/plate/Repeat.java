package platekeep.model.plate;

/**
 * The chart is one repeat of a longer strip.
 *
 * @param every pleats from one repeat to the next
 * @param times how often it comes in all
 */
public record Repeat(int every, int times, Unknown unknown) {

    public Value.Entries value() {
        return new Value.Builder()
                .put("every", every)
                .put("times", times)
                .putAll(unknown)
                .build();
    }
}
