package platekeep.client.library;

import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Libraries in memory, by their folder. */
public final class MemoryLibraries implements Libraries {
    private final Map<Path, MemoryLibrary> made = new LinkedHashMap<>();

    /** Puts a library where it can be opened. */
    public void put(MemoryLibrary library) {
        made.put(library.folder(), library);
    }

    @Override
    public Library create(Path folder, String name, Hand hand) {
        MemoryLibrary library = new MemoryLibrary(name, Optional.of(hand));
        made.put(folder, library);
        return library;
    }

    @Override
    public Library open(Path folder) throws LibraryException {
        if (!made.containsKey(folder)) {
            throw new LibraryException("There is no library in " + folder + ".");
        }
        return made.get(folder);
    }

    @Override
    public Library copyFrom(Path sharedCopy, Path folder, Hand hand) throws LibraryException {
        throw new LibraryException("There is no shared copy in " + sharedCopy + ".");
    }

    @Override
    public Libraries at(Clock clock) {
        return this;
    }
}
