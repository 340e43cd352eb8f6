package platekeep.client.gallery;

import java.util.List;
import java.util.Optional;

/** The gallery as its presenter sees it. */
public interface GalleryView {

    void show(GalleryState state);

    /**
     * Does something as soon as what is shown can be seen with its pictures; after a while in any case, since a window may
     * be put away. Of several things only the one that was said last.
     */
    void whenSeen(Runnable then);

    /**
     * Asks for a new plate.
     *
     * @param libraries names of the open libraries
     * @param palettes titles of plates whose colours can be taken over
     * @return empty when she gave it up
     */
    Optional<NewPlate> askNewPlate(List<String> libraries, List<String> palettes);

    /** Asks whether to put a plate away; empty when she gave it up, else the reason. */
    Optional<String> askPutAway(String title);

    /**
     * Shows plates that were put away.
     *
     * @param lines one for each, in words
     * @return which one to bring back; empty for none
     */
    Optional<Integer> askPutAwayPlate(List<String> lines);

    /**
     * What a new plate begins with.
     *
     * @param library which of the libraries
     * @param title not blank
     * @param pleats how many the chart covers
     * @param rows how many
     * @param palette which of the palettes of series and plates; empty for a few colours to begin with
     */
    record NewPlate(int library, String title, int pleats, int rows, Optional<Integer> palette) {}
}
