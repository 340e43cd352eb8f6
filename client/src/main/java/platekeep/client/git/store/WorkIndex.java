package platekeep.client.git.store;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private static final int SUM = 20;

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

    /** The list as it will be, made before it is locked; only the list from which it was made gives way to it. */
    final class Ready {
        private final IndexBytes bytes;
        private final byte[] madeFrom;
        private final Together together = new Together(disk);

        private Ready(IndexBytes bytes, byte[] madeFrom) {
            this.bytes = bytes;
            this.madeFrom = madeFrom;
        }

        /**
         * Sets what one of the files is.
         *
         * @param lies the file that will be in the folder
         */
        void set(String path, FileAt file, BasicFileAttributes lies) {
            Instant modified = lies.lastModifiedTime().toInstant();
            bytes.set(path, file, Optional.of((int) lies.size()), modified, modified);
        }

        /** What has to be forced to disk before the list is locked. */
        Together written() {
            together.put(file(), bytes.whole(), file().resolveSibling("platekeep-listing"));
            return together;
        }

        /** Locks the list where it is still the one from which this was made. */
        Optional<Held> lock() throws IOException {
            Path lock = made(lockFile());
            boolean isSame = false;
            try {
                isSame = Arrays.equals(madeFrom, sum());
            } finally {
                if (!isSame) {
                    Files.delete(lock);
                }
            }
            return isSame ? Optional.of(new Locked(lock, together)) : Optional.empty();
        }

        void discard() {
            together.discard();
        }
    }

    /** A list that is ready to get its name. */
    private static final class Locked extends Lock {
        private final Together together;

        Locked(Path lock, Together together) {
            super(lock);
            this.together = together;
        }

        @Override
        public void mend(TreeFiles all) throws IOException {
            together.names();
            unlock();
        }
    }

    /**
     * For what is common, files that stay with another content: makes the list without locking it.
     *
     * @return empty where that is not so, or where the list is of another form
     */
    Optional<Ready> ready(Set<String> changed) throws IOException {
        if (!Files.isRegularFile(file(), LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        Instant written = Files.getLastModifiedTime(file()).toInstant();
        byte[] bytes = Files.readAllBytes(file());
        byte[] sum = Arrays.copyOfRange(bytes, Math.max(0, bytes.length - SUM), bytes.length);
        return IndexBytes.of(bytes, written, changed).map(list -> new Ready(list, sum));
    }

    /** The check sum with which the list ends; it stands for all of the list. */
    private byte[] sum() throws IOException {
        ByteBuffer sum = ByteBuffer.allocate(SUM);
        try (FileChannel list = FileChannel.open(file(), StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
            list.position(Math.max(0, list.size() - SUM));
            int more = 0;
            while (sum.hasRemaining() && more >= 0) {
                more = list.read(sum);
            }
        }
        return sum.array();
    }

    private Path lockFile() {
        return file().resolveSibling(file().getFileName() + ".lock");
    }

    private static Path made(Path lock) throws IOException {
        try {
            return Files.createFile(lock);
        } catch (FileAlreadyExistsException e) {
            throw new LockFailedException(lock.toFile());
        }
    }

    /** For what is common, files that stay with another content: only their entries are touched. */
    private Optional<Held> inPlace(Map<String, Optional<FileAt>> changed) throws IOException {
        Path file = file();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                || !changed.values().stream()
                        .allMatch(f -> f.filter(FileAt::isPlain).isPresent())) {
            return Optional.empty();
        }
        Path lock = made(lockFile());
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

    /** The file that says to everybody that the list is held. */
    private abstract static class Lock implements Held {
        private final Path lock;
        private boolean isOver;

        Lock(Path lock) {
            this.lock = lock;
        }

        Path file() {
            return lock;
        }

        /** The lock file is gone already. */
        void over() {
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

    private final class InPlace extends Lock {
        private final IndexBytes bytes;
        private final Instant locked;
        private final Map<String, Optional<FileAt>> changed;

        InPlace(Path lock, IndexBytes bytes, Instant locked, Map<String, Optional<FileAt>> changed) {
            super(lock);
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
            disk.replace(WorkIndex.this.file(), bytes.whole(), file());
            over();
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
