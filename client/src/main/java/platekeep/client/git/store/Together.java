package platekeep.client.git.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Files that are written together: first the bytes of all are forced to disk, then they get their names, then the folders
 * that hold the names are forced. After a power cut each of them is there whole or is as it was before, in no order.
 */
final class Together {
    private static final long MUCH = 8 << 20;

    private final Disk disk;
    private final List<Item> waiting = new ArrayList<>();
    private final List<Laid> laid = new ArrayList<>();
    private final List<Laid> forced = new ArrayList<>();
    private final Set<Path> folders = new LinkedHashSet<>();
    private long bytes;

    Together(Disk disk) {
        this.disk = disk;
    }

    private record Item(Laid where, byte[] bytes, Writer writer) {}

    /** How bytes come on disk. */
    private interface Writer {
        void write(Path temporary, byte[] bytes) throws IOException;
    }

    /** What lies on disk but has not got its name. */
    private record Laid(Path file, Path temporary) {}

    /**
     * @param temporary where the bytes lie until they are forced; a name of its own among these files
     */
    void put(Path file, byte[] content, Path temporary) {
        put(file, content, temporary, disk::write);
    }

    /** As {@link #put}, a file that nobody is to change afterwards. */
    void putForGood(Path file, byte[] content, Path temporary) {
        put(file, content, temporary, disk::writeForGood);
    }

    private void put(Path file, byte[] content, Path temporary, Writer writer) {
        waiting.add(new Item(new Laid(file, temporary), content, writer));
        folders.add(file.getParent());
        bytes += content.length;
    }

    /** These folders, or files that are written already, have to be forced, too. */
    void folders(Collection<Path> more) {
        folders.addAll(more);
    }

    /** How many files wait for their names. */
    int size() {
        return waiting.size() + laid.size() + forced.size();
    }

    /** Whether so much is held in memory that it should be given its {@link #names}. */
    boolean isMuch() {
        return bytes > MUCH;
    }

    /** Writes bytes; neither are they forced nor have they got their names. */
    void lay() throws IOException {
        for (Item item : waiting) {
            laid.add(item.where());
            item.writer().write(item.where().temporary(), item.bytes());
        }
        waiting.clear();
        bytes = 0;
    }

    /** Does everything but the folders. */
    void names() throws IOException {
        names(List.of());
    }

    /**
     * Does everything but the folders.
     *
     * @param later of these the bytes are forced at one time with the others; they get their names when they are asked to
     */
    void names(List<Together> later) throws IOException {
        List<Together> all = new ArrayList<>(later);
        all.add(this);
        List<Path> temporaries = new ArrayList<>();
        for (Together one : all) {
            one.lay();
            one.laid.forEach(file -> temporaries.add(file.temporary()));
        }
        disk.sync(temporaries);
        for (Together one : all) {
            one.forced.addAll(one.laid);
            one.laid.clear();
        }
        for (Laid file : forced) {
            disk.rename(file.temporary(), file.file());
        }
        forced.clear();
    }

    /** Does all. */
    void write() throws IOException {
        write(List.of());
    }

    /** Does all; with others as {@link #names} says. */
    void write(List<Together> later) throws IOException {
        names(later);
        disk.sync(folders);
        folders.clear();
    }

    /** Takes away what has not got its name, where that can be done. */
    void discard() {
        List<Laid> all = new ArrayList<>(laid);
        all.addAll(forced);
        for (Laid file : all) {
            try {
                Files.deleteIfExists(file.temporary());
            } catch (IOException e) {
                System.getLogger(Together.class.getName())
                        .log(System.Logger.Level.WARNING, "left behind: " + file.temporary(), e);
            }
        }
        waiting.clear();
        laid.clear();
        forced.clear();
        folders.clear();
    }
}
