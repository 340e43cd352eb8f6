package platekeep.model.join;

import java.util.ArrayList;
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

    /** Declares a clash between the two sides' values. */
    void add(Clash.What what, Value.Entries place, Value base, Value mine, Value theirs, int row) {
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

    static Value.Entries place(String key, Value value) {
        return new Value.Builder().put(key, value).build();
    }
}
