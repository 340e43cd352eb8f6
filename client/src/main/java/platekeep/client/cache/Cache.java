package platekeep.client.cache;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * Bytes under a key in a folder of the user's. A file is written whole or not at all and carries its check sum, so what
 * is read is what was written; whatever goes wrong, the answer is that nothing is kept.
 */
public final class Cache {
    private static final System.Logger LOG = System.getLogger(Cache.class.getName());
    private static final int SUM = Long.BYTES;

    private final Path folder;

    public Cache(Path folder) {
        this.folder = folder;
    }

    /**
     * In the place that the system has for such things; the system property {@code platekeep.cache} or the environment
     * variable {@code PLATEKEEP_CACHE} names another folder.
     */
    public static Cache ofUser() {
        String named = System.getProperty("platekeep.cache", System.getenv().getOrDefault("PLATEKEEP_CACHE", ""));
        return new Cache(named.isBlank() ? usual() : Path.of(named));
    }

    private static Path usual() {
        Path home = Path.of(System.getProperty("user.home"));
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            String local = System.getenv("LOCALAPPDATA");
            return (local == null ? home : Path.of(local)).resolve("Platekeep").resolve("cache");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library/Caches/Platekeep");
        }
        String caches = System.getenv("XDG_CACHE_HOME");
        return (caches == null || caches.isBlank() ? home.resolve(".cache") : Path.of(caches)).resolve("platekeep");
    }

    /** Where everything lies. */
    public Path folder() {
        return folder;
    }

    /** What was kept under a key; empty where there is nothing, or nothing whole. */
    public Optional<byte[]> read(String key) {
        try {
            Path file = file(key);
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            byte[] all = Files.readAllBytes(file);
            byte[] bytes = Arrays.copyOfRange(all, Math.min(SUM, all.length), all.length);
            return all.length >= SUM && ByteBuffer.wrap(all).getLong() == sum(bytes)
                    ? Optional.of(bytes)
                    : Optional.empty();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "not read from the cache: " + key, e);
            return Optional.empty();
        }
    }

    /** Keeps bytes under a key, in the place of what was there. Where that fails nothing is kept, and nobody minds. */
    public void write(String key, byte[] bytes) {
        try {
            Files.createDirectories(folder);
            Path temporary = Files.createTempFile(folder, key, ".writing");
            ByteBuffer all =
                    ByteBuffer.allocate(SUM + bytes.length).putLong(sum(bytes)).put(bytes);
            Files.write(temporary, all.array());
            Files.move(temporary, file(key), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "not kept in the cache: " + key, e);
        }
    }

    private Path file(String key) {
        if (!key.matches("[a-z0-9-]+")) {
            throw new IllegalArgumentException("not a key: " + key);
        }
        return folder.resolve(key + ".cache");
    }

    private static long sum(byte[] bytes) {
        CRC32C sum = new CRC32C();
        sum.update(bytes);
        return sum.getValue();
    }
}
