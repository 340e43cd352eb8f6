package platekeep.client.compare;

import java.util.List;

/**
 * What there is to choose from.
 *
 * @param plates titles of the plates that have the words
 * @param plate the one chosen, -1 for none of these
 * @param versions two lines for each version that has the words: when and by whom, and why
 * @param version the one chosen, -1 for none of these
 * @param reading whether the plates are still being read
 */
record PickerState(List<String> plates, int plate, List<String> versions, int version, Reading reading) {

    /** Whether reading is under way. */
    enum Reading {
        ON,
        OVER
    }

    PickerState {
        plates = List.copyOf(plates);
        versions = List.copyOf(versions);
    }
}
