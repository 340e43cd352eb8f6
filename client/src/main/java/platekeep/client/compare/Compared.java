package platekeep.client.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Spots;
import platekeep.model.compare.Comparison;
import platekeep.model.compare.Difference;
import platekeep.model.compare.Difference.About;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.plate.Palette;

/**
 * Two plates compared, ready to be shown. Made in the background.
 *
 * @param plates the two, lined up
 * @param changes what changed, in the order of stepping: as the comparison tells it, but cables as they are stacked,
 *     from the bottom row up and from the left
 */
record Compared(PairedPlates plates, List<Difference> changes) {
    Compared {
        changes = List.copyOf(changes);
    }

    static Compared of(Comparison comparison) {
        List<Difference> changes = new ArrayList<>(comparison.differences());
        changes.sort(Comparator.comparing(Difference::about).thenComparing(Compared::asStacked));
        return new Compared(PairedPlates.of(comparison), changes);
    }

    private static int asStacked(Difference one, Difference other) {
        if (one.about() != About.CABLES) {
            return 0;
        }
        Comparator<Place> bottomFirst =
                Comparator.comparingInt((Place p) -> -p.row()).thenComparingInt(Place::from);
        return bottomFirst.compare(
                one.places().stream().min(bottomFirst).orElseThrow(),
                other.places().stream().min(bottomFirst).orElseThrow());
    }

    /** The change that lies at a place of the charts, the smallest where there are several. */
    OptionalInt at(Side side, double pleat, double line) {
        OptionalInt best = OptionalInt.empty();
        for (int i = 0; i < changes.size(); i++) {
            boolean isSmaller = best.isEmpty()
                    || changes.get(i).places().size()
                            < changes.get(best.getAsInt()).places().size();
            if (isSmaller && Spots.of(plates, changes.get(i)).has(side, pleat, line)) {
                best = OptionalInt.of(i);
            }
        }
        return best;
    }

    /** A shade as it was and as it is, where a change is about one: two colours as {@code 0xRRGGBB}. */
    List<Integer> shades(Difference change) {
        if (change.about() != About.COLOURS) {
            return List.of();
        }
        Palette was = plates.plate(Side.BEFORE).palette();
        return plates.plate(Side.AFTER).palette().entries().entrySet().stream()
                .filter(e -> change.words().contains(" " + e.getValue().name() + " "))
                .max(Comparator.comparingInt(e -> e.getValue().name().length()))
                .flatMap(e -> was.get(e.getKey())
                        .filter(old -> old.rgb() != e.getValue().rgb())
                        .map(old -> List.of(old.rgb(), e.getValue().rgb())))
                .orElse(List.of());
    }
}
