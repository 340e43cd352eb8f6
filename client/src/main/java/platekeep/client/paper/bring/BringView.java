package platekeep.client.paper.bring;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Picture;

/** The questions on the way in. */
public interface BringView {

    /**
     * Asks for the scans, each of which becomes a plate; empty when she gave it up.
     *
     * @param libraries names of the open libraries
     * @param files those that it is about already, such as dropped ones
     */
    Optional<Scans> askScans(List<String> libraries, List<Path> files);

    /** Asks for pictures that are to lie beside a plate; empty when she gave it up. */
    Optional<Pictures> askPictures(String title);

    /** Asks once whether large pictures are to be made smaller; empty when she gave it all up. */
    Optional<Size> askSize(Sizes sizes);

    /**
     * Scans to bring in.
     *
     * @param files files and folders
     * @param library which of the libraries
     */
    record Scans(List<Path> files, int library) {}

    /** Pictures for a plate. */
    record Pictures(List<Path> files, Picture.Kind kind) {}

    /**
     * How large it all is.
     *
     * @param pictures how many there are
     * @param large how many of them can be made smaller
     * @param before bytes as they are
     * @param after bytes if the large ones are made smaller
     * @param longest how many dots the longer side of a smaller one has
     */
    record Sizes(int pictures, int large, long before, long after, int longest) {}

    /** Made smaller, or as they are. */
    enum Size {
        SMALLER,
        AS_THEY_ARE
    }
}
