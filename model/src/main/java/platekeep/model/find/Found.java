package platekeep.model.find;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.find.typed.Period;

/** The answer to a query. The places that it gives are those of the index that was asked, and of no other. */
public final class Found {
    private final int[] at;
    private final Map<Group, List<Count>> counts;
    private final Map<String, List<String>> meant;
    private final Map<String, List<String>> ages;
    private final List<When> times;

    /**
     * A time that was typed among the words.
     *
     * @param typed as it was
     * @param period what it was taken for
     * @param said whether a plate that was found says what was typed in so many words, and was found by that
     */
    public record When(String typed, Period period, boolean said) {}

    /**
     * A value to narrow down by.
     *
     * @param value as it is asked for
     * @param count how many plates there would be if it alone were asked for in its group, or one more where all that is
     *     chosen there must be in a plate; all other groups and the words hold
     * @param all how many plates of the whole index have it
     * @param chosen whether it is asked for
     */
    public record Count(String value, int count, int all, boolean chosen) {}

    Found(
            int[] at,
            Map<Group, List<Count>> counts,
            Map<String, List<String>> meant,
            Map<String, List<String>> ages,
            List<When> times) {
        this.at = at;
        this.counts = new EnumMap<>(counts);
        this.ages = Collections.unmodifiableMap(new LinkedHashMap<>(ages));
        this.times = List.copyOf(times);
        this.meant = Collections.unmodifiableMap(new LinkedHashMap<>(meant));
    }

    /** How many plates were found. */
    public int size() {
        return at.length;
    }

    /** Where in the index the n-th plate found stands, in the order that was asked for. */
    public int at(int n) {
        return at[n];
    }

    /**
     * All values of a group in a lasting order: those that have an order of their own by it, the others by how many
     * plates of the whole index have them, most first. Values that no plate found would have are there with 0.
     */
    public List<Count> counts(Group group) {
        return counts.getOrDefault(group, List.of());
    }

    /** Words that were typed and stand nowhere, with those that were taken in their place as slips of typing. */
    public Map<String, List<String>> meant() {
        return meant;
    }

    /** Ages that were typed among the words, each with the words for ages that it stands for. */
    public Map<String, List<String>> ages() {
        return ages;
    }

    /** Times that were typed among the words. */
    public List<When> times() {
        return times;
    }
}
