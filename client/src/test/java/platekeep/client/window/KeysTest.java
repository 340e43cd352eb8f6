package platekeep.client.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JMenuBar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.compare.CompareScreen;
import platekeep.client.draft.Drafts;
import platekeep.client.gallery.GalleryScreen;
import platekeep.client.join.JoinScreen;
import platekeep.client.look.LookScreen;
import platekeep.client.paper.PaperScreen;
import platekeep.client.partner.PartnerScreen;
import platekeep.client.plate.PlateScreen;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.room.Screen;
import platekeep.client.room.TestRoom;
import platekeep.client.room.Workroom;
import platekeep.client.series.SeriesDrafts;
import platekeep.client.series.SeriesScreen;
import platekeep.client.ui.Thumbnails;

class KeysTest {
    /** Those that the window has on every screen. */
    private static final List<String> EVERYWHERE = List.of(
            "Ctrl+Alt+N",
            "Ctrl+Shift+O",
            "Ctrl+Alt+C",
            "Ctrl+Q",
            "F1",
            "Alt+Left",
            "Ctrl+1",
            "Ctrl+2",
            "Ctrl+3",
            "Ctrl+4",
            "Ctrl+5",
            "Ctrl+6",
            "Ctrl+7",
            "Ctrl+8");

    @TempDir
    private Path folder;

    private static List<Keys.Line> lines(Screen screen) {
        JMenuBar bar = new JMenuBar();
        screen.menus().forEach(bar::add);
        return Keys.of(bar);
    }

    private List<Screen> screens() {
        Workroom room = new TestRoom(folder).room;
        Drafts drafts = new Drafts(folder.resolve("drafts"));
        Drafts typed = new Drafts(folder.resolve("typed"));
        Thumbnails thumbnails = new Thumbnails(1 << 20);
        List<Screen> screens = new ArrayList<>(List.of(
                new GalleryScreen(room, drafts, typed, thumbnails),
                new PlateScreen(room, drafts, typed, new Motifs(folder.resolve("motifs")), thumbnails),
                new CompareScreen(room),
                new JoinScreen(room, drafts, new Drafts(folder.resolve("joins"))),
                new PartnerScreen(room),
                new PaperScreen(room, typed, thumbnails),
                new LookScreen(room, thumbnails)));
        if (!GraphicsEnvironment.isHeadless()) {
            // plates are dragged on it, which needs a display
            screens.add(new SeriesScreen(room, new SeriesDrafts(folder.resolve("series")), thumbnails));
        }
        return screens;
    }

    @Test
    void noKeyDoesTwoThingsOnOneScreen() {
        for (Screen screen : screens()) {
            List<String> keys = new ArrayList<>(EVERYWHERE);
            lines(screen).stream()
                    .map(Keys.Line::key)
                    .filter(key -> !key.isEmpty())
                    .forEach(keys::add);
            assertThat(keys).as(screen.word()).doesNotHaveDuplicates();
        }
    }

    @Test
    void theListSaysMenuWordAndKey() {
        List<Keys.Line> gallery = lines(screens().get(0));
        assertThat(gallery)
                .contains(
                        new Keys.Line("Plates", "Find", "Ctrl+F"),
                        new Keys.Line("Plates", "Near doubles", "Ctrl+Alt+D"),
                        new Keys.Line("Plates › Sort by", "Title", ""));
    }
}
