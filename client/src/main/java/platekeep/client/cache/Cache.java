package platekeep.client.cache;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * Bytes under a key in a folder of the user's. A file is written whole or not at all and carries its check sum, so what
 * is read is what was written; whatever goes wrong, the answer is that nothing is kept. All files together stay below a
 * bound: those that were not asked for longest go.
 */
public final class Cache {
    private static final System.Logger LOG = System.getLogger(Cache.class.getName());
    private static final int SUM = Long.BYTES;

    private static final long MOST_BYTES = 64L << 20;

    /** A file that is being written is given up when it is this old: whoever wrote it was killed. */
    private static final Duration GIVEN_UP = Duration.ofHours(1);

    private final Path folder;
    private final long mostBytes;

    public Cache(Path folder) {
        this(folder, MOST_BYTES);
    }

    /**
     * @param mostBytes how large all files together may be
     */
    Cache(Path folder, long mostBytes) {
        this.folder = folder;
        this.mostBytes = mostBytes;
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
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
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
            throwOldAway(file(key));
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "not kept in the cache: " + key, e);
        }
    }

    /** Makes room, but never by what was just written, and takes out what a killed program left half written. */
    private void throwOldAway(Path newest) throws IOException {
        List<Kept> all = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.{cache,writing}")) {
            for (Path file : files) {
                BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
                all.add(new Kept(file, is.size(), is.lastModifiedTime().toInstant()));
            }
        }
        all.sort(Comparator.comparing(Kept::asked));
        long bytes = all.stream().mapToLong(Kept::bytes).sum();
        Instant givenUp = Instant.now().minus(GIVEN_UP);
        for (Kept kept : all) {
            boolean isHalf = kept.file().toString().endsWith(".writing");
            if (isHalf
                    ? kept.asked().isBefore(givenUp)
                    : bytes > mostBytes && !kept.file().equals(newest)) {
                Files.deleteIfExists(kept.file());
                bytes -= kept.bytes();
            }
        }
    }

    /** A file of the cache, and when it was asked for last. */
    private record Kept(Path file, long bytes, Instant asked) {}

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
