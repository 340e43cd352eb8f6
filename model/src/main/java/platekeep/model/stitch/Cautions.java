package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/**
 * The cautions that a plate's ages, uses, notions and stitches call for. A plate that says no ages may be for any, so it
 * gets those of the youngest.
 */
public final class Cautions {

    private static final Set<String> SMALL_PARTS = Set.of("button", "bead", "trinket", "ribbon flower");
    private static final Set<String> CORDS = Set.of("ribbon", "tie");
    private static final Set<String> BEDDING = Set.of("pillow", "quilt", "cushion");
    private static final Set<String> LOOPS = Set.of("bullion", "bullion flower", "lazy daisy");

    private final Plate plate;

    private Cautions(Plate plate) {
        this.plate = plate;
    }

    /** In the order in which they are printed, the gravest first; the last is on every sheet. */
    public static List<Caution> of(Plate plate) {
        return new Cautions(plate).all();
    }

    private List<Caution> all() {
        List<Caution> cautions = new ArrayList<>();
        if (isForUnder(36) && sewsOn(SMALL_PARTS)) {
            cautions.add(Caution.of(
                    "Small parts: for children under 36 months do not sew on buttons, beads, trinkets or ribbon flowers that"
                            + " can come off; what fits wholly into a cylinder of 31.7 mm diameter and 25.4 to 57.1 mm depth"
                            + " is a choking hazard. Work French knots or bullions instead.",
                    "16 CFR 1501 (garments and their buttons are exempt by 1501.3(d): here it is good practice);"
                            + " SOR/2011-17 Schedule 1"));
        }
        if (isForUnder(12) && isFor(BEDDING)) {
            cautions.add(Caution.of(
                    "Pillows, quilts and cushions for a baby under 12 months are for decoration only, never in a sleep"
                            + " space.",
                    "American Academy of Pediatrics 2022, Pediatrics 150(1) e2022057990"));
        }
        if (isForAChild() && sewsOn(CORDS)) {
            cautions.add(Caution.of(
                    "Ribbons and ties on children's clothes: none at the hood or neck; at the waist or hem short, sewn fast,"
                            + " without knots or beads at the ends.",
                    "16 CFR 1120 and ASTM F1816 (hood and neck 2T to 12, waist 2T to 16, 75 mm); EN 14682 (none to 7 years"
                            + " at hood and neck, no free ends from 7 to 14)"));
        }
        if (isForAChild() && isFor(Set.of("nightwear"))) {
            cautions.add(Caution.of(
                    "Children's nightwear: this may not meet the flammability rules; keep it away from fire.",
                    "16 CFR 1615 and 1616"));
        }
        if (isForUnder(36) && hasLoops()) {
            cautions.add(Caution.of(
                    "Bullions, lazy daisies and long floats catch little fingers: keep loops short and secure both ends.",
                    "good practice"));
        }
        cautions.add(Caution.of(
                "Count pins and needles in and out; take out gathering threads and pins before wear.",
                "common practice"));
        return cautions;
    }

    private boolean isForUnder(int months) {
        return plate.ages().isEmpty() || plate.ages().stream().anyMatch(age -> age.under(months));
    }

    private boolean isForAChild() {
        return plate.ages().isEmpty() || plate.ages().stream().anyMatch(age -> age != Age.GROWN_UP);
    }

    private boolean isFor(Set<String> uses) {
        return plate.uses().stream().map(Cautions::lower).anyMatch(uses::contains);
    }

    private boolean sewsOn(Set<String> kinds) {
        return plate.notions().stream().anyMatch(notion -> notion.count() > 0 && kinds.contains(lower(notion.kind())));
    }

    private boolean hasLoops() {
        return plate.marks().stream().anyMatch(mark -> LOOPS.contains(lower(mark.stitch())))
                || ThreadRules.hasLongFloats(plate);
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
