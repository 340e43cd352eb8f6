package platekeep.client.git.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One writer at a time in a folder, among the threads of this program and among programs. The operating system holds
 * the lock for a process, so one that was killed leaves none behind; the empty file that carries the lock stays.
 */
public final class StoreLock implements AutoCloseable {
    private static final Map<Path, ReentrantLock> IN_THIS_PROGRAM = new ConcurrentHashMap<>();
    private static final int TRIES = 400;
    private static final int MILLIS_BETWEEN = 50;

    private final ReentrantLock inThisProgram;
    private final FileChannel channel;

    private StoreLock(ReentrantLock inThisProgram, FileChannel channel) {
        this.inThisProgram = inThisProgram;
        this.channel = channel;
    }

    /**
     * Takes the lock, waiting up to 20 seconds for others.
     *
     * @throws Busy when another one still writes after that time
     */
    static StoreLock take(Path gitFolder) throws IOException {
        return takeFile(gitFolder.toRealPath().resolve("platekeep.lock"));
    }

    /** Takes the lock of those who note what they saw in a shared copy; it does not keep writers out. */
    static StoreLock takeToLook(Path gitFolder) throws IOException {
        return takeFile(gitFolder.toRealPath().resolve("platekeep.look"));
    }

    private static StoreLock takeFile(Path file) throws IOException {
        ReentrantLock lock = IN_THIS_PROGRAM.computeIfAbsent(file, path -> new ReentrantLock());
        try {
            if (!lock.tryLock((long) TRIES * MILLIS_BETWEEN, TimeUnit.MILLISECONDS)) {
                throw new Busy();
            }
        } catch (InterruptedException e) {
            throw new Busy();
        }
        try {
            return new StoreLock(lock, lockedFile(file));
        } catch (IOException | RuntimeException e) {
            lock.unlock();
            throw e;
        }
    }

    private static FileChannel lockedFile(Path file) throws IOException {
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        try {
            FileLock lock = channel.tryLock();
            for (int i = 0; lock == null && i < TRIES; i++) {
                TimeUnit.MILLISECONDS.sleep(MILLIS_BETWEEN);
                lock = channel.tryLock();
            }
            if (lock != null) {
                return channel;
            }
        } catch (InterruptedException e) {
            channel.close();
            throw new Busy();
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
        channel.close();
        throw new Busy();
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            inThisProgram.unlock();
        }
    }

    /** Another writer holds the lock. */
    static final class Busy extends IOException {
        private static final long serialVersionUID = 1L;

        Busy() {
            super("another program is writing");
        }
    }
}
