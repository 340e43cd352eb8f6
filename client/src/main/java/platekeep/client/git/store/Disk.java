package platekeep.client.git.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Writing that survives a power cut: bytes first, then the name, then the folder that holds the name. A store that can
 * be made again may put the forcing off until it is closed.
 */
public enum Disk {
    /** Forces what is written at once. */
    AT_ONCE,
    /** Forces nothing until {@link #syncAll} is asked. */
    WHEN_CLOSED;

    private static final boolean FOLDERS_SYNC =
            !System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");

    /** Makes the file hold exactly these bytes, or leaves it as it was; the folder's own sync is the caller's. */
    void replace(Path file, byte[] bytes, Path temporary) throws IOException {
        try (FileChannel channel = FileChannel.open(
                temporary, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            if (this == AT_ONCE) {
                channel.force(true);
            }
        }
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Forces a file that somebody else wrote to disk; nothing happens where there is none. */
    void syncFile(Path file) throws IOException {
        if (this == AT_ONCE && Files.isRegularFile(file)) {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
    }

    /** Forces the names in a folder to disk, on systems where that is asked for separately. */
    void syncFolder(Path folder) throws IOException {
        if (this == AT_ONCE && FOLDERS_SYNC && Files.isDirectory(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    /** Forces everything in a folder to disk, the folders in it too, whatever was put off. Links are not followed. */
    static void syncAll(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                    AT_ONCE.syncFolder(file);
                } else if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && (FOLDERS_SYNC || Files.isWritable(file))) {
                    StandardOpenOption how = FOLDERS_SYNC ? StandardOpenOption.READ : StandardOpenOption.WRITE;
                    try (FileChannel channel = FileChannel.open(file, how)) {
                        channel.force(true);
                    }
                }
            }
        }
    }
}
