package platekeep.client.room;

import platekeep.client.library.Library;
import platekeep.model.plate.Plate;

/** What can be searched for by what plates look like, or once looked like. */
public sealed interface Sought {

    /**
     * Plates like one.
     *
     * @param plate as it is seen, drafts and all
     */
    record LikePlate(Library library, Plate plate) implements Sought {}

    /**
     * Plates that contain a motif.
     *
     * @param motif a plate of nothing but the motif
     * @param from the title of the plate that it was chosen in
     */
    record WithMotif(Plate motif, String from) implements Sought {}

    /** Plates that are nearly the same. */
    record Doubles() implements Sought {}

    /** Plates that once had these words in them. */
    record OnceSaid(String words) implements Sought {}
}
