package platekeep.client.command.desk;

import java.nio.file.Path;
import java.util.List;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;

/** Reads scans and photos for a library, without what tells where they were taken. */
public interface Scans {

    /**
     * Reads files, and all pictures in folders.
     *
     * @param library what it has already is left out
     */
    Sheets read(Library library, List<Path> files, Size size) throws LibraryException;

    /** How large they are kept. */
    enum Size {
        AS_THEY_ARE,
        SMALLER
    }

    /**
     * What became of the files.
     *
     * @param ready in the order of their names
     * @param leftOut a sentence for each that is left out
     */
    record Sheets(List<Sheet> ready, List<String> leftOut) {
        public Sheets {
            ready = List.copyOf(ready);
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * A picture.
     *
     * @param title made of the file's name
     * @param bytes as they go into the library
     */
    record Sheet(String title, byte[] bytes) {}
}
