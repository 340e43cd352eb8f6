package platekeep.client.series;

import java.util.List;
import java.util.Optional;
import platekeep.client.ui.PictureSource;
import platekeep.model.plate.Colour;

/** The Series screen as its presenter sees it. */
public interface SeriesView {

    void show(SeriesState state);

    /** Chooses plates of the order, after they were moved. */
    void choose(List<Integer> places);

    /** Asks for a new series; empty when she gave it up. */
    Optional<NewSeries> askNew(List<String> libraries);

    /**
     * Asks which plates are to be put to the series.
     *
     * @param titles of the plates that are not in it
     * @return which of them; none when she gave it up
     */
    List<Integer> askPlates(List<String> titles);

    /** Asks why the version is saved; empty when she gave it up. */
    Optional<String> askReason(String suggestion);

    /** Asks whether to go ahead. */
    Consent askConsent(String question, String yes);

    /**
     * Asks which thread colours are to become one of.
     *
     * @param threads to choose from, the one in most plates first
     * @param previews for each of them the plates that would change
     */
    Optional<Integer> askThread(List<Colour> threads, List<List<Preview>> previews);

    /**
     * A new series.
     *
     * @param library which of the libraries
     * @param title not blank
     */
    record NewSeries(int library, String title) {}

    /** A plate as it is and as it would be. */
    record Preview(String title, PictureSource before, PictureSource after) {}

    /** An answer to a question for yes or no. */
    enum Consent {
        YES,
        NO
    }
}
