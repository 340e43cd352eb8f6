package platekeep.client.command;

import java.nio.file.Path;
import java.time.Clock;
import platekeep.client.Collecting;
import platekeep.client.cache.Cache;
import platekeep.client.command.desk.Carrier;
import platekeep.client.command.desk.Scans;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Libraries;

/** Means with real libraries, and nothing kept outside the test's own folder. */
public class RealMeans extends NoMeans {
    private final Path root;

    /** @param root the test's folder */
    public RealMeans(Path root) {
        this.root = root;
    }

    @Override
    public Libraries libraries() {
        return new GitLibraries(Clock.systemUTC(), new Cache(root.resolve("cache")), Runnable::run);
    }

    @Override
    public Scans scans() {
        return new Collecting(root.resolve("data"));
    }

    @Override
    public Carrier carrier() {
        return new Collecting(root.resolve("data"));
    }
}
