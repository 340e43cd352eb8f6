package platekeep.client.git.store;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.Repository;

/**
 * The list of files that other version-control programs keep beside the versions. It is locked before a version is
 * saved and mended afterwards, so that such a program sees a clean folder; what somebody has noted in it for other
 * files stays.
 */
final class WorkIndex {
    private static final System.Logger LOG = System.getLogger(WorkIndex.class.getName());

    private final Disk disk;
    private final Repository repository;
    private final WorkTree workTree;

    WorkIndex(Repository repository, WorkTree workTree, Disk disk) {
        this.disk = disk;
        this.repository = repository;
        this.workTree = workTree;
    }

    /** The list while nobody else may write it. */
    interface Held {
        /**
         * Writes the list and lets it go; its folder is not forced to disk yet.
         *
         * @param all all files of the newest version
         */
        void mend(TreeFiles all) throws IOException;

        /** Lets it go as it was, unless it was written. */
        void unlock();
    }

    /**
     * Locks the list; fails while another program holds it. One that cannot be read is put aside and made anew.
     *
     * @param changed the files that the version changes, by path; all others keep what stands, unless the list was lost
     */
    Held lock(Map<String, Optional<FileAt>> changed) throws IOException {
        Optional<Held> inPlace = inPlace(changed);
        if (inPlace.isPresent()) {
            return inPlace.get();
        }
        DirCache locked = lock();
        return new Held() {
            @Override
            public void mend(TreeFiles all) throws IOException {
                WorkIndex.this.mend(locked, all, changed);
            }

            @Override
            public void unlock() {
                locked.unlock();
            }
        };
    }

    /** For what is common, files that stay with another content: only their entries are touched. */
    private Optional<Held> inPlace(Map<String, Optional<FileAt>> changed) throws IOException {
        Path file = file();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                || !changed.values().stream()
                        .allMatch(f -> f.filter(FileAt::isPlain).isPresent())) {
            return Optional.empty();
        }
        Path lock = file.resolveSibling(file.getFileName() + ".lock");
        try {
            Files.createFile(lock);
        } catch (FileAlreadyExistsException e) {
            throw new LockFailedException(lock.toFile());
        }
        Optional<Held> held = Optional.empty();
        try {
            Instant locked = Files.getLastModifiedTime(lock).toInstant();
            Instant written = Files.getLastModifiedTime(file).toInstant();
            held = IndexBytes.of(Files.readAllBytes(file), written, changed.keySet())
                    .map(bytes -> new InPlace(lock, bytes, locked, changed));
            return held;
        } finally {
            if (held.isEmpty()) {
                Files.delete(lock);
            }
        }
    }

    private final class InPlace implements Held {
        private final Path lock;
        private final IndexBytes bytes;
        private final Instant locked;
        private final Map<String, Optional<FileAt>> changed;
        private boolean isOver;

        InPlace(Path lock, IndexBytes bytes, Instant locked, Map<String, Optional<FileAt>> changed) {
            this.lock = lock;
            this.bytes = bytes;
            this.locked = locked;
            this.changed = changed;
        }

        @Override
        public void mend(TreeFiles all) throws IOException {
            for (Map.Entry<String, Optional<FileAt>> change : changed.entrySet()) {
                String path = change.getKey();
                Optional<BasicFileAttributes> lies =
                        FileNames.allowed(path) ? workTree.attributes(path) : Optional.empty();
                bytes.set(
                        path,
                        change.getValue().orElseThrow(),
                        lies.map(attributes -> (int) attributes.size()),
                        lies.map(attributes -> attributes.lastModifiedTime().toInstant())
                                .orElse(Instant.EPOCH),
                        locked);
            }
            disk.replace(file(), bytes.whole(), lock);
            isOver = true;
        }

        @Override
        public void unlock() {
            if (!isOver) {
                isOver = true;
                try {
                    Files.deleteIfExists(lock);
                } catch (IOException e) {
                    LOG.log(System.Logger.Level.WARNING, "the list of files stays locked by " + lock, e);
                }
            }
        }
    }

    private DirCache lock() throws IOException {
        try {
            return locked();
        } catch (CorruptObjectException | EOFException e) {
            Path file = file();
            Files.move(file, file.resolveSibling("index.unreadable"), StandardCopyOption.REPLACE_EXISTING);
            return locked();
        }
    }

    /**
     * Not {@code repository.lockDirCache()}: a list that knows its repository compares young files with their content
     * when it is written, through the filters of the folder's settings, which are commands.
     */
    private DirCache locked() throws IOException {
        return DirCache.lock(repository.getIndexFile(), repository.getFS());
    }

    private void mend(DirCache locked, TreeFiles all, Map<String, Optional<FileAt>> changed) throws IOException {
        DirCacheEditor editor = locked.editor();
        if (locked.getEntryCount() == 0) {
            for (Map.Entry<String, FileAt> file : all.files().entrySet()) {
                editor.add(edit(file.getKey(), file.getValue()));
            }
        } else {
            for (Map.Entry<String, Optional<FileAt>> change : changed.entrySet()) {
                editor.add(
                        change.getValue().isPresent()
                                ? edit(change.getKey(), change.getValue().get())
                                : new DirCacheEditor.DeletePath(change.getKey()));
            }
        }
        editor.finish();
        locked.write();
        if (!locked.commit()) {
            throw new IOException("the list of files could not be written");
        }
        disk.sync(List.of(file()));
    }

    private Path file() {
        return repository.getIndexFile().toPath();
    }

    private DirCacheEditor.PathEdit edit(String path, FileAt file) throws IOException {
        Optional<BasicFileAttributes> lies =
                file.isPlain() && FileNames.allowed(path) ? workTree.attributes(path) : Optional.empty();
        return new DirCacheEditor.PathEdit(path) {
            @Override
            public void apply(DirCacheEntry entry) {
                entry.setFileMode(FileMode.fromBits(file.mode()));
                entry.setObjectId(file.content());
                lies.ifPresent(attributes -> {
                    entry.setLength(attributes.size());
                    entry.setLastModified(attributes.lastModifiedTime().toInstant());
                });
            }
        };
    }
}
