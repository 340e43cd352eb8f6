package platekeep.client.series;

import java.util.List;
import java.util.Optional;
import platekeep.client.ui.PictureSource;
import platekeep.model.plate.Colour;

/**
 * What the Series screen shows.
 *
 * @param all all series of the open libraries
 * @param current which of them is shown; -1 for none
 * @param title its title
 * @param notes a line each
 * @param plates in order
 * @param colours what its plates share and nearly share
 * @param isChanged whether it differs from the library's
 * @param isReading whether series are still being read
 */
public record SeriesState(
        List<Line> all,
        int current,
        String title,
        List<String> notes,
        List<Card> plates,
        List<Shared> colours,
        boolean isChanged,
        boolean isReading) {

    static final SeriesState NOTHING =
            new SeriesState(List.of(), -1, "", List.of(), List.of(), List.of(), false, false);

    public SeriesState {
        all = List.copyOf(all);
        notes = List.copyOf(notes);
        plates = List.copyOf(plates);
        colours = List.copyOf(colours);
    }

    /**
     * A series in the list.
     *
     * @param words how many plates, and whether it is changed
     * @param library the name of its library; empty where one library is open
     */
    public record Line(String title, String words, String library) {
        @Override
        public String toString() {
            return title;
        }
    }

    /**
     * A plate in its place.
     *
     * @param number its place, from 1
     * @param picture its chart, scan or photo; empty where it has none or is not here
     * @param words number and size, or that it is not in this library
     * @param isHere whether it is in the library
     */
    public record Card(
            String plateId, int number, String title, String words, Optional<PictureSource> picture, boolean isHere) {
        @Override
        public String toString() {
            return number + " " + title;
        }
    }

    /**
     * Colours that belong together.
     *
     * @param colours the one in most plates first
     * @param words what they are to each other
     * @param canBeEqual whether there is anything to be made equal
     */
    public record Shared(List<Colour> colours, String words, boolean canBeEqual) {
        public Shared {
            colours = List.copyOf(colours);
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
