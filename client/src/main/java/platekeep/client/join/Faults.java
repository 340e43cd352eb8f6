package platekeep.client.join;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.Check;
import platekeep.model.stitch.CheckSettings;
import platekeep.model.stitch.Finding;

/** What the check says of a joined plate, and whether it said so before of either side. */
final class Faults {
    private static final String OPEN_CLASH = "open-clash";

    private Faults() {}

    /**
     * One finding.
     *
     * @param isNew whether neither side had it, so that it came by joining or by what was decided since
     */
    record Fault(Finding finding, boolean isNew) {}

    /** All findings but the open clashes, which are told elsewhere; new ones first. */
    static List<Fault> of(Plate plate, Set<String> known) {
        List<Fault> fresh = new ArrayList<>();
        List<Fault> old = new ArrayList<>();
        for (Finding finding : Check.of(plate, CheckSettings.DEFAULT)) {
            if (!finding.rule().equals(OPEN_CLASH)) {
                boolean isNew = !known.contains(key(plate, finding));
                (isNew ? fresh : old).add(new Fault(finding, isNew));
            }
        }
        fresh.addAll(old);
        return fresh;
    }

    /** What tells the findings of a plate from those of another version of it. */
    static Set<String> keys(Plate plate) {
        Set<String> keys = new HashSet<>();
        Check.of(plate, CheckSettings.DEFAULT).forEach(finding -> keys.add(key(plate, finding)));
        return keys;
    }

    /** Tells a finding from others of the plate, also after rows came or went. */
    static String key(Plate plate, Finding finding) {
        String row = finding.row()
                .map(n -> plate.rows().size() - n)
                .filter(r -> r >= 0 && r < plate.rows().size())
                .map(r -> plate.rows().get(r).id().map(id -> id.text()).orElse("row " + r))
                .orElse("");
        return finding.rule() + "|" + row + "|"
                + finding.pleat().map(String::valueOf).orElse("") + (row.isEmpty() ? finding.text() : "");
    }
}
