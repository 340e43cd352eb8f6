package platekeep.model.join.edits;

import platekeep.model.plate.Plate;

/** Something that claims to join two designers' plates. */
@FunctionalInterface
public interface Joiner {

    /** The joined plate; {@link Stopped} where it declares a clash without a plate to show for it. */
    Plate join(Plate base, Plate mine, Plate theirs);

    /** A joiner gave up and left it to people. */
    final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        public Stopped(String why) {
            super(why);
        }
    }
}
