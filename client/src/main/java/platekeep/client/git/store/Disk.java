package platekeep.client.git.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import platekeep.client.task.InParts;

/**
 * Writing that survives a power cut: bytes first, then the name, then the folder that holds the name. What need not come
 * one after the other is forced together, which costs hardly more than forcing one of them: a file system with a journal
 * writes it once for all. A store that can be made again may put the forcing off until it is closed;
 * the little that JGit writes by itself, it forces all the same.
 */
public final class Disk {
    private static final boolean FOLDERS_SYNC =
            !System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");

    private static final StandardOpenOption TO_SYNC = FOLDERS_SYNC ? StandardOpenOption.READ : StandardOpenOption.WRITE;

    private static final Set<OpenOption> TO_WRITE = Set.of(
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);

    private static final Set<StandardOpenOption> TO_MAKE =
            Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    private static final FileAttribute<?> ONLY_READ =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r--r--r--"));

    private final boolean atOnce;
    private final InParts together;

    private Disk(boolean atOnce, Executor helpers) {
        this.atOnce = atOnce;
        this.together = InParts.waiting(helpers);
    }

    /**
     * Forces what is written at once.
     *
     * @param helpers where several files may be waited for besides the calling thread
     */
    public static Disk atOnce(Executor helpers) {
        return new Disk(true, helpers);
    }

    /** Forces nothing until {@link #syncAll} is asked. */
    public static Disk whenClosed() {
        return new Disk(false, Runnable::run);
    }

    boolean putsOff() {
        return !atOnce;
    }

    /** Makes the file hold exactly these bytes, or leaves it as it was; the folder's own sync is the caller's. */
    void replace(Path file, byte[] bytes, Path temporary) throws IOException {
        write(temporary, bytes);
        sync(List.of(temporary));
        rename(temporary, file);
    }

    /** Writes a file that has not got its name yet. */
    void write(Path temporary, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, TO_WRITE)) {
            write(channel, bytes);
        }
    }

    /** The same for one that nobody is to change afterwards: it is made so that it can only be read, where a system has that. */
    void writeForGood(Path temporary, byte[] bytes) throws IOException {
        if (!temporary.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            write(temporary, bytes);
            return;
        }
        try (FileChannel channel = made(temporary)) {
            write(channel, bytes);
        }
    }

    /** A new file; one of that name was left by a program that was killed. */
    private static FileChannel made(Path temporary) throws IOException {
        try {
            return FileChannel.open(temporary, TO_MAKE, ONLY_READ);
        } catch (FileAlreadyExistsException e) {
            Files.delete(temporary);
            return FileChannel.open(temporary, TO_MAKE, ONLY_READ);
        }
    }

    private static void write(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    /** Gives a file its name, in the place of what has it. */
    void rename(Path temporary, Path file) throws IOException {
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Forces files, and the names in folders where a system asks for that separately, to disk, all together; nothing
     * happens for what is not there.
     */
    void sync(Collection<Path> those) throws IOException {
        if (atOnce) {
            List<Path> each = those.stream().distinct().toList();
            together.each(each.size(), done -> {}, (from, to) -> {
                for (Path path : each.subList(from, to)) {
                    force(path);
                }
            });
        }
    }

    private static void force(Path path) throws IOException {
        boolean isFolder = Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
        boolean isFile = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
        if (isFolder && FOLDERS_SYNC || isFile && (FOLDERS_SYNC || Files.isWritable(path))) {
            try (FileChannel channel = FileChannel.open(path, TO_SYNC)) {
                channel.force(true);
            }
        }
    }

    /** Forces everything in a folder to disk, the folders in it too, whatever was put off. Links are not followed. */
    static void syncAll(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                force(file);
            }
        }
    }
}
