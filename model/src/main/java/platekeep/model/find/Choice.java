package platekeep.model.find;

import java.util.Set;
import java.util.TreeSet;

/**
 * What is chosen in a group.
 *
 * @param values at least one
 * @param match whether a plate needs one of them or all
 */
public record Choice(Set<String> values, Match match) {

    /** How many of the values a plate needs. */
    public enum Match {
        ANY,
        ALL;

        public Match other() {
            return this == ANY ? ALL : ANY;
        }
    }

    public Choice {
        values = Set.copyOf(values);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("nothing is chosen");
        }
    }

    /** Just one value. */
    public static Choice of(String value) {
        return new Choice(Set.of(value), Match.ANY);
    }

    Set<String> turned(String value) {
        Set<String> turned = new TreeSet<>(values);
        if (!turned.remove(value)) {
            turned.add(value);
        }
        return turned;
    }
}
