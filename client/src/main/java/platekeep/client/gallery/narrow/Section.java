package platekeep.client.gallery.narrow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.find.Choice;
import platekeep.model.find.Found;
import platekeep.model.find.Group;
import platekeep.model.find.Query;

/**
 * A group with its values as they are shown.
 *
 * @param group which
 * @param title its heading
 * @param values in a lasting order; those that would leave nothing are left out unless they are chosen
 * @param match whether one of the values that are chosen is enough; empty where fewer than two are or it makes no sense
 */
public record Section(Group group, String title, List<Value> values, Optional<Choice.Match> match) {
    private static final Set<Group> SINGLE =
            Set.of(Group.LIBRARY, Group.PLEATS, Group.ROWS, Group.STATE, Group.ORIGIN, Group.ALLOWED);

    /**
     * A value to choose.
     *
     * @param value as it is asked for
     * @param word as it is shown
     * @param count how many plates there are or would be
     * @param chosen whether it is asked for
     */
    public record Value(String value, String word, int count, boolean chosen) {}

    public Section {
        values = List.copyOf(values);
    }

    /** All groups that have something to choose, in the order in which they are shown. */
    public static List<Section> of(Found found, Query query, boolean severalLibraries) {
        List<Section> sections = new ArrayList<>();
        for (Group group : Group.values()) {
            if (group == Group.LIBRARY && !severalLibraries) {
                continue;
            }
            List<Value> values = found.counts(group).stream()
                    .filter(count -> count.count() > 0 || count.chosen())
                    .map(count ->
                            new Value(count.value(), Wording.of(group, count.value()), count.count(), count.chosen()))
                    .toList();
            if (!values.isEmpty()) {
                sections.add(new Section(group, Wording.title(group), values, match(group, query)));
            }
        }
        return sections;
    }

    private static Optional<Choice.Match> match(Group group, Query query) {
        return query.choice(group)
                .filter(choice -> choice.values().size() > 1 && !SINGLE.contains(group))
                .map(Choice::match);
    }

    /** The values that are chosen. */
    public List<Value> chosen() {
        return values.stream().filter(Value::chosen).toList();
    }
}
