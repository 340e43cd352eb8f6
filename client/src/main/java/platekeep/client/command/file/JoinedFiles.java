package platekeep.client.command.file;

import java.util.List;
import java.util.Optional;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.join.Joined;
import platekeep.model.join.NewFault;
import platekeep.model.join.Settled;
import platekeep.model.join.back.Reversal;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.CheckSettings;

/**
 * Three plate files joined, and what there is to tell of it.
 *
 * @param plate the joined plate
 * @param settled the changes that hold in it; what is open in whole is not among them
 * @param faults what the two edits together brought about and neither had
 */
record JoinedFiles(Plate plate, List<Settled> settled, List<NewFault> faults) {

    static JoinedFiles of(Optional<Plate> base, Plate mine, Plate theirs, Hands hands) {
        Joined joined = Join.of(base, mine, theirs, hands);
        if (base.isEmpty()) {
            return new JoinedFiles(joined.plate(), joined.settled(), List.of());
        }
        return new JoinedFiles(
                joined.plate(),
                holding(base.get(), mine, theirs, joined),
                NewFault.of(base.get(), mine, theirs, joined, CheckSettings.DEFAULT));
    }

    private static List<Settled> holding(Plate base, Plate mine, Plate theirs, Joined joined) {
        if (!joined.plate().hasClashes()) {
            return joined.settled();
        }
        return Reversal.of(base, mine, theirs, joined).stream()
                .filter(reversal -> reversal.standing(joined.plate()) != Reversal.Standing.OUT)
                .map(Reversal::settled)
                .toList();
    }

    /** Each fault in one sentence, with the two changes that brought it about. */
    List<String> faultWords() {
        return faults.stream().map(JoinedFiles::words).toList();
    }

    private static String words(NewFault fault) {
        StringBuilder words = new StringBuilder("row ");
        words.append(fault.finding().row().orElseThrow());
        fault.finding().pleat().ifPresent(pleat -> words.append(", pleat ").append(pleat));
        words.append(": ").append(fault.finding().text()).append(" Neither side had this; it comes of ");
        words.append(fault.mine().map(Settled::words).orElse("one side's changes"));
        words.append(" (mine) and ");
        words.append(fault.theirs().map(Settled::words).orElse("the other side's changes"));
        return words.append(" (theirs).").toString();
    }
}
