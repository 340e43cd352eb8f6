package platekeep.client.git.store;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;

/**
 * Finds the files in which two trees differ. Two versions that follow each other differ in one of a thousand entries of a
 * folder, so what is equal at the beginning and at the end of two folders is compared as bytes and not taken apart; the
 * folders read last are remembered, since one version's are the next one's old ones. Not for two threads at once.
 */
public final class TreeDiff {
    private static final int REMEMBERED = 64;

    private final ObjectReader reader;
    private final Map<ObjectId, byte[]> folders = new LinkedHashMap<>(2 * REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ObjectId, byte[]> eldest) {
            return size() > REMEMBERED;
        }
    };

    public TreeDiff(ObjectReader reader) {
        this.reader = reader;
    }

    /** Hears of a plain file that is not the same; empty where there is none. */
    public interface Heard {
        void differs(String path, Optional<ObjectId> before, Optional<ObjectId> after) throws IOException;
    }

    /**
     * Tells the files below a folder in which two trees differ, in the order of trees.
     *
     * @param folder a folder at the top
     * @param before the older tree; empty for none
     */
    public void between(Optional<ObjectId> before, ObjectId after, String folder, Heard heard) throws IOException {
        FolderWalk old = new FolderWalk(before.isPresent() ? folder(before.get()) : FolderWalk.NOTHING);
        FolderWalk now = new FolderWalk(folder(after));
        old.find(folder);
        now.find(folder);
        if (!old.isOver() || !now.isOver()) {
            entries(old, now, "", 0, heard);
        }
    }

    private byte[] folder(ObjectId tree) throws IOException {
        byte[] known = folders.get(tree);
        if (known == null) {
            known = FolderWalk.bytes(reader, tree);
            folders.put(tree.copy(), known);
        }
        return known;
    }

    /** Tells of the entry at which the two sides stand, one of them perhaps of none. */
    private void entries(FolderWalk old, FolderWalk now, String prefix, int depth, Heard heard) throws IOException {
        Optional<ObjectId> before = old.file();
        Optional<ObjectId> after = now.file();
        if (!before.equals(after)) {
            heard.differs(prefix + (before.isPresent() ? old : now).name(), before, after);
        }
        Optional<ObjectId> oldFolder = old.folder();
        Optional<ObjectId> newFolder = now.folder();
        if (!oldFolder.equals(newFolder)) {
            if (depth >= TreeFiles.DEEPEST) {
                throw new TreeFiles.TooMuch("folders lie too deep in each other at " + prefix);
            }
            byte[] a = oldFolder.isPresent() ? folder(oldFolder.get()) : FolderWalk.NOTHING;
            byte[] b = newFolder.isPresent() ? folder(newFolder.get()) : FolderWalk.NOTHING;
            String name = (oldFolder.isPresent() ? old : now).name();
            folders(new FolderWalk(a), new FolderWalk(b), prefix + name + "/", depth + 1, heard);
        }
    }

    private void folders(FolderWalk old, FolderWalk now, String prefix, int depth, Heard heard) throws IOException {
        FolderWalk none = new FolderWalk(FolderWalk.NOTHING);
        while (old.skipEqual(now)) {
            int order = old.compare(now);
            if (order == 0) {
                entries(old, now, prefix, depth, heard);
            } else if (order < 0) {
                entries(old, none, prefix, depth, heard);
            } else {
                entries(none, now, prefix, depth, heard);
            }
            if (order <= 0) {
                old.next();
            }
            if (order >= 0) {
                now.next();
            }
        }
    }
}
