package platekeep.client;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.series.SeriesDrafts;
import platekeep.client.series.SeriesScreen;
import platekeep.client.settings.Settings;
import platekeep.client.task.BackgroundTasks;
import platekeep.client.ui.Theme;
import platekeep.client.ui.Thumbnails;
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
        try {
            Opening.wait(tasks, () -> open(settings, tasks, folders, theme, closed));
        } catch (Trouble trouble) {
            tasks.close();
            throw trouble;
        }
    }

    private void open(
            Settings settings, BackgroundTasks tasks, List<Path> folders, Optional<Theme> theme, Runnable closed) {
        Theme put = theme.or(() -> settings.theme().flatMap(Theme::of)).orElse(Theme.LIGHT);
        settings.theme(put.word());
        put.putOn();
        Workroom room = new Workroom(libraries, tasks, settings);
        MainWindow window = new MainWindow(room, screens(room), put, () -> {
            tasks.close();
            closed.run();
        });
        room.frontIs(window);
        Thread.setDefaultUncaughtExceptionHandler(
                new Mishaps(() -> tasks.onEventThread(() -> window.trouble(Workroom.OUR_BUG)), System::nanoTime));
        Set<Path> wanted = new LinkedHashSet<>(folders);
        wanted.addAll(settings.libraries());
        wanted.forEach(folder -> room.open(folder, library -> {}));
        window.open();
    }

    private List<Screen> screens(Workroom room) {
        Drafts drafts = new Drafts(dataFolder.resolve("drafts"));
        Drafts typed = new Drafts(dataFolder.resolve("paper"));
        Thumbnails thumbnails = new Thumbnails(PICTURE_BYTES);
        return List.of(
                new GalleryScreen(room, drafts, typed, thumbnails),
                new PlateScreen(room, drafts, typed, new Motifs(dataFolder.resolve("motifs")), thumbnails),
                new CompareScreen(room),
                new JoinScreen(room, drafts, new Drafts(dataFolder.resolve("joins"))),
                new PartnerScreen(room),
                new PaperScreen(room, typed, thumbnails),
                new LookScreen(room, thumbnails),
                new SeriesScreen(room, new SeriesDrafts(dataFolder.resolve("series")), thumbnails));
    }
}
