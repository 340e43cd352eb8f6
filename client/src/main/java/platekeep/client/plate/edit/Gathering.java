package platekeep.client.plate.edit;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.GatheringRow;
import platekeep.model.plate.Plate;

/** The gathering rows behind a picture, and on which of them a geometric line lies at first. */
public final class Gathering {
    /** Stacked rows to one gathering space where a plate does not say: common practice, no source. */
    private static final int STACKED_ROWS = 5;

    /** A three-step trellis is what most bands begin with: common practice, no source. */
    private static final int STEPS = 3;

    private static final List<String> TRAVELLING =
            List.of("baby wave", "wave", "trellis", "diamond", "honeycomb", "surface honeycomb", "van dyke");

    private Gathering() {}

    /** Stacked rows to one gathering space. */
    public static int space(Plate plate) {
        return plate.cloth().stackedRows().filter(n -> n > 0).orElse(STACKED_ROWS);
    }

    /** Whether no gathering row has a number, so that nothing can be placed by it. */
    public static boolean isNameless(Plate plate) {
        return plate.cloth().gatheringRows().isEmpty()
                && plate.starts().stream()
                        .noneMatch(
                                s -> s.on().filter(GatheringRow::isGatheringRow).isPresent());
    }

    /**
     * The plate with numbered gathering rows: as many as the picture needs, it lying on the last ones, and two above it.
     * The same plate where they have numbers.
     */
    public static Plate numbered(Plate plate) {
        if (!isNameless(plate)) {
            return plate;
        }
        Cloth cloth = plate.cloth();
        int needed = (plate.rows().size() + space(plate) - 1) / space(plate) + 3;
        return plate.edit()
                .cloth(new Cloth(
                        Optional.of(needed),
                        cloth.spacingMm(),
                        cloth.stackedRows(),
                        cloth.fullness(),
                        cloth.holding(),
                        cloth.unknown()))
                .build();
    }

    /**
     * To which gathering row a line of a stitch travels; empty for one that stays on its level.
     *
     * @param other the row that she pointed at, if it is another than the first
     */
    public static Optional<String> toRow(String stitch, String on, Optional<String> other) {
        if (!TRAVELLING.contains(stitch)) {
            return Optional.empty();
        }
        int halves = stitch.equals("baby wave") ? 1 : 2;
        return other.or(() -> GatheringRow.lower(on, halves, 2));
    }

    /** Steps at first; only a trellis has them. */
    public static Optional<Integer> steps(String stitch) {
        return stitch.equals("trellis") ? Optional.of(STEPS) : Optional.empty();
    }
}
