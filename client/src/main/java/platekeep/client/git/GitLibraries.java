package platekeep.client.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import platekeep.client.cache.Cache;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.history.IndexFile;
import platekeep.client.git.history.VersionIndex;
import platekeep.client.git.plates.Entries;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.store.BlindSystem;
import platekeep.client.git.store.Disk;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.Trouble;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Hand;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.LibraryText;

/** Makes and opens libraries. Several may be open at once, also two of one folder. */
public final class GitLibraries implements Libraries {
    private static final String ATTRIBUTES = ".gitattributes";

    /** So that no other program changes line ends, or joins plates line by line, where the user has not set it up. */
    private static final String ATTRIBUTES_TEXT = String.join(
            "\n",
            "* text eol=lf",
            "*.jpg -text -diff -merge",
            "*.png -text -diff -merge",
            "plates/**/*.json -merge",
            "series/*.json -merge",
            "library.json -merge",
            "");

    private final Clock clock;
    private final Cache cache;
    private final Executor helpers;
    private final Disk disk;

    /**
     * @param clock dates the versions, in its zone
     * @param cache where the index of versions is kept between two runs
     * @param helpers where reading in parallel may run
     */
    public GitLibraries(Clock clock, Cache cache, Executor helpers) {
        this(clock, cache, helpers, Disk.atOnce(helpers));
    }

    private GitLibraries(Clock clock, Cache cache, Executor helpers, Disk disk) {
        this.clock = clock;
        this.disk = disk;
        this.cache = cache;
        this.helpers = helpers;
        BlindSystem.install();
    }

    @Override
    public Libraries at(Clock other) {
        return new GitLibraries(other, cache, helpers, disk);
    }

    @Override
    public Libraries syncedWhenClosed() {
        return new GitLibraries(clock, cache, helpers, Disk.whenClosed());
    }

    @Override
    public Library create(Path folder, String name, Hand hand) throws LibraryException {
        if (name.isBlank()) {
            throw new LibraryException("A library needs a name. Nothing was made.");
        }
        return made(folder, store -> {
            GitLibrary library = library(store);
            library.introduce(hand);
            firstVersion(store, name.strip(), hand);
            return library;
        });
    }

    private void firstVersion(Store store, String name, Hand hand) throws IOException, LibraryException {
        LibraryFacts facts = new LibraryFacts(newId(name, hand), name);
        try (Writing writing = store.write()) {
            Map<String, Optional<FileAt>> files = new TreeMap<>();
            files.put(PlateFiles.FACTS, Optional.of(writing.keep(LibraryText.bytes(facts))));
            files.put(ATTRIBUTES, Optional.of(writing.keep(ATTRIBUTES_TEXT.getBytes(StandardCharsets.UTF_8))));
            writing.version(
                    Optional.empty(), Optional.empty(), files, room(store).facts(hand, hand, "New library " + name));
        }
    }

    /** The same for the same name, hand and moment, so that a library made again by a clock that stands is the same. */
    private String newId(String name, Hand hand) {
        String facts = String.join(
                "\n", name, hand.name(), hand.address(), clock.instant().toString());
        return UUID.nameUUIDFromBytes(facts.getBytes(StandardCharsets.UTF_8)).toString();
    }

    @Override
    public Library open(Path folder) throws LibraryException {
        Path start = folder.toAbsolutePath().normalize();
        for (Path at = start; at != null; at = at.getParent()) {
            if (Store.isStore(at)) {
                return opened(at);
            }
        }
        throw new LibraryException("There is no library in " + start + " nor in a folder above it.");
    }

    private Library opened(Path folder) throws LibraryException {
        try {
            Store store = Store.open(folder, disk);
            try {
                Optional<ObjectId> newest = store.newest();
                if (newest.isPresent()
                        && store.file(newest.get(), PlateFiles.FACTS).isPresent()) {
                    return library(store);
                }
            } catch (IOException | RuntimeException e) {
                store.close();
                throw e;
            }
            store.close();
        } catch (IOException e) {
            throw Trouble.of("The library in " + folder + " could not be opened", "Nothing was changed.", e);
        }
        throw new LibraryException("The folder " + folder + " keeps versions of files, but it is no plate library.");
    }

    @Override
    public Library copyFrom(Path sharedCopy, Path folder, Hand hand) throws LibraryException {
        return made(folder, store -> {
            GitLibrary library = library(store);
            library.introduce(hand);
            library.partner().firstCopy(sharedCopy, hand);
            return library;
        });
    }

    /** What fills a new store. */
    private interface Filling {
        Library fill(Store store) throws IOException, LibraryException;
    }

    /** Makes a library in an empty or absent folder; where that fails the folder is as it was. */
    private Library made(Path chosen, Filling filling) throws LibraryException {
        Path folder = chosen.toAbsolutePath().normalize();
        boolean wasThere = Files.exists(folder);
        try {
            refuseFull(folder);
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw Trouble.of("The library could not be made in " + folder, "Nothing was made.", e);
        }
        Store store = null;
        try {
            store = Store.create(folder, disk);
            return filling.fill(store);
        } catch (IOException e) {
            undo(store, folder, wasThere);
            throw Trouble.of("The library could not be made in " + folder, "Nothing was made.", e);
        } catch (LibraryException | RuntimeException e) {
            undo(store, folder, wasThere);
            throw e;
        }
    }

    private static void refuseFull(Path folder) throws IOException, LibraryException {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new LibraryException(folder + " is a file. Choose an empty folder. Nothing was made.");
        }
        try (Stream<Path> content = Files.list(folder)) {
            if (content.findAny().isPresent()) {
                throw new LibraryException(
                        "The folder " + folder + " is not empty. Choose an empty one. Nothing was made.");
            }
        }
    }

    private static void undo(Store store, Path folder, boolean wasThere) {
        if (store != null) {
            store.repository().close();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
                if (!wasThere || !file.equals(folder)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException e) {
            System.getLogger(GitLibraries.class.getName())
                    .log(System.Logger.Level.WARNING, "not cleaned up: " + folder, e);
        }
    }

    private GitLibrary library(Store store) {
        return new GitLibrary(room(store));
    }

    private Workroom room(Store store) {
        Repository repository = store.repository();
        VersionIndex index = new VersionIndex(repository, new IndexFile(cache, cacheKey(store)));
        return new Workroom(store, index, new Entries(store, helpers), clock);
    }

    private static String cacheKey(Store store) {
        return UUID.nameUUIDFromBytes(store.folder().toString().getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
