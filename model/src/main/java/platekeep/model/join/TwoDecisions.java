package platekeep.model.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/**
 * Clashes of the earlier plate that both sides settled, each in her own way. Where one of the two decided for what stood
 * there, a join of the plates alone would take the other's decision and tell nobody.
 */
final class TwoDecisions {

    private TwoDecisions() {}

    /** What the two decided; {@link Value#NOTHING} for one that took the thing away. */
    record Decided(Value mine, Value theirs) {}

    /** Whether neither side has the clash any more. */
    static boolean bothSettled(Clash clash, Plate mine, Plate theirs) {
        return !has(mine, clash) && !has(theirs, clash);
    }

    private static boolean has(Plate plate, Clash clash) {
        return plate.clashes().stream()
                .anyMatch(c -> c.what() == clash.what() && c.place().equals(clash.place()));
    }

    /**
     * The two decisions where they differ; for clashes of a field, and, where both are among the clash's own
     * answers, of a thing on the picture, the order of a row or an end of the chart.
     */
    static Optional<Decided> of(Clash clash, Plate mine, Plate theirs) {
        boolean told =
                switch (clash.what()) {
                    case CABLES, ROW, ROWS, TWINS, FIGURE, COLOUR -> false;
                    default -> bothSettled(clash, mine, theirs);
                };
        if (!told) {
            return Optional.empty();
        }
        return differing(value(mine, clash), value(theirs, clash));
    }

    /** The two decisions about a colour's entry where they differ; its key may have another letter on each side. */
    static Optional<Decided> of(Optional<Colour> mine, Optional<Colour> theirs) {
        return differing(Optional.of(entry(mine)), Optional.of(entry(theirs)));
    }

    private static Value entry(Optional<Colour> colour) {
        return colour.map(c -> (Value) c.value()).orElse(Value.NOTHING);
    }

    private static Optional<Decided> differing(Optional<Value> m, Optional<Value> t) {
        return m.isPresent() && t.isPresent() && !m.equals(t)
                ? Optional.of(new Decided(m.get(), t.get()))
                : Optional.empty();
    }

    private static Optional<Value> value(Plate plate, Clash clash) {
        return switch (clash.what()) {
            case FIELD -> shown(plate, clash).or(() -> FieldJoin.value(plate, clash));
            default -> shown(plate, clash);
        };
    }

    /** Which of the clash's answers a plate shows. */
    static Optional<Value> shown(Plate plate, Clash clash) {
        return Stream.concat(Stream.of(clash.base()), clash.sides().stream().map(Clash.Side::value))
                .filter(value -> fits(plate, clash, value))
                .findFirst();
    }

    private static boolean fits(Plate plate, Clash clash, Value value) {
        try {
            return Settling.put(plate, clash, value).equals(plate);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /**
     * The rows of the earlier plate (top row 0) that one decision keeps and another takes out.
     *
     * @param inMine whether mine has a row of the earlier plate
     */
    static Set<Integer> rows(Plate base, Plate mine, Plate theirs, IntPredicate inMine, IntPredicate inTheirs) {
        Set<Integer> contested = new TreeSet<>();
        for (Clash clash : base.clashes()) {
            boolean aboutRows = clash.what() == Clash.What.ROW || clash.what() == Clash.What.ROWS;
            if (aboutRows && bothSettled(clash, mine, theirs)) {
                List<Integer> rows = rows(base, clash);
                if (rows.stream().anyMatch(r -> inMine.test(r) != inTheirs.test(r))) {
                    contested.addAll(rows);
                }
            }
        }
        return contested;
    }

    /** The rows of a plate that a clash is about: one row, or the runs that the two sides put in. */
    static List<Integer> rows(Plate plate, Clash clash) {
        if (clash.what() == Clash.What.ROW) {
            int row = Settling.row(plate, clash);
            return row < 0 ? List.of() : List.of(row);
        }
        Set<Integer> rows = new TreeSet<>();
        for (Clash.Side side : clash.sides()) {
            if (side.value() instanceof Value.Items items) {
                items.items()
                        .forEach(line ->
                                id(line).map(plate::indexOf).filter(r -> r >= 0).ifPresent(rows::add));
            }
        }
        return new ArrayList<>(rows);
    }

    private static Optional<RowId> id(Value line) {
        return Optional.of(line)
                .filter(Value.Text.class::isInstance)
                .map(text -> ((Value.Text) text).string())
                .filter(text -> text.indexOf(' ') > 0)
                .map(text -> text.substring(0, text.indexOf(' ')))
                .filter(RowId::isRowId)
                .map(RowId::new);
    }

    /** A row as a clash of rows tells it. */
    static Value line(Row row, String cells) {
        return Value.of(row.id().map(id -> id.text() + " ").orElse("") + cells);
    }
}
