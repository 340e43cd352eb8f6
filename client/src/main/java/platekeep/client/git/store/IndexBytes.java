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

    private static final int NAME_LENGTH = 0xFFF;

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
        int count = bytes.getInt(8);
        if (count < 0 || count > body / NAME) {
            return false;
        }
        int[] entries = new int[count];
        for (int i = 0; i < count; i++) {
            int stop = end + NAME <= body ? nameEnd(end, body) : body;
            if (stop >= body || (bytes.getShort(end + FLAGS) & NOT_PLAIN) != 0) {
                return false;
            }
            entries[i] = end;
            doubtIfYoung(end, written);
            end += (stop - end + 8) & ~7;
        }
        return paths.stream().allMatch(path -> find(path, entries));
    }

    /** Where the zero byte after an entry's name is; the length that is noted saves looking for it. */
    private int nameEnd(int entry, int body) {
        int noted = bytes.getShort(entry + FLAGS) & NAME_LENGTH;
        int stop = entry + NAME + noted;
        if (noted < NAME_LENGTH && stop < body && bytes.get(stop) == 0) {
            return stop;
        }
        stop = entry + NAME;
        while (stop < body && bytes.get(stop) != 0) {
            stop++;
        }
        return stop;
    }

    /** Entries are in the order of the bytes of their names. */
    private boolean find(String path, int[] entries) {
        byte[] name = path.getBytes(StandardCharsets.UTF_8);
        int low = 0;
        int high = entries.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int from = entries[middle] + NAME;
            int order =
                    Arrays.compareUnsigned(bytes.array(), from, nameEnd(entries[middle], end), name, 0, name.length);
            if (order == 0) {
                places.put(path, entries[middle]);
                return true;
            }
            low = order < 0 ? middle + 1 : low;
            high = order > 0 ? middle - 1 : high;
        }
        return false;
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
