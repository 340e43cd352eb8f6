package platekeep.client.git.plates;

import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * Joins two edits of one plate. The answer does not depend on which side is which, and what cannot be settled is in it
 * as open clashes.
 */
@FunctionalInterface
public interface Joiner {

    /**
     * @param base the plate that both edits were made from; empty when there was none
     * @param mineBy who edited mine, where it is known
     * @param theirsBy who edited theirs, where it is known
     */
    Plate join(Optional<Plate> base, Plate mine, Plate theirs, Optional<String> mineBy, Optional<String> theirsBy);
}
