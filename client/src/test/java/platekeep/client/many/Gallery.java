package platekeep.client.many;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.beans.PropertyChangeListener;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JScrollPane;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import platekeep.client.cache.Cache;
import platekeep.client.draft.Drafts;
import platekeep.client.gallery.GalleryScreen;
import platekeep.client.git.GitLibraries;
import platekeep.client.room.RecordingFront;
import platekeep.client.room.Workroom;
import platekeep.client.settings.Settings;
import platekeep.client.task.BackgroundTasks;
import platekeep.client.task.Helpers;
import platekeep.client.ui.Theme;
import platekeep.client.ui.Thumbnails;
import platekeep.model.find.Query;
import platekeep.model.find.QueryText;

/**
 * The client's own gallery with the size of a screen, painted into a picture instead of a window: when a part of it asks to
 * be painted, and no more often, as a window does. Painting all the time would take a processor from what is measured.
 */
final class Gallery {
    private static final Dimension SIZE = new Dimension(1360, 860);
    private static final long PICTURE_BYTES = 48L << 20;

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private final BackgroundTasks tasks;
    private final Workroom room;
    private final Thumbnails thumbnails = new Thumbnails(PICTURE_BYTES);
    private final GalleryScreen gallery;
    private final JComponent panel;
    private final BufferedImage screen = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
    private final Asked asked = new Asked();

    /** Hears that something is to be painted, which the platform's own would do nothing about without a window. */
    private static final class Asked extends RepaintManager {
        private boolean isAsked = true;

        @Override
        public void addDirtyRegion(JComponent part, int x, int y, int width, int height) {
            isAsked = true;
        }

        @Override
        public void addInvalidComponent(JComponent part) {
            isAsked = true;
        }
    }

    /**
     * @param scratch where settings, drafts and the index of versions lie
     */
    Gallery(Path scratch) throws Exception {
        tasks = BackgroundTasks.forWindow(bug -> bug.printStackTrace());
        GitLibraries libraries =
                new GitLibraries(Clock.systemDefaultZone(), new Cache(scratch.resolve("cache")), new Helpers());
        room = new Workroom(libraries, tasks, Settings.in(scratch.resolve("settings.properties")));
        room.frontIs(new RecordingFront());
        gallery = onEventThread(() -> {
            Theme.LIGHT.putOn();
            RepaintManager.setCurrentManager(asked);
            GalleryScreen made = new GalleryScreen(
                    room, new Drafts(scratch.resolve("drafts")), new Drafts(scratch.resolve("paper")), thumbnails);
            made.panel().setSize(SIZE);
            return made;
        });
        panel = onEventThread(gallery::panel);
    }

    static <T> T onEventThread(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeLater(task);
        return task.get();
    }

    void open(Path library) throws Exception {
        onEventThread(() -> {
            room.open(library, opened -> {});
            return room;
        });
    }

    Workroom room() {
        return room;
    }

    /** Paints if something has asked for it since the last time. */
    void paintIfAsked() throws Exception {
        if (onEventThread(() -> asked.isAsked)) {
            paint();
        }
    }

