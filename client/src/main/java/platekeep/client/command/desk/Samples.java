package platekeep.client.command.desk;

import java.nio.file.Path;
import platekeep.client.library.LibraryException;

/** The sample libraries: of two partners, and the copy that they share. */
public interface Samples {

    /**
     * Makes them below a folder where they are not there yet.
     *
     * @return the folder of the library that is "yours"
     */
    Path madeIn(Path parent) throws LibraryException;
}
