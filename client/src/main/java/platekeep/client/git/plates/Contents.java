package platekeep.client.git.plates;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.WorkTree;

/**
 * The bytes of files, by their id: those of the store and, above them, those that are only thought of. A join is
 * worked out over this without a byte written.
 */
public final class Contents {
    private final Store store;
    private final Map<ObjectId, byte[]> thoughtOf = new HashMap<>();

    public Contents(Store store) {
        this.store = store;
    }

    public byte[] bytes(ObjectId content) throws IOException {
        byte[] bytes = thoughtOf.get(content);
        return bytes == null ? store.bytes(content) : bytes.clone();
    }

    /** A plain file with these bytes. */
    public FileAt think(byte[] bytes) {
        ObjectId id = WorkTree.contentOf(bytes);
        thoughtOf.put(id, bytes.clone());
        return new FileAt(id);
    }

    /** The bytes of a content that is only thought of; empty for one that came from the store. */
    public Optional<byte[]> thought(ObjectId content) {
        return Optional.ofNullable(thoughtOf.get(content)).map(byte[]::clone);
    }
}
