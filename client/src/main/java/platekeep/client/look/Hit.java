package platekeep.client.look;

import java.util.List;
import java.util.Optional;
import platekeep.client.library.Library;
import platekeep.client.library.PlateVersion;
import platekeep.model.look.Mirror;
import platekeep.model.plate.Plate;

/**
 * Something that was found.
 *
 * @param library where it lies
 * @param plate as it was found
 * @param content the id of its content
 * @param then the version that it was found in; empty: as it is now
 * @param isThere whether the plate is in the library now
 * @param why what it has to do with what was asked for, in words
 * @param mirror how it lies to what was asked for
 * @param places where in it a motif lies; none elsewhere
 * @param group which of the groups of near doubles it is in, from 1; 0 elsewhere
 */
record Hit(
        Library library,
        Plate plate,
        String content,
        Optional<PlateVersion> then,
        boolean isThere,
        String why,
        Mirror mirror,
        List<Outlined.Place> places,
        int group) {

    Hit {
        places = List.copyOf(places);
    }

    static Hit now(Sight sight, Plate plate, String why, Mirror mirror) {
        return new Hit(sight.library(), plate, sight.content(), Optional.empty(), true, why, mirror, List.of(), 0);
    }

    Hit inGroup(int number) {
        return new Hit(library, plate, content, then, isThere, why, mirror, places, number);
    }

    /** Tells it from all other hits of a search. */
    String key() {
        return group + " " + plate.id() + " " + library.folder() + " "
                + then.map(t -> t.version().id()).orElse("now");
    }
}
