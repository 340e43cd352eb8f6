package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.util.Paths;

/**
 * Finds the files in which two trees differ. Two versions that follow each other differ in one of a thousand entries of a
 * folder, so what is equal at the beginning and at the end of two folders is compared as bytes and not taken apart; the
 * folders read last are remembered, since one version's are the next one's old ones. Not for two threads at once.
 */
public final class TreeDiff {
    private static final int REMEMBERED = 64;
    private static final int LARGEST_FOLDER = 32 << 20;
    private static final byte[] NOTHING = {};

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
        Side old = new Side(before.isPresent() ? folder(before.get()) : NOTHING);
        Side now = new Side(folder(after));
        old.find(folder);
        now.find(folder);
        if (!old.isOver() || !now.isOver()) {
            entries(old, now, "", 0, heard);
        }
    }

    private byte[] folder(ObjectId tree) throws IOException {
        byte[] known = folders.get(tree);
        if (known == null) {
            known = reader.open(tree, Constants.OBJ_TREE).getCachedBytes(LARGEST_FOLDER);
            folders.put(tree.copy(), known);
        }
        return known;
    }

    /** Tells of the entry at which the two sides stand, one of them perhaps of none. */
    private void entries(Side old, Side now, String prefix, int depth, Heard heard) throws IOException {
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
            byte[] a = oldFolder.isPresent() ? folder(oldFolder.get()) : NOTHING;
            byte[] b = newFolder.isPresent() ? folder(newFolder.get()) : NOTHING;
            String name = (oldFolder.isPresent() ? old : now).name();
            folders(new Side(a), new Side(b), prefix + name + "/", depth + 1, heard);
        }
    }

    private void folders(Side old, Side now, String prefix, int depth, Heard heard) throws IOException {
        Side none = new Side(NOTHING);
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

    /** A folder's bytes ({@code mode name NUL id} again and again) with the entry at which one stands. */
    private static final class Side {
        private final byte[] bytes;
        private int at;
        private int end;

        Side(byte[] bytes) throws IOException {
            this.bytes = bytes;
            this.end = endOf(0);
        }

        boolean isOver() {
            return at >= bytes.length;
        }

        void next() throws IOException {
            at = end;
            end = endOf(at);
        }

        private int endOf(int from) throws IOException {
            int nul = from;
            while (nul < bytes.length && bytes[nul] != 0) {
                nul++;
            }
            if (from < bytes.length && nul + Constants.OBJECT_ID_LENGTH >= bytes.length) {
                throw new CorruptObjectException("a folder breaks off");
            }
            return from >= bytes.length ? from : nul + 1 + Constants.OBJECT_ID_LENGTH;
        }

        /** Goes past entries that both have here; says whether anything is left of either. */
        boolean skipEqual(Side other) throws IOException {
            int same = Arrays.mismatch(bytes, at, bytes.length, other.bytes, other.at, other.bytes.length);
            if (same < 0) {
                return false;
            }
            int stop = at + same;
            int from = at;
            while (!isOver() && end <= stop) {
                next();
            }
            other.at += at - from;
            other.end = other.endOf(other.at);
            return true;
        }

        void find(String name) throws IOException {
            while (!isOver() && !(isFolder() && name.equals(name()))) {
                next();
            }
        }

        private int nameAt() {
            int i = at;
            while (bytes[i] != ' ') {
                i++;
            }
            return i + 1;
        }

        private int nameEnd() {
            return end - Constants.OBJECT_ID_LENGTH - 1;
        }

        String name() {
            int from = nameAt();
            return new String(bytes, from, nameEnd() - from, StandardCharsets.UTF_8);
        }

        private int mode() {
            int mode = 0;
            for (int i = at; bytes[i] != ' '; i++) {
                mode = mode << 3 | bytes[i] - '0';
            }
            return mode;
        }

        private boolean isFolder() {
            return !isOver() && (mode() & FileMode.TYPE_MASK) == FileMode.TYPE_TREE;
        }

        Optional<ObjectId> folder() {
            return isFolder() ? Optional.of(ObjectId.fromRaw(bytes, nameEnd() + 1)) : Optional.empty();
        }

        Optional<ObjectId> file() {
            boolean isFile = !isOver() && (mode() & FileMode.TYPE_MASK) == FileMode.TYPE_FILE;
            return isFile ? Optional.of(ObjectId.fromRaw(bytes, nameEnd() + 1)) : Optional.empty();
        }

        /** In the order of trees: by name, a folder's as if it ended in a slash; the end comes last. */
        int compare(Side other) {
            if (isOver() || other.isOver()) {
                return isOver() ? 1 : -1;
            }
            return Paths.compare(
                    bytes, nameAt(), nameEnd(), mode(), other.bytes, other.nameAt(), other.nameEnd(), other.mode());
        }
    }
}
