package platekeep.client.join;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;

/**
 * Whose a side of a clash is. Names do not tell where both hands have one name or none is known, so the join is asked
 * once with two names that nobody has.
 */
record Sides(Set<String> mine, Set<String> theirs) {
    private static final String MINE = "\u0001 mine";
    private static final String THEIRS = "\u0001 theirs";

    Sides {
        mine = Set.copyOf(mine);
        theirs = Set.copyOf(theirs);
    }

    static Sides of(Optional<Plate> base, Plate mine, Plate theirs) {
        Plate joined = Join.plate(base, mine, theirs, new Hands(Optional.of(MINE), Optional.of(THEIRS)));
        Set<String> here = new HashSet<>();
        Set<String> there = new HashSet<>();
        for (Clash clash : joined.clashes()) {
            for (Clash.Side side : clash.sides()) {
                if (side.by().equals(Optional.of(MINE))) {
                    here.add(key(clash, side));
                } else if (side.by().equals(Optional.of(THEIRS))) {
                    there.add(key(clash, side));
                }
            }
        }
        return new Sides(here, there);
    }

    private static String key(Clash clash, Clash.Side side) {
        return clash.what().word() + clash.place().text() + side.value().text();
    }

    boolean isMine(Clash clash, Clash.Side side) {
        return mine.contains(key(clash, side));
    }

    boolean isTheirs(Clash clash, Clash.Side side) {
        return theirs.contains(key(clash, side));
    }
}
