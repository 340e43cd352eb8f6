package platekeep.model.join.back;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.compare.Place;
import platekeep.model.join.Joined;
import platekeep.model.join.Settled;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.KeptKinds;

/**
 * One settled change that can be taken out of the joined plate and put in again. Only what the change itself brought is
 * touched: a cable that was painted over since stays painted.
 */
public final class Reversal {
    private final Settled settled;
    private final Plate base;
    private final Plate side;
    private final List<Fact> facts;
    private final List<Place> places;
    private final RowExchange rows;

    private Reversal(Settled settled, Plate base, Plate side, List<Fact> facts, List<Place> places) {
        this.settled = settled;
        this.base = base;
        this.side = side;
        this.facts = List.copyOf(facts);
        this.places = List.copyOf(places);
        this.rows = new RowExchange(base, side, facts.isEmpty() ? places : List.of());
    }

    /** How a change stands in a plate. */
    public enum Standing {
        /** All of it holds. */
        IN,
        /** None of it: what was before stands. */
        OUT,
        /** Some of it, or something else was put there. */
        PARTLY
    }

    /**
     * Makes each settled change ready to be taken back.
     *
     * @param joined what the join of these three gave; of a change that clashes in part, the rest is meant
     */
    public static List<Reversal> of(Plate base, Plate mine, Plate theirs, Joined joined) {
        FactsByWords byMine = FactsByWords.of(base, mine);
        FactsByWords byTheirs = FactsByWords.of(base, theirs);
        List<Reversal> out = new ArrayList<>();
        for (Settled one : joined.settled()) {
            boolean isTheirs = one.by() == Settled.By.THEIRS;
            List<Fact> facts = (isTheirs ? byTheirs : byMine).of(one.words());
            Plate side = isTheirs ? theirs : mine;
            List<Place> places = facts.isEmpty() ? holding(base, side, joined, one) : one.places();
            out.add(new Reversal(one, base, side, facts, places));
        }
        return out;
    }

    private static List<Place> holding(Plate base, Plate side, Joined joined, Settled one) {
        return one.places().isEmpty() ? List.of() : new Holding(base, side, joined.plate()).of(one.places());
    }

    /** What was settled. */
    public Settled settled() {
        return settled;
    }

    /** Where on the chart it holds. */
    public List<Place> places() {
        return places;
    }

    /** The plate that both sides came from. */
    public Plate base() {
        return base;
    }

    /** The plate of the side that made the change. */
    public Plate side() {
        return side;
    }

    /**
     * Whether the change can be taken back alone, where the join put it. Some cannot, such as a picture turned over, or
     * keys renamed.
     */
    public boolean isAlone(Plate joined) {
        return standing(joined) != Standing.OUT;
    }

    /** Whether nothing of the change holds where the join put it, since all of it is part of clashes. */
    public boolean isAllOpen(Plate joined) {
        Tally tally = tally(joined);
        boolean hasNoPlace =
                facts.isEmpty() && places.isEmpty() && !settled.places().isEmpty();
        return hasNoPlace || tally.isTold() && tally.standing() == Standing.OUT;
    }

    /** How the change stands in a plate; {@link Standing#OUT} also for one that nothing can be told of. */
    public Standing standing(Plate now) {
        return tally(now).standing();
    }

    private Tally tally(Plate now) {
        Tally tally = new Tally();
        facts.forEach(fact -> tally.count(fact.same(now, side), fact.same(now, base)));
        rows.count(now, tally);
        return tally;
    }

    /** The plate with what was before in the place of the change. */
    public Plate out(Plate now) {
        return put(now, side, base);
    }

    /** The plate with the change put in again. */
    public Plate in(Plate now) {
        return put(now, base, side);
    }

    private Plate put(Plate now, Plate from, Plate to) {
        Plate changed = rows.put(now, from, to);
        if (changed != now && hasAllIds(now) && hasAllIds(changed)) {
            changed = KeptKinds.after(now, changed);
        }
        for (Fact fact : facts) {
            changed = fact.copy(changed, to);
        }
        return changed;
    }

    private static boolean hasAllIds(Plate plate) {
        return plate.rows().stream().map(Row::id).allMatch(id -> id.isPresent());
    }

    /** Counts places that are as the side has them, as the base has them, or otherwise. */
    static final class Tally {
        private int in;
        private int out;
        private int otherwise;

        void count(boolean asSide, boolean asBase) {
            if (asSide) {
                in++;
            } else if (asBase) {
                out++;
            } else {
                otherwise++;
            }
        }

        boolean isTold() {
            return in + out + otherwise > 0;
        }

        Standing standing() {
            if (in > 0 && out == 0 && otherwise == 0) {
                return Standing.IN;
            }
            return in == 0 && otherwise == 0 ? Standing.OUT : Standing.PARTLY;
        }
    }
}
