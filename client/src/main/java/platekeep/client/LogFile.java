package platekeep.client;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/**
 * Sends everything that is logged to a file in the user's state folder, and nothing to the terminal. The file is opened
 * with the first record, so that a command which has nothing to log does not pay for it. Where it cannot be opened the
 * records are lost: a log must never stop the work.
 */
public final class LogFile extends Handler {
    private static final int MOST_BYTES = 1 << 20;
    private static final int FILES = 3;

    private final Path folder;
    private Handler file;

    private LogFile(Path folder) {
        this.folder = folder;
    }

    /** Takes the place of what the platform would set up, at the moment when something is logged for the first time. */
    static void install() {
        System.setProperty("java.util.logging.config.class", SetUp.class.getName());
    }

    /** Made by the platform's log manager as its way of being set up. */
    public static final class SetUp {
        public SetUp() {
            Logger root = Logger.getLogger("");
            root.setLevel(Level.INFO);
            root.addHandler(new LogFile(Folders.ofUser().state()));
        }
    }

    @Override
    public synchronized void publish(LogRecord entry) {
        if (!isLoggable(entry)) {
            return;
        }
        if (file == null) {
            file = opened();
        }
        file.publish(entry);
    }

    private Handler opened() {
        try {
            Files.createDirectories(folder);
            FileHandler handler = new FileHandler(folder.resolve("log.%g.txt").toString(), MOST_BYTES, FILES, true);
            handler.setEncoding("UTF-8");
            handler.setFormatter(new SimpleFormatter());
            return handler;
        } catch (IOException | SecurityException e) {
            return new Deaf();
        }
    }

    @Override
    public synchronized void flush() {
        if (file != null) {
            file.flush();
        }
    }

    @Override
    public synchronized void close() {
        if (file != null) {
            file.close();
        }
    }

    /** Takes records and keeps none. */
    private static final class Deaf extends Handler {
        @Override
        public void publish(LogRecord entry) {
            // there is nowhere to write it
        }

        @Override
        public void flush() {
            // nothing was kept
        }

        @Override
        public void close() {
            // nothing was opened
        }
    }
}
