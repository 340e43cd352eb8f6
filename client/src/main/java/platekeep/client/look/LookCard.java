package platekeep.client.look;

import java.util.List;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.PlateSource;
import platekeep.model.plate.Plate;

/**
 * A hit as it is shown.
 *
 * @param key tells it from the others
 * @param content the id of its content, under which its picture is kept
 * @param plate what to draw
 * @param title its title
 * @param why what it has to do with what was asked for
 * @param where its library, where several are open, and its version, where it is an old one
 * @param mark a word that must not be overlooked, such as {@code put away}; empty for none
 * @param places where in it a motif lies; none elsewhere
 * @param group a group of near doubles, from 1; 0 for none
 */
public record LookCard(
        String key,
        String content,
        Plate plate,
        String title,
        String why,
        String where,
        String mark,
        List<Outlined.Place> places,
        int group) {
    public LookCard {
        places = List.copyOf(places);
    }

    /** What is seen of it. */
    PictureSource picture() {
        return places.isEmpty() ? new PlateSource(content, plate) : new Outlined(content, plate, places);
    }
}
