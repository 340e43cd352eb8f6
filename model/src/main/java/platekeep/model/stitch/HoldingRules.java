package platekeep.model.stitch;

import java.util.Arrays;
import platekeep.model.plate.Plate;

/** Cables that hold to no other, and parts that touch the rest of their figure without holding together with it. */
final class HoldingRules {

    private static final String LONE = "lone-cable";
    private static final String LOOSE = "loose-part";
    private static final int NONE = -1;

    private final Kinds kinds;
    private final Holding holding;
    private final int[] main;
    private final int[] lone;
    private final int[] loose;
    private final int[] firstLone;
    private final int[] firstLoose;

    private HoldingRules(Plate plate, Kinds kinds) {
        int figures = kinds.figures().count();
        this.kinds = kinds;
        this.holding = Holding.of(plate, kinds);
        this.main = filled(figures);
        this.lone = new int[figures];
        this.loose = new int[figures];
        this.firstLone = filled(figures);
        this.firstLoose = filled(figures);
    }

    private static int[] filled(int size) {
        int[] none = new int[size];
        Arrays.fill(none, NONE);
        return none;
    }

    static void find(Plate plate, Kinds kinds, Findings findings) {
        HoldingRules rules = new HoldingRules(plate, kinds);
        rules.findMainParts();
        rules.count();
        for (int f = 0; f < rules.main.length; f++) {
            rules.report(f, findings);
        }
    }

    private int figureOf(int part) {
        return holding.figureOf(part, kinds.figures());
    }

    private void findMainParts() {
        for (int part = 0; part < holding.count(); part++) {
            int f = figureOf(part);
            if (main[f] == NONE || holding.cables(part) > holding.cables(main[f])) {
                main[f] = part;
            }
        }
    }

    private void count() {
        for (int part = 0; part < holding.count(); part++) {
            int f = figureOf(part);
            if (holding.cables(part) == 1) {
                firstLone[f] = lone[f]++ == 0 ? part : firstLone[f];
            } else if (part != main[f]) {
                firstLoose[f] = loose[f]++ == 0 ? part : firstLoose[f];
            }
        }
    }

    private void report(int figure, Findings findings) {
        if (lone[figure] > 0 && findings.hasRoomFor(LONE)) {
            Figure part = holding.part(firstLone[figure]);
            findings.at(
                    part.bottom(),
                    part.first(),
                    Severity.WARNING,
                    LONE,
                    "The cable " + Words.over(part.from(), part.to()) + " holds to no other cable"
                            + Words.others(lone[figure] - 1, "cable") + "; set another beside it.");
        }
        if (loose[figure] > 0 && findings.hasRoomFor(LOOSE)) {
            Figure part = holding.part(firstLoose[figure]);
            findings.at(
                    part.bottom(),
                    part.first(),
                    Severity.WARNING,
                    LOOSE,
                    "A part of " + Words.count(part.cables(), "cable") + " " + Words.over(part.from(), part.to())
                            + " touches its figure but does not hold together with it"
                            + Words.others(loose[figure] - 1, "part") + "; widen it, or shift it by one pleat.");
        }
    }
}
