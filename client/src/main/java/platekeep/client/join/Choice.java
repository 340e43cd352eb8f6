package platekeep.client.join;

import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import platekeep.model.plate.Plate;

/**
 * An answer that can be taken.
 *
 * @param who whose it is: before, yours, a name, both
 * @param detail name and day, or what it means
 * @param words the value in words
 * @param take takes it on the plate as it then is
 * @param result the plate if it is taken now; working it out may take as long as drawing the plate
 * @param stands whether it is what was decided
 */
record Choice(
        String who, String detail, String words, UnaryOperator<Plate> take, Supplier<Plate> result, boolean stands) {}
