package platekeep.client;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where the program keeps what is the user's own: data by the XDG Base Directory Specification where that is the
 * custom, else where the system has such a place. No folder is made here.
 */
public final class Folders {
    private static final String NAME = "platekeep";

    private final Function<String, Optional<String>> environment;
    private final Path home;
    private final String system;

    /**
     * @param environment a variable of the environment by its name; blank counts as unset
     * @param home the user's home folder
     * @param system the system's name, as {@code os.name} gives it
     */
    Folders(Function<String, Optional<String>> environment, Path home, String system) {
        this.environment = name -> environment.apply(name).filter(text -> !text.isBlank());
        this.home = home;
        this.system = system.toLowerCase(Locale.ROOT);
    }

    /** The folders of the user who runs the program. */
    public static Folders ofUser() {
        return new Folders(
                name -> Optional.ofNullable(System.getenv(name)),
                Path.of(System.getProperty("user.home")),
                System.getProperty("os.name"));
    }

    /** What the user would miss: the sample library, drafts. */
    public Path data() {
        return in("XDG_DATA_HOME", ".local/share");
    }

    /** What the program remembers of its runs: the log. */
    public Path state() {
        return in("XDG_STATE_HOME", ".local/state");
    }

    private Path in(String variable, String below) {
        Optional<Path> named = environment.apply(variable).map(Path::of).filter(Path::isAbsolute);
        if (named.isPresent()) {
            return named.get().resolve(NAME);
        }
        if (system.startsWith("windows")) {
            return environment
                    .apply("LOCALAPPDATA")
                    .map(Path::of)
                    .orElse(home.resolve("AppData").resolve("Local"))
                    .resolve(NAME);
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(NAME);
        }
        return home.resolve(below).resolve(NAME);
    }
}
