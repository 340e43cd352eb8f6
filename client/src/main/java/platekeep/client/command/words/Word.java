package platekeep.client.command.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Trouble;

/**
 * A word that a verb takes: an option with or without a value, or what the verb is about. Filled once, when the command
 * is read, and asked by the verb afterwards.
 */
public final class Word {

    /** How often a word may be given. */
    public enum Times {
        ONCE(1, 1),
        AT_MOST_ONCE(0, 1),
        ANY(0, Integer.MAX_VALUE),
        AT_LEAST_ONCE(1, Integer.MAX_VALUE);

        private final int least;
        private final int most;

        Times(int least, int most) {
            this.least = least;
            this.most = most;
        }

        boolean allows(int count) {
            return count >= least && count <= most;
        }
    }

    private final List<String> names;
    private final String label;
    private final Times times;
    private final String description;
    private final List<String> given = new ArrayList<>();

    /**
     * @param names the option's names, such as {@code -o} and {@code --output}; empty for what the verb is about
     * @param label what stands for the value in the help; blank for an option without a value
     */
    Word(List<String> names, String label, Times times, String description) {
        this.names = List.copyOf(names);
        this.label = label;
        this.times = times;
        this.description = description;
    }

    /** Whether it was given. */
    public boolean given() {
        return !given.isEmpty();
    }

    /** The value that was given last, if any. */
    public Optional<String> value() {
        return given.isEmpty() ? Optional.empty() : Optional.of(given.get(given.size() - 1));
    }

    /** The value of a word that must be given. */
    public String text() {
        return value().orElseThrow();
    }

    /** All values in the order in which they were given. */
    public List<String> values() {
        return List.copyOf(given);
    }

    void give(String value) throws Trouble {
        given.add(value);
        if (given.size() > times.most) {
            throw new Trouble(title() + " is given more than once.");
        }
    }

    /** Whether it was given as often as it must be. */
    boolean complete() {
        return times.allows(given.size());
    }

    /** Whether one more may be given. */
    boolean open() {
        return given.size() < times.most;
    }

    boolean isOption() {
        return !names.isEmpty();
    }

    boolean hasName(String name) {
        return names.contains(name);
    }

    boolean takesValue() {
        return !label.isEmpty();
    }

    /** What stands for its value. */
    String label() {
        return label;
    }

    /** The word as a sentence names it. */
    String title() {
        return isOption() ? names.get(names.size() - 1) : label;
    }

    /** The word in the left column of the help: {@code -o, --output RESULT}. */
    String help() {
        String left = isOption() ? String.join(", ", names) + (takesValue() ? " " + label : "") : label;
        return left;
    }

    /** The word in the usage line: {@code [--json]}, {@code PLATE...}. */
    String usage() {
        String one = isOption() ? title() + (takesValue() ? " " + label : "") : label;
        String many = times.most > 1 ? one + "..." : one;
        return times.least == 0 ? "[" + many + "]" : many;
    }

    String description() {
        return description;
    }
}
