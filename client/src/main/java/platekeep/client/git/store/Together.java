package platekeep.client.git.store;

import java.io.IOException;
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
    private final List<Item> items = new ArrayList<>();
    private final Set<Path> folders = new LinkedHashSet<>();
    private long bytes;

    Together(Disk disk) {
        this.disk = disk;
    }

    private record Item(Path file, byte[] bytes, Path temporary) {}

    /**
     * @param temporary where the bytes lie until they are forced; a name of its own among these files
     */
    void put(Path file, byte[] content, Path temporary) {
        items.add(new Item(file, content, temporary));
        folders.add(file.getParent());
        bytes += content.length;
    }

    /** These folders, or files that are written already, have to be forced, too. */
    void folders(Collection<Path> more) {
        folders.addAll(more);
    }

    /** How many files wait for their names. */
    int size() {
        return items.size();
    }

    /** Whether so much is held in memory that it should be given its {@link #names}. */
    boolean isMuch() {
        return bytes > MUCH;
    }

    /** Does everything but the folders. */
    void names() throws IOException {
        for (Item item : items) {
            disk.write(item.temporary(), item.bytes());
        }
        disk.sync(items.stream().map(Item::temporary).toList());
        for (Item item : items) {
            disk.rename(item.temporary(), item.file());
        }
        items.clear();
        bytes = 0;
    }

    /** Does all. */
    void write() throws IOException {
        names();
        disk.sync(folders);
        folders.clear();
    }
}
