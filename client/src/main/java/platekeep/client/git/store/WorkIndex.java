package platekeep.client.git.store;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.Repository;

/**
 * The list of files that other version-control programs keep beside the versions. It is locked before a version is
 * saved and mended afterwards, so that such a program sees a clean folder; what somebody has noted in it for other
 * files stays.
 */
final class WorkIndex {
    private final Disk disk;
    private final Repository repository;
    private final WorkTree workTree;

    WorkIndex(Repository repository, WorkTree workTree, Disk disk) {
        this.disk = disk;
        this.repository = repository;
        this.workTree = workTree;
    }

    /** Locks the list; fails while another program holds it. One that cannot be read is put aside and made anew. */
    DirCache lock() throws IOException {
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

    /**
     * Writes the list and lets it go.
     *
     * @param locked what {@link #lock} gave
     * @param all all files of the newest version
     * @param changed the files that the version changed; all others keep what stands, unless the list was lost
     */
    void mend(DirCache locked, TreeFiles all, Map<String, Optional<FileAt>> changed) throws IOException {
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
        disk.syncFile(file());
        disk.syncFolder(file().getParent());
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
