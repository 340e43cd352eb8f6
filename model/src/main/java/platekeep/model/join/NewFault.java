package platekeep.model.join;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Finding;

/**
 * A fault of the joined plate that neither side had, so that the two edits together made it.
 *
 * @param finding what the check found in the joined plate
 * @param mine my change that lies nearest to it; empty where none has a place on the chart
 * @param theirs the other side's change that lies nearest to it
 */
public record NewFault(Finding finding, Optional<Settled> mine, Optional<Settled> theirs) {

    /** How much farther a row lies than a pleat: three pleats is about as wide as a row is high on the cloth. */
    private static final int ROW = 3;

    /**
     * What only the join brought about, in the order of the check. Open clashes and what lies on no row are no such
     * faults.
     *
     * @param base what both sides started from
     * @param joined the join of the three
     */
    public static List<NewFault> of(Plate base, Plate mine, Plate theirs, Joined joined, CheckSettings settings) {
        Set<String> known = new HashSet<>(names(mine, settings));
        known.addAll(names(theirs, settings));
        Nearest nearest = new Nearest(base, joined);
        return Check.of(joined.plate(), settings).stream()
                .filter(NewFault::liesOnARow)
                .filter(finding -> !known.contains(name(joined.plate(), finding)))
                .map(finding -> new NewFault(
                        finding,
                        nearest.to(finding, Settled.By.MINE, mine),
                        nearest.to(finding, Settled.By.THEIRS, theirs)))
                .toList();
    }

    private static boolean liesOnARow(Finding finding) {
        return finding.row().isPresent() && !finding.rule().equals("open-clash");
    }

    private static List<String> names(Plate plate, CheckSettings settings) {
        return Check.of(plate, settings).stream()
                .filter(NewFault::liesOnARow)
                .map(finding -> name(plate, finding))
                .toList();
    }

    /** A fault is the same one in two plates where the rule and the row are, whatever was put in above or beside it. */
    private static String name(Plate plate, Finding finding) {
        int row = plate.rows().size() - finding.row().orElseThrow();
        return finding.rule() + " "
                + plate.rows()
                        .get(row)
                        .id()
                        .map(RowId::text)
                        .orElse(String.valueOf(finding.row().orElseThrow()));
    }

    /** Finds the change of a side that lies nearest to a place of the joined plate. */
    private static final class Nearest {
        private final Plate base;
        private final Joined joined;
        private final Map<RowId, Integer> rows = new HashMap<>();

        Nearest(Plate base, Joined joined) {
            this.base = base;
            this.joined = joined;
            List<Row> all = joined.plate().rows();
            for (int r = 0; r < all.size(); r++) {
                int row = r;
                all.get(r).id().ifPresent(id -> rows.putIfAbsent(id, row));
            }
        }

        Optional<Settled> to(Finding finding, Settled.By by, Plate side) {
            int row = joined.plate().rows().size() - finding.row().orElseThrow();
            ToIntFunction<Place> away = place -> away(place, side, row, finding.pleat());
            return joined.settled().stream()
                    .filter(settled -> settled.by() == by || settled.by() == Settled.By.BOTH)
                    .filter(settled -> !settled.places().isEmpty())
                    .min(Comparator.comparingInt(settled ->
                            settled.places().stream().mapToInt(away).min().orElseThrow()));
        }

        private int away(Place place, Plate side, int row, Optional<Integer> pleat) {
            Plate own = place.side() == Side.BEFORE ? base : side;
            int there = own.rows()
                    .get(place.row())
                    .id()
                    .flatMap(id -> Optional.ofNullable(rows.get(id)))
                    .orElse(place.row());
            int sideways = pleat.map(p -> Math.max(0, Math.max(place.from() - p, p - place.to())))
                    .orElse(0);
            return ROW * Math.abs(there - row) + sideways;
        }
    }
}
