package platekeep.client.command.desk;

import java.nio.file.Path;
import platekeep.client.library.LibraryException;

/** Lets native Git compare and join the plates of one library with this program, or takes that back. */
public interface SetUp {

    /** Turns it on for the library in this folder. Doing it twice is the same as once. */
    void on(Path library) throws LibraryException;

    /** Takes it back; nothing is left of it in the library. */
    void off(Path library) throws LibraryException;
}
