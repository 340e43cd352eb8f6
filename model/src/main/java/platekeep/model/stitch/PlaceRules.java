package platekeep.model.stitch;

import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Starts, marks and remarks must be where a row is; starts must be on a cable and not contradict each other. */
final class PlaceRules {

    private final Plate plate;
    private final Kinds kinds;
    private final Findings findings;
    private final Map<RowId, Integer> index;

    private PlaceRules(Plate plate, Kinds kinds, Findings findings) {
        this.plate = plate;
        this.kinds = kinds;
        this.findings = findings;
        this.index = Kinds.indexOf(plate.rows());
    }

    static void find(Plate plate, Kinds kinds, Findings findings) {
        PlaceRules rules = new PlaceRules(plate, kinds, findings);
        plate.starts().forEach(rules::start);
        plate.marks().forEach(rules::mark);
        plate.remarks().forEach(rules::remark);
    }

    private void start(Start start) {
        Integer row = index.get(start.row());
        if (row == null) {
            lost("start-without-row", Optional.of(start.pleat()), "A start", start.row());
            return;
        }
        Optional<CableKind> kind = kinds.at(row, start.pleat());
        if (kind.isEmpty()) {
            findings.at(
                    row,
                    start.pleat(),
                    Severity.WARNING,
                    "start-without-cable",
                    "A start stands here, but no cable lies here; move it onto the figure that it is for.");
        } else if (kind.get() != start.cable()) {
            findings.at(row, start.pleat(), Severity.ERROR, "starts-disagree", disagreement(row, start));
        }
    }

    private String disagreement(int row, Start start) {
        Start counts = kinds.startOf(kinds.figures().at(row, start.pleat())).orElseThrow();
        return "This start makes the cable here " + start.cable().word() + ", but the start of the same figure in row "
                + plate.numberFromBottom(index.get(counts.row())) + ", pleat " + counts.pleat() + " makes it "
                + start.cable().turned().word() + "; take one of them out or turn it.";
    }

    private void mark(Mark mark) {
        if (!index.containsKey(mark.row())) {
            lost("mark-without-row", Optional.of((int) Math.floor(mark.place())), "A " + mark.stitch(), mark.row());
        }
    }

    private void remark(Remark remark) {
        Optional<RowId> row = remark.row();
        if (row.isPresent() && !index.containsKey(row.get())) {
            lost("remark-without-row", remark.from(), "A remark by " + remark.by(), row.get());
        }
    }

    private void lost(String rule, Optional<Integer> pleat, String what, RowId row) {
        String text =
                what + " names row " + row.text() + ", which is not in this plate; move it to a row or take it out.";
        findings.add(new Finding(Severity.ERROR, rule, Optional.empty(), pleat, text));
    }
}
