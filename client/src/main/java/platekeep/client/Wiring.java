package platekeep.client;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.command.desk.Trouble;
import platekeep.client.compare.CompareScreen;
import platekeep.client.draft.Drafts;
import platekeep.client.gallery.GalleryScreen;
import platekeep.client.join.JoinScreen;
import platekeep.client.library.Libraries;
import platekeep.client.look.LookScreen;
import platekeep.client.paper.PaperScreen;
import platekeep.client.partner.PartnerScreen;
import platekeep.client.plate.PlateScreen;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.series.SeriesDrafts;
import platekeep.client.series.SeriesScreen;
import platekeep.client.settings.Settings;
import platekeep.client.task.BackgroundTasks;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Theme;
import platekeep.client.ui.Thumbnails;
import platekeep.client.window.LaterScreen;
import platekeep.client.window.MainWindow;

/** Puts the window together: everything is made here, once, and handed to those who need it. */
final class Wiring {
    private static final Logger LOG = Logger.getLogger(Wiring.class.getName());
    private static final long PICTURE_BYTES = 48L << 20;

    private final Libraries libraries;
    private final Path dataFolder;

    /**
     * @param libraries makes and opens libraries
     * @param dataFolder where settings and drafts lie
     */
    Wiring(Libraries libraries, Path dataFolder) {
        this.libraries = libraries;
        this.dataFolder = dataFolder;
    }

    /**
     * Opens the window and comes back when it is there.
     *
     * @param folders libraries to open, in addition to those that were open last
     * @param theme the theme; empty: the one that was on last
     * @param closed told when the window is gone
     */
    void openWindow(List<Path> folders, Optional<Theme> theme, Runnable closed) throws Trouble {
        Settings settings = Settings.in(dataFolder.resolve("settings.properties"));
        BackgroundTasks tasks = BackgroundTasks.forWindow(e -> LOG.log(Level.SEVERE, "unexpected", e));
        Workroom room = new Workroom(libraries, tasks, settings);
        List<Screen> screens = screens(room);
        AtomicReference<MainWindow> window = new AtomicReference<>();
        Runnable gone = () -> {
            tasks.close();
            closed.run();
        };
        try {
            // step by step, so that what was read meanwhile is taken in between
            Opening.wait(tasks, () -> window.set(frame(room, screens, theme, folders, gone)));
            Opening.wait(tasks, screens.get(0)::panel);
            Opening.wait(tasks, () -> window.get().open());
        } catch (Trouble trouble) {
            tasks.close();
            throw trouble;
        }
    }

    private static MainWindow frame(
            Workroom room, List<Screen> screens, Optional<Theme> theme, List<Path> folders, Runnable closed) {
        Settings settings = room.settings();
        Set<Path> wanted = new LinkedHashSet<>(folders);
        wanted.addAll(settings.libraries());
        // first, so that they are read while the window is made
        wanted.forEach(folder -> room.open(folder, library -> {}));
        Theme put = theme.or(() -> settings.theme().flatMap(Theme::of)).orElse(Theme.LIGHT);
        settings.theme(put.word());
        put.putOn();
        MainWindow window = new MainWindow(room, screens, put, closed);
        room.frontIs(window);
        Thread.setDefaultUncaughtExceptionHandler(new Mishaps(
                () -> room.tasks().onEventThread(() -> window.trouble(Workroom.OUR_BUG)), System::nanoTime));
        return window;
    }

    /** The screens in the order of the rail. */
    List<Screen> screens(Workroom room) {
        Drafts drafts = new Drafts(dataFolder.resolve("drafts"));
        Drafts typed = new Drafts(dataFolder.resolve("paper"));
        Thumbnails thumbnails = new Thumbnails(PICTURE_BYTES);
        return List.of(
                new LaterScreen(
                        room,
                        "Gallery",
                        Sign.GALLERY,
                        Set.of(Place.Gallery.class),
                        () -> new GalleryScreen(room, drafts, typed, thumbnails)),
                new LaterScreen(
                        room,
                        "Plate",
                        Sign.PLATE,
                        Set.of(Place.OnePlate.class, Place.InPlate.class),
                        () -> new PlateScreen(
                                room, drafts, typed, new Motifs(dataFolder.resolve("motifs")), thumbnails)),
                new LaterScreen(
                        room, "Compare", Sign.COMPARE, Set.of(Place.Compare.class), () -> new CompareScreen(room)),
                new LaterScreen(
                        room,
                        "Join",
                        Sign.JOIN,
                        Set.of(Place.Join.class),
                        () -> new JoinScreen(room, drafts, new Drafts(dataFolder.resolve("joins")))),
                new LaterScreen(
                        room, "Partner", Sign.PARTNER, Set.of(Place.Partner.class), () -> new PartnerScreen(room)),
                new LaterScreen(
                        room,
                        "Paper",
                        Sign.PAPER,
                        Set.of(Place.Paper.class),
                        () -> new PaperScreen(room, typed, thumbnails)),
                new LaterScreen(
                        room, "Alike", Sign.ALIKE, Set.of(Place.Search.class), () -> new LookScreen(room, thumbnails)),
                new LaterScreen(
                        room,
                        "Series",
                        Sign.SERIES,
                        Set.of(Place.OneSeries.class, Place.InSeries.class),
                        () -> new SeriesScreen(room, new SeriesDrafts(dataFolder.resolve("series")), thumbnails)));
    }
}
