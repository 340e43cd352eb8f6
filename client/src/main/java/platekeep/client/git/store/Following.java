package platekeep.client.git.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;

/**
 * How the files in the folder, and the list of files, follow a version. Where only files that are there change, and little,
 * all is written beforehand under other names and forced to disk at one time with the version; what is left when the
 * version is made is giving names.
 */
final class Following {
    private final Store store;
    private final WorkIndex index;
    private final SortedMap<String, Optional<FileAt>> files;
    private final Together together;
    private Optional<WorkIndex.Ready> ready = Optional.empty();
    private Optional<WorkIndex.Held> held = Optional.empty();
    private boolean areFilesLaid;

    /**
     * @param files what is written or goes, by path
     */
    Following(Store store, Map<String, Optional<FileAt>> files) {
        this.store = store;
        this.index = new WorkIndex(store.repository(), store.workTree(), store.disk());
        this.files = new TreeMap<>(files);
        this.together = new Together(store.disk());
    }

    private Path gitFolder() {
        return store.repository().getDirectory().toPath();
    }

    /**
     * Makes ready what can be.
     *
     * @param contents those of the version's new contents that are at hand
     * @return what has to be forced to disk before a name moves
     */
    List<Together> beforehand(Map<ObjectId, byte[]> contents) throws IOException {
        for (Map.Entry<String, Optional<FileAt>> file : files.entrySet()) {
            Optional<FileAt> plain = file.getValue().filter(FileAt::isPlain);
            if (plain.isEmpty()
                    || !contents.containsKey(plain.get().content())
                    || !FileNames.allowed(file.getKey())
                    || store.workTree().isThroughLink(file.getKey())) {
                return List.of();
            }
        }
        ready = index.ready(files.keySet());
        if (ready.isEmpty()) {
            return List.of();
        }
        for (Map.Entry<String, Optional<FileAt>> file : files.entrySet()) {
            FileAt plain = file.getValue().orElseThrow();
            Path laid = store.workTree().into(together, file.getKey(), contents.get(plain.content()));
            together.lay();
            ready.get().set(file.getKey(), plain, Files.readAttributes(laid, BasicFileAttributes.class));
        }
        areFilesLaid = true;
        return List.of(together, ready.get().written());
    }

    /**
     * Keeps others from writing the list.
     *
     * @param changed all files that the version changes
     */
    void lock(Map<String, Optional<FileAt>> changed) throws IOException {
        held = ready.isPresent() ? ready.get().lock() : Optional.empty();
        if (held.isEmpty()) {
            held = Optional.of(index.lock(changed));
        }
    }

    /**
     * Writes files in the folder, then the list of files, and forces both to disk.
     *
     * @param all all files of the version
     * @param more files that are written already, and folders, to be forced with them
     */
    void follow(TreeFiles all, Collection<Path> more) throws IOException {
        if (!areFilesLaid) {
            putFiles();
        }
        together.names();
        together.folders(store.workTree()
                .folders(files.keySet().stream().filter(FileNames::allowed).toList()));
        held.orElseThrow().mend(all);
        together.folders(List.of(gitFolder()));
        together.folders(more);
        together.write();
    }

    private void putFiles() throws IOException {
        for (Map.Entry<String, Optional<FileAt>> file : files.entrySet()) {
            if (file.getValue().isEmpty() && FileNames.allowed(file.getKey())) {
                store.workTree().delete(file.getKey());
            }
        }
        for (Map.Entry<String, Optional<FileAt>> file : files.entrySet()) {
            Optional<FileAt> plain = file.getValue().filter(FileAt::isPlain);
            if (plain.isPresent()) {
                byte[] bytes = store.bytes(plain.get().content());
                store.workTree().into(together, file.getKey(), bytes);
                if (together.isMuch()) {
                    together.names();
                }
            }
        }
    }

    /** Lets the list go, and takes away what was made ready and not needed. */
    void end() {
        held.ifPresent(WorkIndex.Held::unlock);
        ready.ifPresent(WorkIndex.Ready::discard);
        together.discard();
    }
}
