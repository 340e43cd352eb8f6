package platekeep.client.join;

import java.util.Optional;
import platekeep.model.plate.Clash;

/**
 * One answer for all clashes that are still open.
 *
 * @param whose whose answer
 * @param kind only clashes of this kind; empty: all
 */
record Bulk(Whose whose, Optional<Clash.What> kind) {

    /** Whose answer is taken. */
    enum Whose {
        MINE,
        THEIRS,
        BEFORE
    }

    boolean takes(Clash clash) {
        return kind.map(clash.what()::equals).orElse(true);
    }
}
