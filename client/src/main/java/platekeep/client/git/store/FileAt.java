package platekeep.client.git.store;

import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;

/**
 * A file of a version.
 *
 * @param content the id of its bytes
 * @param mode how it is kept; only plain files are ever read or written
 */
public record FileAt(ObjectId content, int mode) {

    public FileAt {
        content = content.copy();
    }

    /** A plain file. */
    public FileAt(ObjectId content) {
        this(content, FileMode.REGULAR_FILE.getBits());
    }

    /** Whether it is a plain file and not a link or a folder of somebody else's. */
    public boolean isPlain() {
        return (mode & FileMode.TYPE_MASK) == FileMode.TYPE_FILE;
    }
}
