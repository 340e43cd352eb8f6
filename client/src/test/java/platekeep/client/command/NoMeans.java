package platekeep.client.command;

import java.nio.file.Path;
import platekeep.client.command.desk.Carrier;
import platekeep.client.command.desk.Means;
import platekeep.client.command.desk.Samples;
import platekeep.client.command.desk.Scans;
import platekeep.client.command.desk.Screen;
import platekeep.client.command.desk.SetUp;
import platekeep.client.library.Libraries;

/** Means that must not be asked for: a command on plate files loads neither library nor window. */
class NoMeans implements Means {

    @Override
    public Libraries libraries() {
        throw new IllegalStateException("a command on plate files asked for libraries");
    }

    @Override
    public SetUp setUp() {
        throw new AssertionError("asked for the set-up");
    }

    @Override
    public Samples samples() {
        throw new AssertionError("asked for the samples");
    }

    @Override
    public Scans scans() {
        throw new AssertionError("asked for scans");
    }

    @Override
    public Carrier carrier() {
        throw new AssertionError("asked for what carries plates");
    }

    @Override
    public Screen screen() {
        throw new AssertionError("asked for the window");
    }

    @Override
    public Path dataFolder() {
        throw new AssertionError("asked for the data folder");
    }
}
