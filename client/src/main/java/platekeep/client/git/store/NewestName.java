package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;

/**
 * The name of the newest version on its way to a version that was made from that one, where a name is a file of its own
 * that holds an id (gitrepository-layout, "refs"). The file is written and forced beforehand with what else has to be, so
 * that the name moves by giving a file its name; others are kept out by a lock file as by every program that moves names.
 */
final class NewestName {
    private final Repository repository;
    private final Disk disk;
    private final String branch;
    private final ObjectId before;
    private final Path temporary;
    private final Together together;

    private NewestName(Store store, String branch, ObjectId before) {
        this.repository = store.repository();
        this.disk = store.disk();
        this.branch = branch;
        this.before = before;
        this.temporary = gitFolder().resolve("platekeep-naming");
        this.together = new Together(disk);
    }

    /** Empty where names are kept in another way, or the name stands for nothing yet. */
    static Optional<NewestName> of(Store store, String branch, Optional<ObjectId> before) {
        String kept = store.repository().getConfig().getString("extensions", null, "refStorage");
        return kept == null ? before.map(id -> new NewestName(store, branch, id)) : Optional.empty();
    }

    private Path gitFolder() {
        return repository.getDirectory().toPath();
    }

    private Path file() {
        return gitFolder().resolve(branch);
    }

    /** What has to be forced to disk before the name moves. */
    Together beforehand(ObjectId after) {
        byte[] text = (after.name() + "\n").getBytes(StandardCharsets.US_ASCII);
        together.put(lock(), text, temporary);
        return together;
    }

    private Path lock() {
        return file().resolveSibling(file().getFileName() + ".lock");
    }

    /** Moves the name unless it stands for another version meanwhile, or somebody else moves it; says whether it did. */
    boolean move() throws IOException {
        Path lock = lock();
        try {
            Files.createDirectories(lock.getParent());
            Files.createFile(lock);
        } catch (FileAlreadyExistsException e) {
            return false;
        }
        boolean isMoved = false;
        try {
            Ref now = repository.exactRef(branch);
            if (now != null && !now.isSymbolic() && before.equals(now.getObjectId())) {
                together.names();
                disk.rename(lock, file());
                isMoved = true;
            }
            return isMoved;
        } finally {
            if (!isMoved) {
                Files.deleteIfExists(lock);
            }
        }
    }

    /** Takes away what was written beforehand and not needed. */
    void discard() {
        together.discard();
    }
}
