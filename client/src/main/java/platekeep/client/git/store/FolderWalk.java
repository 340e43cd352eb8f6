package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.util.Paths;

/** A folder's bytes ({@code mode name NUL id} again and again) with the entry at which one stands. */
final class FolderWalk {
    /** A folder with nothing in it. */
    static final byte[] NOTHING = {};

    private static final int LARGEST = 32 << 20;

    private final byte[] bytes;
    private int at;
    private int name;
    private int end;

    FolderWalk(byte[] bytes) throws IOException {
        this.bytes = bytes;
        stand(0);
    }

    /** The bytes of a stored folder. */
    static byte[] bytes(ObjectReader reader, ObjectId tree) throws IOException {
        return reader.open(tree, Constants.OBJ_TREE).getCachedBytes(LARGEST);
    }

    boolean isOver() {
        return at >= bytes.length;
    }

    void next() throws IOException {
        stand(end);
    }

    private void stand(int from) throws IOException {
        at = from;
        name = from;
        while (name < bytes.length && bytes[name] != ' ') {
            name++;
        }
        name++;
        int nul = name;
        while (nul < bytes.length && bytes[nul] != 0) {
            nul++;
        }
        if (from < bytes.length && nul + Constants.OBJECT_ID_LENGTH >= bytes.length) {
            throw new CorruptObjectException("a folder breaks off");
        }
        end = from >= bytes.length ? from : nul + 1 + Constants.OBJECT_ID_LENGTH;
    }

    /** Goes past entries that both have here; says whether anything is left of either. */
    boolean skipEqual(FolderWalk other) throws IOException {
        int same = Arrays.mismatch(bytes, at, bytes.length, other.bytes, other.at, other.bytes.length);
        if (same < 0) {
            return false;
        }
        int stop = at + same;
        int from = at;
        while (!isOver() && end <= stop) {
            next();
        }
        other.stand(other.at + at - from);
        return true;
    }

    void find(String folder) throws IOException {
        while (!isOver() && !(isFolder() && folder.equals(name()))) {
            next();
        }
    }

    /** Where the entry begins, with its mode. */
    int at() {
        return at;
    }

    /** Where its name begins. */
    int nameAt() {
        return name;
    }

    /** Where its id begins. */
    int idAt() {
        return end - Constants.OBJECT_ID_LENGTH;
    }

    private int nameEnd() {
        return idAt() - 1;
    }

    String name() {
        return new String(bytes, name, nameEnd() - name, StandardCharsets.UTF_8);
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
        return isFolder() ? Optional.of(ObjectId.fromRaw(bytes, idAt())) : Optional.empty();
    }

    Optional<ObjectId> file() {
        boolean isFile = !isOver() && (mode() & FileMode.TYPE_MASK) == FileMode.TYPE_FILE;
        return isFile ? Optional.of(ObjectId.fromRaw(bytes, idAt())) : Optional.empty();
    }

    /** In the order of trees: by name, a folder's as if it ended in a slash; the end comes last. */
    int compare(FolderWalk other) {
        if (isOver() || other.isOver()) {
            return isOver() ? 1 : -1;
        }
        return Paths.compare(bytes, name, nameEnd(), mode(), other.bytes, other.name, other.nameEnd(), other.mode());
    }
}
