package platekeep.model.join.edits;

import java.util.Set;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;

/**
 * Two designers' edits of one plate and what they come to.
 *
 * @param kind what each did, and which clashes come of it
 * @param want the right joined plate; where {@code declared} is not empty it is only a hint
 * @param declared empty as a rule; else the answer cannot be told from the plates, and a clash of one of these kinds must
 *     be declared
 */
public record Case(String kind, Plate base, Plate mine, Plate theirs, Plate want, Set<Clash.What> declared) {
    public Case {
        declared = Set.copyOf(declared);
    }

    public Case(String kind, Plate base, Plate mine, Plate theirs, Plate want) {
        this(kind, base, mine, theirs, want, Set.of());
    }

    /** The same with the sides exchanged; the answer does not depend on who joins. */
    public Case turned() {
        return new Case(kind, base, theirs, mine, want, declared);
    }
}
