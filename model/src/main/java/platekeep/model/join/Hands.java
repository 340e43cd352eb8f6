package platekeep.model.join;

import java.util.Optional;

/**
 * Who made the two sides, for the {@code by} of a clash's sides.
 *
 * @param mine the hand of the first side, if known
 * @param theirs the hand of the second side, if known
 */
public record Hands(Optional<String> mine, Optional<String> theirs) {

    /** Nobody is known: {@code by} is left out. */
    public static final Hands UNKNOWN = new Hands(Optional.empty(), Optional.empty());

    /** The same with the sides exchanged. */
    Hands exchanged() {
        return new Hands(theirs, mine);
    }

    Optional<String> of(int side) {
        return side == 0 ? mine : theirs;
    }
}
