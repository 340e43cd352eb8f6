package platekeep.client.git.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The list of files as it lies on disk, in the plain form (version 2, nothing half settled), in which entries that stay
 * keep their bytes and some get a new content in their place. Lists of any other form are left to the library for it.
 */
final class IndexBytes {
    private static final int HEAD = 12;
    private static final int MODIFIED = 8;
    private static final int MODE = 24;
    private static final int SIZE = 36;
    private static final int ID = 40;
    private static final int FLAGS = 60;
    private static final int NAME = 62;
    private static final int NOT_PLAIN = 0x7000;
    private static final int DIGEST = 20;

    private final ByteBuffer bytes;
    private final Map<String, Integer> places = new HashMap<>();
    private int end = HEAD;

    private IndexBytes(byte[] bytes) {
        this.bytes = ByteBuffer.wrap(bytes);
    }

    /**
     * Reads a list.
     *
     * @param written when it was written: of a file as young as that nobody knows whether it is as noted
     * @param paths the files that will be set; empty is returned where the list lacks one of them
     */
    static Optional<IndexBytes> of(byte[] bytes, Instant written, Set<String> paths) {
        int body = bytes.length - DIGEST;
        if (body < HEAD || !Arrays.equals(digest(bytes, body), Arrays.copyOfRange(bytes, body, bytes.length))) {
            return Optional.empty();
        }
        IndexBytes index = new IndexBytes(bytes);
        return index.readEntries(body, written, paths) && index.hasPlainRest(body)
                ? Optional.of(index)
                : Optional.empty();
    }

    private boolean readEntries(int body, Instant written, Set<String> paths) {
        if (bytes.getInt(0) != 0x44495243 || bytes.getInt(4) != 2) {
            return false;
        }
        for (int left = bytes.getInt(8); left > 0; left--) {
            int name = end + NAME;
            int stop = name;
            while (stop < body && bytes.get(stop) != 0) {
                stop++;
            }
            if (stop >= body || (bytes.getShort(end + FLAGS) & NOT_PLAIN) != 0) {
                return false;
            }
            String path = new String(bytes.array(), name, stop - name, StandardCharsets.UTF_8);
            if (paths.contains(path)) {
                places.put(path, end);
            }
            doubtIfYoung(end, written);
            end += (stop - end + 8) & ~7;
        }
        return places.size() == paths.size();
    }

    /** What may follow the entries can be left out when its name begins with a capital. */
    private boolean hasPlainRest(int body) {
        int at = end;
        while (at + 8 <= body) {
            if (bytes.get(at) < 'A' || bytes.get(at) > 'Z' || bytes.getInt(at + 4) < 0) {
                return false;
            }
            at += 8 + Math.min(bytes.getInt(at + 4), body);
        }
        return at == body;
    }

    /** A file that may have changed since without its time telling has no size noted, so that it is compared. */
    private void doubtIfYoung(int entry, Instant written) {
        long seconds = Integer.toUnsignedLong(bytes.getInt(entry + MODIFIED));
        if (seconds >= written.getEpochSecond()
                && !Instant.ofEpochSecond(seconds, bytes.getInt(entry + MODIFIED + 4))
                        .isBefore(written)) {
            bytes.putInt(entry + SIZE, 0);
        }
    }

    /**
     * Sets what one of the files is.
     *
     * @param size of the file in the folder; empty where none lies there, then size and time stay as they were
     * @param locked since when the list is held: a younger file is compared when it is next asked for
     */
    void set(String path, FileAt file, Optional<Integer> size, Instant modified, Instant locked) {
        int entry = places.get(path);
        bytes.putInt(entry + MODE, file.mode());
        file.content().copyRawTo(bytes.array(), entry + ID);
        if (size.isPresent()) {
            bytes.putInt(entry + SIZE, size.get());
            bytes.putInt(entry + MODIFIED, (int) modified.getEpochSecond());
            bytes.putInt(entry + MODIFIED + 4, modified.getNano());
        }
        doubtIfYoung(entry, locked);
    }

    /** The whole list. */
    byte[] whole() {
        byte[] out = Arrays.copyOf(bytes.array(), end + DIGEST);
        System.arraycopy(digest(out, end), 0, out, end, DIGEST);
        return out;
    }

    private static byte[] digest(byte[] bytes, int length) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(bytes, 0, length);
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }
}
