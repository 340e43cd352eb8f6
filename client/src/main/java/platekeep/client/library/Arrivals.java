package platekeep.client.library;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * What lies between this library and the partner's shared copy, looked at but not yet brought in.
 *
 * @param partnerHead the newest version there; empty when the shared copy is still empty
 * @param incoming versions there that are not here, newest first
 * @param waiting versions here that are not there, newest first
 * @param plates the plates that came, each with what it was here
 */
public record Arrivals(
        Optional<String> partnerHead, List<Version> incoming, List<Version> waiting, List<Arrival> plates) {
    public Arrivals {
        incoming = List.copyOf(incoming);
        waiting = List.copyOf(waiting);
        plates = List.copyOf(plates);
    }

    /**
     * A plate that differs because of the incoming versions.
     *
     * @param plateId its id
     * @param base as it was when the two libraries last agreed; empty when there was none
     * @param mine as it is here; empty when it is not here
     * @param theirs as it is there; empty when it was put away there
     * @param changedHere the version that changed it last here since then; empty when none did
     * @param changedThere the same for there
     */
    public record Arrival(
            String plateId,
            Optional<Plate> base,
            Optional<Plate> mine,
            Optional<Plate> theirs,
            Optional<Version> changedHere,
            Optional<Version> changedThere) {

        /** Whether both sides changed it, so that the two edits have to be joined. */
        public boolean bothChanged() {
            return !mine.equals(base) && !theirs.equals(base) && !mine.equals(theirs);
        }

        /** Whether two edits have to be joined, since neither side put the plate away. */
        public boolean isToJoin() {
            return bothChanged() && mine.isPresent() && theirs.isPresent();
        }
    }
}
