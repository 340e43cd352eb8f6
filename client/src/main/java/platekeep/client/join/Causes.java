package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Finding;

/**
 * Which settled changes a fault of the joined plate comes from: those without which it would not be there. Each change
 * is taken out by itself and the plate is checked again, so this takes as long as so many checks.
 */
final class Causes {
    private Causes() {}

    /** The changes with whose they are, such as {@code Yours: row 5 removed}; empty where no single one is to blame. */
    static List<String> of(Case of, Plate now, Finding finding) {
        List<String> out = new ArrayList<>();
        String key = Faults.key(now, finding);
        for (Settlement settlement : of.settlements()) {
            if (settlement.isAlone() && !settlement.reversal().places().isEmpty()) {
                Plate without = settlement.reversal().out(now);
                boolean isGone = !without.equals(now)
                        && Check.of(without, CheckSettings.DEFAULT).stream()
                                .noneMatch(f -> Faults.key(without, f).equals(key));
                if (isGone) {
                    out.add(SettledAnswers.who(of, settlement.settled().by()) + ": " + settlement.words());
                }
            }
        }
        return out;
    }
}
