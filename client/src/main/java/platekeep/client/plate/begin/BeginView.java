package platekeep.client.plate.begin;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import platekeep.model.plate.Plate;

/** What is asked before a plate is begun from something else. */
interface BeginView {

    /** What lies on the clipboard as text; empty when no text does. */
    Optional<String> clipboard();

    /** Asks for a file; empty when she gave it up. */
    Optional<Path> askFile(Kind kind);

    /** What a file holds. */
    enum Kind {
        TEXT,
        PICTURE
    }

    /**
     * Asks for title and library of a plate that was read from text; empty when she gave it up.
     *
     * @param made what it looks like
     */
    Optional<Named> askNamed(Plate made, List<String> libraries);

    /**
     * Asks how a picture is to be fitted; empty when she gave it up.
     *
     * @param palettes names of palettes that can be kept to
     * @param wanted told of each setting, so that {@link #preview} can show what comes of it
     */
    Optional<FitAnswer> askFit(Picture picture, List<String> palettes, List<String> libraries, Consumer<Fit> wanted);

    /**
     * Draws what settings give, in the background.
     *
     * @return shows it, on the event thread
     */
    Runnable preview(Plate plate);

    /**
     * A plate's title, not blank, and in which of the libraries it is to lie.
     */
    record Named(String title, int library) {}

    /**
     * Settings of a fit.
     *
     * @param palette which of the palettes; empty for a number of colours
     */
    record Fit(int pleats, int rows, int colours, Optional<Integer> palette, int least, PictureFit.Ground ground) {}

    /** The settings that were agreed to. */
    record FitAnswer(Named named, Fit fit) {}
}
