package platekeep.client.settings;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * What the client remembers between two starts, kept in a small text file. Reading a file that is absent or damaged
 * gives settings with nothing in them; failing to write one is logged and stops nothing. Safe for many threads.
 */
public final class Settings {
    private static final Logger LOG = Logger.getLogger(Settings.class.getName());
    private static final String THEME = "theme";
    private static final String LIBRARY = "library.";
    private static final String HAND_NAME = "hand.name";
    private static final String HAND_ADDRESS = "hand.address";

    private final Path file;
    private final Properties values = new Properties();

    private Settings(Path file) {
        this.file = file;
    }

    /** What stands in a file, which need not be there. */
    public static Settings in(Path file) {
        Settings settings = new Settings(file);
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                settings.values.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                LOG.log(Level.WARNING, "settings could not be read", e);
            }
        }
        return settings;
    }

    /** A value by its key. */
    public synchronized Optional<String> get(String key) {
        return Optional.ofNullable(values.getProperty(key));
    }

    /** A whole number by its key. */
    public Optional<Integer> number(String key) {
        return get(key).filter(text -> text.matches("-?\\d{1,9}")).map(Integer::valueOf);
    }

    /** Remembers a value; {@link #write} puts it on disk. */
    public synchronized void put(String key, String value) {
        values.setProperty(key, value);
    }

    /** Forgets all values whose keys begin so. */
    public synchronized void forget(String beginning) {
        values.keySet().removeIf(key -> key.toString().startsWith(beginning));
    }

    /** The word of the theme. */
    public Optional<String> theme() {
        return get(THEME);
    }

    public void theme(String word) {
        put(THEME, word);
    }

    /** The folders of the libraries that were open last. */
    public synchronized List<Path> libraries() {
        List<Path> folders = new ArrayList<>();
        for (int i = 1; values.containsKey(LIBRARY + i); i++) {
            folders.add(Path.of(values.getProperty(LIBRARY + i)));
        }
        return folders;
    }

    public synchronized void libraries(List<Path> folders) {
        values.keySet().removeIf(key -> key.toString().startsWith(LIBRARY));
        for (int i = 0; i < folders.size(); i++) {
            put(LIBRARY + (i + 1), folders.get(i).toString());
        }
    }

    /** The name that she gave last when she was asked who she is. */
    public Optional<String> handName() {
        return get(HAND_NAME);
    }

    /** The address that she gave last. */
    public Optional<String> handAddress() {
        return get(HAND_ADDRESS);
    }

    public void hand(String name, String address) {
        put(HAND_NAME, name);
        put(HAND_ADDRESS, address);
    }

    /** Puts everything on disk: the whole file or nothing of it. May take time. */
    public synchronized void write() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path beside = file.resolveSibling(file.getFileName() + ".new");
            try (Writer writer = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
                values.store(writer, "Platekeep");
            }
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "settings could not be written", e);
        }
    }
}
