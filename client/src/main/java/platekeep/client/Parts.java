package platekeep.client;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import platekeep.client.cache.Cache;
import platekeep.client.command.desk.Carrier;
import platekeep.client.command.desk.Means;
import platekeep.client.command.desk.Samples;
import platekeep.client.command.desk.Scans;
import platekeep.client.command.desk.Screen;
import platekeep.client.command.desk.SetUp;
import platekeep.client.command.desk.Trouble;
import platekeep.client.git.GitLibraries;
import platekeep.client.git.GitSetup;
import platekeep.client.library.Libraries;
import platekeep.client.library.LibraryException;
import platekeep.client.sample.SampleLibrary;
import platekeep.client.task.Helpers;
import platekeep.client.ui.Theme;

/** The parts of the program as commands ask for them, each made when it is first wanted. */
final class Parts implements Means {
    private final Folders folders;
    private boolean windowIsOpen;

    Parts(Folders folders) {
        this.folders = folders;
    }

    /** Whether a window was opened, so that the program goes on after its command. */
    boolean windowIsOpen() {
        return windowIsOpen;
    }

    @Override
    public Libraries libraries() {
        return new GitLibraries(Clock.systemDefaultZone(), Cache.ofUser(), new Helpers());
    }

    @Override
    public SetUp setUp() {
        return new NativeSetUp();
    }

    @Override
    public Samples samples() {
        return parent -> {
            SampleLibrary sample = SampleLibrary.in(parent);
            return (sample.isThere() ? sample : SampleLibrary.make(parent, libraries())).workshop();
        };
    }

    @Override
    public Scans scans() {
        return new Collecting(folders.data());
    }

    @Override
    public Carrier carrier() {
        return new Collecting(folders.data());
    }

    @Override
    public Screen screen() {
        return new Display();
    }

    @Override
    public Path dataFolder() {
        return folders.data();
    }

    /** Native Git calls this very program. */
    private static final class NativeSetUp implements SetUp {
        @Override
        public void on(Path library) throws LibraryException {
            new GitSetup().on(library, command());
        }

        @Override
        public void off(Path library) throws LibraryException {
            new GitSetup().off(library);
        }

        private static String command() throws LibraryException {
            try {
                Path jar = Path.of(Parts.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI());
                Path java = Path.of(System.getProperty("java.home"), "bin", "java");
                return quoted(java) + " -jar " + quoted(jar);
            } catch (URISyntaxException e) {
                throw new LibraryException("The program cannot tell where it lies; start it from its jar file.", e);
            }
        }

        private static String quoted(Path path) {
            return "'" + path.toString().replace("'", "'\\''") + "'";
        }
    }

    private final class Display implements Screen {
        @Override
        public boolean isThere() {
            if (GraphicsEnvironment.isHeadless()) {
                return false;
            }
            try {
                return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
            } catch (HeadlessException | AWTError | LinkageError e) {
                // a display is named but cannot be reached, or this Java has no part that could
                return false;
            }
        }

        @Override
        public void open(List<Path> libraries, Optional<String> theme) throws Trouble {
            Wiring wiring = new Wiring(libraries(), folders.data());
            wiring.openWindow(libraries, theme.flatMap(Theme::of), () -> System.exit(0));
            windowIsOpen = true;
        }
    }
}
