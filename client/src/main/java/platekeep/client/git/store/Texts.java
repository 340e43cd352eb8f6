package platekeep.client.git.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;

/**
 * Reads many files of the newest version one after the other, as {@link Store#bytes(String, ObjectId)} does one, all into
 * the same memory. Not for sharing among threads.
 */
public final class Texts implements AutoCloseable {
    private static final int USUAL = 32 << 10;

    private final WorkTree workTree;
    private final ObjectReader reader;
    private byte[] memory = new byte[USUAL];

    Texts(WorkTree workTree, ObjectReader reader) {
        this.workTree = workTree;
        this.reader = reader;
    }

    /**
     * The bytes of a file's content.
     *
     * @return on an array, from its beginning; good until the next file is read
     */
    public ByteBuffer read(String path, ObjectId content) throws IOException {
        Optional<ByteBuffer> lying = workTree.readIfIs(path, content, this::memory);
        return lying.isPresent() ? lying.get() : ByteBuffer.wrap(Store.bytes(reader, content));
    }

    /** The same for a content that is known not to lie in the folder. */
    public ByteBuffer readStored(ObjectId content) throws IOException {
        return ByteBuffer.wrap(Store.bytes(reader, content));
    }

    private byte[] memory(int size) {
        if (memory.length < size) {
            memory = new byte[Math.max(size, 2 * memory.length)];
        }
        return memory;
    }

    @Override
    public void close() {
        reader.close();
    }
}
