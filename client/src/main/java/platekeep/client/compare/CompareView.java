package platekeep.client.compare;

import java.util.Optional;
import platekeep.client.room.Place;
import platekeep.model.compare.Side;

/** What the presenter needs of the comparison screen. */
interface CompareView {

    void show(CompareState state);

    /**
     * Lets her choose a plate and a version of it.
     *
     * @param side for which side
     * @param picker what there is to choose from
     * @return empty when she would rather not
     */
    Optional<Place.Side> askSide(Side side, SidePicker picker);
}
