package platekeep.client.partner;

import java.util.List;
import java.util.Optional;

/**
 * What the Partner screen shows.
 *
 * @param libraries the names of the open libraries
 * @param chosen the index of the one that is shown; -1 when none is open
 * @param sharedCopy the folder of the shared copy; empty when none was chosen
 * @param came what the partner sent and is not brought in yet, a line each
 * @param waits what waits to be sent, a line each
 * @param looked whether the shared copy was looked at, so that empty lists mean nothing is there
 * @param isLooking whether it is being looked at, or a library being opened, just now
 */
record PartnerState(
        List<String> libraries,
        int chosen,
        Optional<String> sharedCopy,
        List<String> came,
        List<String> waits,
        boolean looked,
        boolean isLooking) {

    static final PartnerState NOTHING =
            new PartnerState(List.of(), -1, Optional.empty(), List.of(), List.of(), false, false);

    PartnerState {
        libraries = List.copyOf(libraries);
        came = List.copyOf(came);
        waits = List.copyOf(waits);
    }

    boolean canBringIn() {
        return looked && !came.isEmpty();
    }

    /** Whether something waits that can be sent only after what came is brought in. */
    boolean mustBringInFirst() {
        return looked && !waits.isEmpty() && !came.isEmpty();
    }

    boolean canSend() {
        return looked && !waits.isEmpty() && came.isEmpty();
    }
}
