package platekeep.client.plate.picture;

import java.nio.file.Path;
import java.util.Optional;
import platekeep.model.draw.Drawing;

/** What is asked before a picture is kept. */
interface PictureView {

    /**
     * What she wants.
     *
     * @param pleat dots across a pleat
     */
    record Wanted(Format format, int pleat) {}

    /** Asks what the picture is to show and how large; empty when she gave it up. */
    Optional<Wanted> ask(Drawing drawing);

    /**
     * Asks for a file, and whether one that is there may be written over; empty when she gave it up.
     *
     * @param name what it would be called
     */
    Optional<Path> askFile(String name);
}
