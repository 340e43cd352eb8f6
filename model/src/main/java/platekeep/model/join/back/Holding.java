package platekeep.model.join.back;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;

/** Narrows the places of a change to the cables that hold in the joined plate; the others are part of a clash. */
final class Holding {
    private final Plate base;
    private final Plate side;
    private final Plate joined;
    private final Letters letters;

    Holding(Plate base, Plate side, Plate joined) {
        this.base = base;
        this.side = side;
        this.joined = joined;
        this.letters = new Letters(side, joined);
    }

    List<Place> of(List<Place> places) {
        List<Place> out = new ArrayList<>();
        for (Place place : places) {
            Optional<RowId> id = (place.side() == Side.BEFORE ? base : side)
                    .rows()
                    .get(place.row())
                    .id();
            int inSide = id.map(side::indexOf).orElse(-1);
            int inBase = id.map(base::indexOf).orElse(-1);
            int inJoined = id.map(joined::indexOf).orElse(-1);
            boolean isEdit = place.side() == Side.AFTER && inBase >= 0 && inJoined >= 0 && !isWhole(place);
            if (isEdit) {
                runs(place, inSide, inJoined, out);
            } else {
                out.add(place);
            }
        }
        return out;
    }

    private boolean isWhole(Place place) {
        return place.from() == side.from() && place.to() == side.from() + side.positions() - 1;
    }

    private void runs(Place place, int inSide, int inJoined, List<Place> out) {
        int start = place.from();
        for (int p = place.from(); p <= place.to() + 1; p++) {
            boolean holds = p <= place.to() && joined.cellAt(inJoined, p) == letters.of(side.cellAt(inSide, p));
            if (!holds) {
                if (p > start) {
                    out.add(new Place(place.side(), place.row(), start, p - 1));
                }
                start = p + 1;
            }
        }
    }
}
