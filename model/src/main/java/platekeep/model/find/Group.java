package platekeep.model.find;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import platekeep.model.plate.Age;
import platekeep.model.plate.State;

/** By what plates can be narrowed down. Each plate has some values of a group, often one, often none. */
public enum Group {
    /** The library that it is in. */
    LIBRARY(summary -> List.of(summary.library())),
    /** What needs to be known at a glance: the words of {@link Mark}. */
    MARK(summary -> summary.marks().stream().map(Mark::word).toList(), inOrder(Mark.values(), Mark::word)),
    /** Series, by title. */
    SERIES(Summary::series),
    /** Ages, by their words. */
    AGE(summary -> summary.ages().stream().map(Age::word).toList(), inOrder(Age.values(), Age::word)),
    /** Themes. */
    THEME(Summary::themes),
    /** What it is for. */
    FOR(Summary::uses),
    /** Pleats that it needs: a {@link Range}. */
    PLEATS(summary -> ranges(Range.PLEATS, summary.pleats()), inOrder(Range.PLEATS.toArray(Range[]::new), Range::text)),
    /** Rows that it has: a {@link Range}. */
    ROWS(summary -> ranges(Range.ROWS, summary.rows()), inOrder(Range.ROWS.toArray(Range[]::new), Range::text)),
    /** A colour as {@code #RRGGBB}: whatever looks like it is meant. The values of a plate are made by the index. */
    COLOUR(summary -> List.of()),
    /** Designers. */
    DESIGNER(Summary::designers),
    /** How far it has come. */
    STATE(summary -> summary.state().map(State::word).stream().toList(), inOrder(State.values(), State::word)),
    /** Where it comes from; a plate that does not say is her own. */
    ORIGIN(summary -> List.of(summary.origin().kind().orElse("own"))),
    /** What may be done with it; a plate that does not say may be published. */
    ALLOWED(summary -> List.of(summary.origin().use().orElse("publish"))),
    /** Years in which versions were made. */
    YEAR(summary -> summary.told().years().stream().map(String::valueOf).toList(), Comparator.reverseOrder());

    private final Function<Summary, Collection<String>> values;
    private final Comparator<String> order;

    Group(Function<Summary, Collection<String>> values) {
        this(values, Comparator.comparing(value -> ""));
    }

    Group(Function<Summary, Collection<String>> values, Comparator<String> order) {
        this.values = values;
        this.order = order;
    }

    /** The values of a plate. */
    Collection<String> values(Summary summary) {
        return values.apply(summary);
    }

    /** The order that values have by themselves, such as ages; all alike where there is none. */
    Comparator<String> order() {
        return order;
    }

    private static <T> Comparator<String> inOrder(T[] all, Function<T, String> word) {
        List<String> words = Stream.of(all).map(word).toList();
        return Comparator.comparingInt(value -> words.contains(value) ? words.indexOf(value) : words.size());
    }

    private static List<String> ranges(List<Range> ranges, int size) {
        return ranges.stream()
                .filter(range -> range.holds(size))
                .map(Range::text)
                .toList();
    }
}
