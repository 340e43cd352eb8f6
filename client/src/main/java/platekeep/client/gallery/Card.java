package platekeep.client.gallery;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Plate;

/**
 * One plate of the gallery as it is shown.
 *
 * @param key tells it from all other cards
 * @param content the id of its content, under which its picture is kept
 * @param plate what to draw; empty for a file that is damaged
 * @param title its title, or the file's name
 * @param facts number and ages in one line
 * @param size pleats and rows, or why the file is damaged
 * @param marks what needs to be known at a glance
 * @param library the name of its library
 */
public record Card(
        String key,
        String content,
        Optional<Plate> plate,
        String title,
        String facts,
        String size,
        List<Mark> marks,
        String library) {

    /** What needs to be known at a glance. */
    public enum Mark {
        CLASH("clash"),
        DRAFT("draft"),
        UNSENT("not sent"),
        DAMAGED("damaged");

        private final String word;

        Mark(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Card {
        marks = List.copyOf(marks);
    }
}
