package platekeep.model.find;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is looked for; everything that is not asked for is left open.
 *
 * @param words each must be in the plate somewhere
 * @param choices what a plate must have, by group
 */
public record Query(String words, Map<Group, Choice> choices) {

    /** Every plate. */
    public static final Query ALL = new Query("", Map.of());

    public Query {
        Map<Group, Choice> inOrder = new EnumMap<>(Group.class);
        inOrder.putAll(choices);
        choices = Collections.unmodifiableMap(inOrder);
    }

    /** Whether every plate is an answer. */
    public boolean isOpen() {
        return words.isBlank() && choices.isEmpty();
    }

    public Optional<Choice> choice(Group group) {
        return Optional.ofNullable(choices.get(group));
    }

    /** What is chosen in a group, often nothing. */
    public Set<String> chosen(Group group) {
        return choice(group).map(Choice::values).orElse(Set.of());
    }

    public Query withWords(String newWords) {
        return new Query(newWords, choices);
    }

    /** The same with other values chosen in a group; none leaves the group open. */
    public Query with(Group group, Set<String> values) {
        Choice.Match match = choice(group).map(Choice::match).orElse(Choice.Match.ANY);
        return values.isEmpty() ? without(group) : with(group, new Choice(values, match));
    }

    /** The same with something else chosen in a group. */
    public Query with(Group group, Choice choice) {
        Map<Group, Choice> changed = changeable();
        changed.put(group, choice);
        return new Query(words, changed);
    }

    /** The same with a group left open. */
    public Query without(Group group) {
        Map<Group, Choice> changed = changeable();
        changed.remove(group);
        return new Query(words, changed);
    }

    private Map<Group, Choice> changeable() {
        Map<Group, Choice> changeable = new EnumMap<>(Group.class);
        changeable.putAll(choices);
        return changeable;
    }

    /** The same with a value of a group asked for, or no longer so. */
    public Query turn(Group group, String value) {
        return with(group, choice(group).map(choice -> choice.turned(value)).orElse(Set.of(value)));
    }

    /** The same where a plate needs one of the values chosen in a group instead of all, or the other way round. */
    public Query turnMatch(Group group) {
        return choice(group)
                .map(choice ->
                        with(group, new Choice(choice.values(), choice.match().other())))
                .orElse(this);
    }
}
