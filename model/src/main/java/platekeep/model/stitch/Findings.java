package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Plate;

/** Collects what the rules find, so many of each rule; the rest of a rule is counted and said in one sentence. */
final class Findings {

    /** A longer list helps nobody. */
    static final int MOST_OF_A_RULE = 50;

    private final Plate plate;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Integer> found = new LinkedHashMap<>();
    private final Map<String, Severity> weight = new LinkedHashMap<>();

    Findings(Plate plate) {
        this.plate = plate;
    }

    /** Something at a place: a row, top row 0, and a pleat. */
    void at(int row, int pleat, Severity severity, String rule, String text) {
        add(new Finding(severity, rule, Optional.of(plate.numberFromBottom(row)), Optional.of(pleat), text));
    }

    /** Whether there is still room to say something of a rule; where there is none it is counted. */
    boolean hasRoomFor(String rule) {
        boolean room = found.getOrDefault(rule, 0) < MOST_OF_A_RULE;
        if (!room) {
            found.merge(rule, 1, Integer::sum);
        }
        return room;
    }

    /** Something about the whole plate. */
    void inAll(Severity severity, String rule, String text) {
        add(new Finding(severity, rule, Optional.empty(), Optional.empty(), text));
    }

    void add(Finding finding) {
        weight.put(finding.rule(), finding.severity());
        if (found.merge(finding.rule(), 1, Integer::sum) <= MOST_OF_A_RULE) {
            findings.add(finding);
        }
    }

    /** What was found, in order. */
    List<Finding> list() {
        List<Finding> all = new ArrayList<>(findings);
        all.sort(Finding.ORDER);
        found.forEach((rule, count) -> {
            if (count > MOST_OF_A_RULE) {
                String more = (count - MOST_OF_A_RULE) + " more places like those listed (" + rule.replace('-', ' ')
                        + ") are not listed.";
                all.add(new Finding(weight.get(rule), rule, Optional.empty(), Optional.empty(), more));
            }
        });
        return List.copyOf(all);
    }
}
