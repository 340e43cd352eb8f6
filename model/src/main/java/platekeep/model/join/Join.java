package platekeep.model.join;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Difference;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * Joins two people's edits of one plate.
 *
 * <p>The laws: {@code join(o, a, o)} is a, {@code join(o, o, b)} is b, {@code join(o, a, a)} is a; sides exchanged give
 * the same plate; each cable's colour in the result comes from one of the three plates. Everything that can be settled is
 * settled; what cannot is a clash in the result and what stood before stands there.
 */
public final class Join {

    private Join() {}

    /**
     * Joins two plates that were one.
     *
     * @param base what both started from; empty: nothing, so that both plates are wholly new
     * @param mine one edit
     * @param theirs the other edit
     * @param hands who made them
     * @throws JoinTrouble when the two are different plates, or together more than a plate can hold
     */
    public static Joined of(Optional<Plate> base, Plate mine, Plate theirs, Hands hands) {
        Plate before = before(base, mine, theirs);
        Optional<Plate> plain = withoutJoining(before, mine, theirs);
        if (plain.isPresent()) {
            return new Joined(
                    plain.get(), settled(base, () -> Comparison.of(before, mine), () -> Comparison.of(before, theirs)));
        }
        Ordered ordered = Ordered.of(before, mine, theirs, hands);
        PlateJoin join = ordered.join();
        Plate joined = join.joined();
        return new Joined(
                joined,
                settled(
                        base,
                        () -> join.comparison(ordered.mine(), mine),
                        () -> join.comparison(1 - ordered.mine(), theirs)));
    }

    /**
     * A join whose sides stand in an order that is theirs alone, so that nothing in it depends on who joins.
     *
     * @param mine which of its sides, 0 or 1, is mine
     */
    private record Ordered(PlateJoin join, int mine) {
        static Ordered of(Plate base, Plate mine, Plate theirs, Hands hands) {
            return isFirst(mine, theirs)
                    ? new Ordered(new PlateJoin(base, mine, theirs, hands), 0)
                    : new Ordered(new PlateJoin(base, theirs, mine, hands.exchanged()), 1);
        }
    }

    private static boolean isFirst(Plate mine, Plate theirs) {
        int rows = Math.min(mine.rows().size(), theirs.rows().size());
        for (int i = 0; i < rows; i++) {
            int order = mine.rows().get(i).text().compareTo(theirs.rows().get(i).text());
            if (order != 0) {
                return order < 0;
            }
        }
        return PlateText.write(mine).compareTo(PlateText.write(theirs)) <= 0;
    }

    /** As {@link #of}, without telling what was settled: for whoever only wants the joined plate. */
    public static Plate plate(Optional<Plate> base, Plate mine, Plate theirs, Hands hands) {
        Plate before = before(base, mine, theirs);
        return withoutJoining(before, mine, theirs)
                .orElseGet(() -> Ordered.of(before, mine, theirs, hands).join().joined());
    }

    private static Plate before(Optional<Plate> base, Plate mine, Plate theirs) {
        if (!mine.id().equals(theirs.id())
                || base.isPresent() && !base.get().id().equals(mine.id())) {
            throw new JoinTrouble("These are different plates (their ids differ), so there is nothing to join;"
                    + " give versions of one plate.");
        }
        return base.orElseGet(() -> new Draft(mine.id(), "").build());
    }

    /** The answer where only one side changed anything, or both the same. */
    private static Optional<Plate> withoutJoining(Plate base, Plate mine, Plate theirs) {
        if (mine.equals(theirs) || theirs.equals(base)) {
            return Optional.of(mine);
        }
        return mine.equals(base) ? Optional.of(theirs) : Optional.empty();
    }

    private static List<Settled> settled(Optional<Plate> base, Supplier<Comparison> mine, Supplier<Comparison> theirs) {
        if (base.isEmpty()) {
            return List.of();
        }
        Map<String, Settled> out = new LinkedHashMap<>();
        for (Difference d : mine.get().differences()) {
            out.put(d.words(), new Settled(d.words(), Settled.By.MINE, d.places()));
        }
        for (Difference d : theirs.get().differences()) {
            Settled.By by = out.containsKey(d.words()) ? Settled.By.BOTH : Settled.By.THEIRS;
            out.put(d.words(), new Settled(d.words(), by, d.places()));
        }
        return new ArrayList<>(out.values());
    }
}
