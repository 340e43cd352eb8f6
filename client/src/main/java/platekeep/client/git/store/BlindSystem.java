package platekeep.client.git.store;

import java.time.Duration;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.ConfigConstants;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * The machine as JGit may see it: without the user's and the system's Git settings and without Git's environment
 * variables, so that a library behaves the same for everybody and nothing set up for other work (hooks, signing,
 * filters, other names) reaches into it. In the place of the user's settings stand the few that make
 * saving durable and keep JGit from tidying a folder up behind the program's back, in a thread of its own.
 */
public final class BlindSystem extends SystemReader {
    private final SystemReader real;

    private BlindSystem(SystemReader real) {
        this.real = real;
        setPlatformChecker();
    }

    /** Blinds JGit in this process. Asking again changes nothing. */
    public static synchronized void install() {
        if (!(SystemReader.getInstance() instanceof BlindSystem)) {
            SystemReader.setInstance(new BlindSystem(SystemReader.getInstance()));
        }
    }

    @Override
    public String getHostname() {
        return "localhost";
    }

    @Override
    public String getenv(String variable) {
        return variable.startsWith("GIT_") || variable.equals("XDG_CONFIG_HOME") ? null : real.getenv(variable);
    }

    @Override
    public String getProperty(String key) {
        return real.getProperty(key);
    }

    @Override
    public FileBasedConfig openUserConfig(Config parent, FS fs) {
        FileBasedConfig config = new InMemory(parent, fs);
        config.setBoolean("core", null, "fsyncObjectFiles", true);
        config.setBoolean("core", null, "fsyncRefFiles", true);
        config.setBoolean("receive", null, "autogc", false);
        config.setInt("gc", null, "auto", 0);
        config.setInt("gc", null, "autoPackLimit", 0);
        config.setBoolean("gc", null, "autoDetach", false);
        config.setString("init", null, "defaultBranch", "main");
        return config;
    }

    @Override
    public FileBasedConfig openSystemConfig(Config parent, FS fs) {
        return new InMemory(parent, fs);
    }

    @Override
    public FileBasedConfig openJGitConfig(Config parent, FS fs) {
        return new InMemory(parent, fs);
    }

    @Override
    @Deprecated
    public long getCurrentTime() {
        return real.getCurrentTime();
    }

    @Override
    @Deprecated
    public int getTimezone(long when) {
        return TimeZone.getDefault().getOffset(when) / 60_000;
    }

    /**
     * Settings that no file stands behind. They say of every disk that its times are as coarse as the coarsest there is
     * (two seconds, FAT). JGit would measure it, which takes seconds and writes files into the folder; too coarse only
     * means to look once more at a file that is younger than that.
     */
    private static final class InMemory extends FileBasedConfig {
        private static final Duration COARSEST = Duration.ofSeconds(2);

        InMemory(Config parent, FS fs) {
            super(parent, null, fs);
        }

        @Override
        public void load() {
            // nothing lies on disk
        }

        @Override
        public void save() {
            // nothing lies on disk
        }

        @Override
        public long getTimeUnit(String section, String subsection, String name, long otherwise, TimeUnit unit) {
            return section.equals(ConfigConstants.CONFIG_FILESYSTEM_SECTION)
                    ? unit.convert(COARSEST)
                    : super.getTimeUnit(section, subsection, name, otherwise, unit);
        }

        @Override
        public boolean isOutdated() {
            return false;
        }
    }
}
