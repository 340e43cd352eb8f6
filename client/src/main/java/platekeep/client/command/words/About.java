package platekeep.client.command.words;

import java.util.List;

/**
 * What the help of a verb says beside its words and options.
 *
 * @param name the verb
 * @param what what it does, a few sentences; the first one stands for the verb in the list of all verbs
 * @param exits what its exit codes mean where that is more than "done" and "trouble", else empty
 * @param examples commands as they are typed, at least one
 */
public record About(String name, String what, String exits, List<String> examples) {

    public About {
        examples = List.copyOf(examples);
    }

    /** A verb that is either done or in trouble. */
    public static About of(String name, String what, String... examples) {
        return new About(name, what, "", List.of(examples));
    }

    /** What it does in one sentence. */
    public String summary() {
        int end = what.indexOf(". ");
        return end < 0 ? what : what.substring(0, end + 1);
    }
}
