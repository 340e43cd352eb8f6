package platekeep.client.library;

import java.nio.file.Path;
import java.time.Clock;

/** Makes and opens libraries. */
public interface Libraries {

    /** Makes a new library in an empty or absent folder; refused with a sentence where the folder holds something. */
    Library create(Path folder, String name, Hand hand) throws LibraryException;

    /** Opens the library in a folder, or in the nearest folder above it that is one. */
    Library open(Path folder) throws LibraryException;

    /** Makes a first copy of a shared copy in an empty or absent folder. */
    Library copyFrom(Path sharedCopy, Path folder, Hand hand) throws LibraryException;

    /**
     * The same, where versions are dated by another clock: with one that stands still, the same changes always make
     * the same version ids.
     */
    Libraries at(Clock clock);

    /**
     * The same, where what is saved in a library is forced to disk only when it is closed: much faster for many
     * versions at once, and right only for a library that can be made again if the power fails meanwhile. Libraries
     * that do not lie on a disk stay as they are.
     */
    default Libraries syncedWhenClosed() {
        return this;
    }
}
