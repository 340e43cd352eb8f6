package platekeep.model.join;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Clash;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Value;

/** Collects the clashes of a join and puts them in their order: by kind, then as rows run from the top, then position. */
final class ClashList {
    private final Hands hands;
    private final List<Listed> listed = new ArrayList<>();

    /**
     * A clash with its sorting place.
     *
     * @param row the row of the joined plate from the top; a large number where the clash has none
     */
    private record Listed(Clash clash, int row) {}

    static final int NO_ROW = Integer.MAX_VALUE;

    private static final Comparator<Listed> ORDER = Comparator.comparing(
                    (Listed l) -> l.clash().what())
            .thenComparingInt(Listed::row)
            .thenComparingInt(l -> l.clash().numberAt("from").orElse(0))
            .thenComparing(l -> l.clash().place().text(), CodePoints.ORDER)
            .thenComparing(l -> l.clash().value().text(), CodePoints.ORDER);

    ClashList(Hands hands) {
        this.hands = hands;
    }

    /** Declares a clash between the two sides' values; two that are the same are none. */
    void add(Clash.What what, Value.Entries place, Value base, Value mine, Value theirs, int row) {
        if (mine.equals(theirs)) {
            return;
        }
        add(new Clash(what, place, base, sides(mine, theirs)), row);
    }

    List<Clash.Side> sides(Value mine, Value theirs) {
        return List.of(new Clash.Side(mine, hands.of(0)), new Clash.Side(theirs, hands.of(1)));
    }

    void add(Clash clash, int row) {
        listed.add(new Listed(clash, row));
    }

    void clear() {
        listed.clear();
    }

    /** Takes out the clash at this place, if there is one: it is to be put together with another. */
    Optional<Clash> take(Clash.What what, Value.Entries place) {
        for (int i = 0; i < listed.size(); i++) {
            Clash clash = listed.get(i).clash();
            if (clash.what() == what && clash.place().equals(place)) {
                listed.remove(i);
                return Optional.of(clash);
            }
        }
        return Optional.empty();
    }

    List<Clash> sorted() {
        return listed.stream().sorted(ORDER).map(Listed::clash).distinct().toList();
    }

    /**
     * The clashes of a plate whose rows are turned upside down at the end.
     *
     * @param names the rows' names as they stand before, from the top
     */
    List<Clash> sortedTurned(List<Value> names) {
        int rows = names.size();
        return listed.stream()
                .map(l -> new Listed(turned(l.clash(), names), l.row() == NO_ROW ? NO_ROW : rows - 1 - l.row()))
                .sorted(ORDER)
                .map(Listed::clash)
                .distinct()
                .toList();
    }

    private static Clash turned(Clash clash, List<Value> names) {
        Optional<Integer> number = clash.numberAt("row");
        if (number.isPresent()) {
            return NumberedRows.at(clash, names.size() + 1 - number.get());
        }
        if (clash.what() != Clash.What.ROWS) {
            return clash;
        }
        int above = clash.sides().stream()
                .map(side ->
                        side.value() instanceof Value.Items run ? run.items().size() : 0)
                .reduce(names.indexOf(clash.place().entries().get("after")), Integer::sum);
        Value after = above + 1 < names.size() ? names.get(above + 1) : Value.NOTHING;
        return clash.withPlace(place("after", after)).withValues(ClashList::reversed);
    }

    private static Value reversed(Value run) {
        if (!(run instanceof Value.Items items)) {
            return run;
        }
        List<Value> rows = new ArrayList<>(items.items());
        Collections.reverse(rows);
        return new Value.Items(rows);
    }

    static Value.Entries place(String key, Value value) {
        return new Value.Builder().put(key, value).build();
    }
}
