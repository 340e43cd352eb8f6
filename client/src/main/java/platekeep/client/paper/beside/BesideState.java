package platekeep.client.paper.beside;

import java.util.List;
import platekeep.client.ui.PictureSource;

/**
 * The pictures beside a plate.
 *
 * @param title the plate's; empty when no plate is shown
 */
public record BesideState(String title, List<Item> items) {
    static final BesideState NOTHING = new BesideState("", List.of());

    public BesideState {
        items = List.copyOf(items);
    }

    /**
     * A picture.
     *
     * @param words what it is, such as {@code Scan 1}
     */
    public record Item(PictureSource source, String words) {
        @Override
        public String toString() {
            return words;
        }
    }
}
