package platekeep.client.join;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * What the Join screen shows.
 *
 * @param waiting the plates with open clashes, in order of title
 * @param chosen the index of the one that is worked on; -1 for none
 * @param plate that plate as decided so far
 * @param where what the clash in question is about, in words
 * @param counter how many clashes are open yet, in words
 * @param answers the answers to choose from
 * @param settled what was decided so far, newest last
 * @param findings what the check says of the plate as decided so far
 * @param canUndo whether there is a decision to take back
 */
record JoinState(
        List<Waiting> waiting,
        int chosen,
        Optional<Plate> plate,
        String where,
        String counter,
        List<Answer> answers,
        List<String> settled,
        List<String> findings,
        boolean canUndo) {

    static final JoinState NOTHING =
            new JoinState(List.of(), -1, Optional.empty(), "", "", List.of(), List.of(), List.of(), false);

    /** A plate that waits, with how many clashes. */
    record Waiting(String plateId, String title, int clashes) {
        @Override
        public String toString() {
            return title + "  (" + clashes + ")";
        }
    }

    /**
     * An answer to the clash in question.
     *
     * @param who whose it is: before, a name, both
     * @param words the value in words
     * @param result the plate if this is chosen
     */
    record Answer(String who, String words, Plate result) {}

    JoinState {
        waiting = List.copyOf(waiting);
        answers = List.copyOf(answers);
        settled = List.copyOf(settled);
        findings = List.copyOf(findings);
    }
}
