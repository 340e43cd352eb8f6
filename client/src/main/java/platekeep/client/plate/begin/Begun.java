package platekeep.client.plate.begin;

import java.util.Optional;
import java.util.function.Function;
import platekeep.model.plate.Plate;

/** A plate made from something given, or a sentence that says why it is none. */
public sealed interface Begun {

    /** A plate that is in no library yet. */
    record Good(Plate made) implements Begun {}

    /**
     * What was given is no chart.
     *
     * @param why what is wrong, where, and what to do
     */
    record Refused(String why) implements Begun {}

    /** One of two ways on. */
    default <T> T fold(Function<Plate, T> good, Function<String, T> refused) {
        return this instanceof Good g ? good.apply(g.made()) : refused.apply(((Refused) this).why());
    }

    /** The plate, if it is one. */
    default Optional<Plate> plate() {
        return fold(Optional::of, why -> Optional.empty());
    }
}