    /** Lays out and paints all of it, as the window would; on the event thread. */
    BufferedImage paint() throws Exception {
        return onEventThread(() -> {
            layOut(panel);
            asked.isAsked = false;
            Graphics2D g = screen.createGraphics();
            panel.paint(g);
            g.dispose();
            return screen;
        });
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component part : container.getComponents()) {
            if (part instanceof Container inside) {
                layOut(inside);
            }
        }
    }

    /** How many plates the list shows. */
    int size() throws Exception {
        return onEventThread(() -> list().getModel().getSize());
    }

    /** How many of them are on the screen. */
    int onScreen() throws Exception {
        return onEventThread(() -> {
            JList<?> list = list();
            Rectangle seen = list.getVisibleRect();
            int count = 0;
            for (int i = 0; i < list.getModel().getSize() && i < 200; i++) {
                count += seen.intersects(list.getCellBounds(i, i)) ? 1 : 0;
            }
            return count;
        });
    }

    /** Whether plates are on the screen, all with their pictures, as it was painted last. */
    boolean stands() throws Exception {
        return size() > 0 && thumbnails.size() >= onScreen() && !onEventThread(() -> asked.isAsked);
    }

    /** Whether the gallery says that plates are still being read. */
    boolean isReading() throws Exception {
        return onEventThread(
                () -> ((JLabel) find(panel, "gallery-summary")).getText().startsWith("Reading"));
    }

    /** Scrolls by so many dots and paints; what it took of the event thread's processor time, in milliseconds. */
    double scroll(int dots) throws Exception {
        return onEventThread(() -> {
            long start = CLOCK.getCurrentThreadCpuTime();
            JScrollPane scroll = (JScrollPane) find(panel, "gallery-scroll");
            int most = scroll.getViewport().getView().getHeight()
                    - scroll.getViewport().getHeight();
            var at = scroll.getViewport().getViewPosition();
            scroll.getViewport().setViewPosition(new java.awt.Point(0, Math.min(most, at.y + dots)));
            Graphics2D g = screen.createGraphics();
            scroll.paint(g);
            g.dispose();
            return (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
        });
    }

    void top() throws Exception {
        onEventThread(() -> {
            ((JScrollPane) find(panel, "gallery-scroll")).getViewport().setViewPosition(new java.awt.Point());
            return panel;
        });
    }

    /** Types words; what it takes until the list and all counts beside it are there, in milliseconds. */
    double type(String words) throws Exception {
        JTextComponent search = (JTextComponent) find(panel, "gallery-search");
        return shown(() -> search.setText(words));
    }

    /** Keeps searches under names, as they stand in the settings when the program is started. */
    void keep(List<Query> searches) throws Exception {
        onEventThread(() -> {
            for (int i = 0; i < searches.size(); i++) {
                room.settings().put("search.name." + (i + 1), "Search " + (i + 1));
                room.settings().put("search.query." + (i + 1), QueryText.write(searches.get(i)));
            }
            return searches;
        });
    }

    /** Asks for the n-th kept search, from 1, by its item in the menu; what it takes likewise. */
    double reopen(int number) throws Exception {
        JMenuItem item = onEventThread(() -> gallery.menus().stream()
                .flatMap(menu -> Stream.of(menu.getMenuComponents()))
                .filter(part -> ("menu-search-" + number).equals(part.getName()))
                .map(part -> (JMenuItem) part)
                .findFirst()
                .orElseThrow());
        return shown(item::doClick);
    }

    /** Does something on the event thread and waits until the list is there that comes of it; in milliseconds. */
    private double shown(Runnable deed) throws Exception {
        CompletableFuture<Long> shown = new CompletableFuture<>();
        PropertyChangeListener listens = e -> shown.complete(System.nanoTime());
        long start = onEventThread(() -> {
            list().addPropertyChangeListener("model", listens);
            long now = System.nanoTime();
            deed.run();
            return now;
        });
        long end = shown.get(20, TimeUnit.SECONDS);
        onEventThread(() -> {
            list().removePropertyChangeListener("model", listens);
            return listens;
        });
        return (end - start) / 1e6;
    }

    /** Waits until nothing is done in the background any more. */
    void rest() throws Exception {
        int quiet = 0;
        while (quiet < 20) {
            Thread.sleep(20);
            boolean busy = Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().startsWith("platekeep-work-"))
                    .anyMatch(thread -> thread.getState() != Thread.State.WAITING);
            quiet = busy ? 0 : quiet + 1;
        }
    }

    private JList<?> list() {
        return (JList<?>) find(panel, "gallery-plates");
    }

    private static Component find(Container in, String name) {
        for (Component part : in.getComponents()) {
            if (name.equals(part.getName())) {
                return part;
            }
            Component inside = part instanceof Container container ? find(container, name) : null;
            if (inside != null) {
                return inside;
            }
        }
        return null;
    }

    void close() {
        room.open().forEach(platekeep.client.library.Library::close);
        tasks.close();
    }
}
