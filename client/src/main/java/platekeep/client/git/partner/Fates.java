package platekeep.client.git.partner;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.plate.Plate;

/** What a join made of the plates: their ids, in order. */
final class Fates {
    private final List<String> tookOver = new ArrayList<>();
    private final List<String> joined = new ArrayList<>();
    private final List<String> clashing = new ArrayList<>();
    private final List<String> kept = new ArrayList<>();

    /** It is now as the partner has it. */
    void tookOver(String plateId) {
        tookOver.add(plateId);
    }

    /** Both edits were joined and nothing is open. */
    void joined(String plateId) {
        joined.add(plateId);
    }

    /** Both edits were joined and something is open. */
    void clashing(String plateId) {
        clashing.add(plateId);
    }

    /** It was settled by hand, whatever the join would have made of it. */
    void settled(Plate plate) {
        List.of(tookOver, joined, clashing, kept).forEach(list -> list.remove(plate.id()));
        (plate.hasClashes() ? clashing : joined).add(plate.id());
    }

    /** One side had put it away, the other had changed it: it stays. */
    void kept(String plateId) {
        kept.add(plateId);
    }

    List<String> tookOver() {
        return tookOver;
    }

    List<String> joined() {
        return joined;
    }

    List<String> clashing() {
        return clashing;
    }

    List<String> kept() {
        return kept;
    }
}
