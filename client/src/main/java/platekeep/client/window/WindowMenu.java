package platekeep.client.window;

import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JRadioButtonMenuItem;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Theme;
import platekeep.client.ui.Widgets;

/** The menu: libraries, then what the screen in front offers, then where to go and how it looks. */
final class WindowMenu {
    private final Workroom room;
    private final MainWindow window;
    private JMenu close = new JMenu();

    WindowMenu(Workroom room, MainWindow window) {
        this.room = room;
        this.window = window;
    }

    JMenuBar bar(Screen inFront) {
        JMenuBar bar = new JMenuBar();
        bar.setName("menu");
        bar.add(libraries());
        inFront.menus().forEach(bar::add);
        bar.add(go());
        bar.add(look());
        return bar;
    }

    private JMenu libraries() {
        JMenu menu = menu("menu-library", "Library", 'L');
        menu.add(Widgets.item("menu-new-library", "New library…", "ctrl alt N", this::newLibrary));
        menu.add(Widgets.item("menu-open-library", "Open a library…", "ctrl shift O", this::openLibrary));
        menu.add(Widgets.item("menu-copy-library", "Copy from a partner…", "ctrl alt C", this::firstCopy));
        close = menu("menu-close-library", "Close", 'C');
        librariesChanged();
        menu.add(close);
        menu.addSeparator();
        menu.add(Widgets.item("menu-quit", "Quit", "ctrl Q", window::close));
        return menu;
    }

    /** Other libraries are open than those that the bar made last names. */
    void librariesChanged() {
        close.removeAll();
        for (Library library : room.open()) {
            close.add(Widgets.item(
                    "menu-close-" + room.nameOf(library), room.nameOf(library), "", () -> room.close(library)));
        }
        close.setEnabled(!room.open().isEmpty());
    }

    private JMenu go() {
        JMenu menu = menu("menu-go", "Go", 'G');
        List<Screen> screens = window.screens();
        for (int i = 0; i < screens.size(); i++) {
            Screen screen = screens.get(i);
            menu.add(Widgets.item("menu-go-" + i, screen.word(), "ctrl " + (i + 1), () -> window.bringToFront(screen)));
        }
        menu.addSeparator();
        menu.add(Widgets.item("menu-back", "Back", "alt LEFT", window::back));
        return menu;
    }

    private JMenu look() {
        JMenu menu = menu("menu-look", "Look", 'K');
        menu.add(Widgets.item(
                "menu-keys",
                "Keys of this screen…",
                "F1",
                () -> Keys.show(window.frame().getRootPane(), window.frame().getJMenuBar())));
        menu.addSeparator();
        ButtonGroup group = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            JRadioButtonMenuItem item =
                    new JRadioButtonMenuItem(theme == Theme.LIGHT ? "Light" : "Dark", theme == window.theme());
            item.setName("menu-theme-" + theme.word());
            item.addActionListener(e -> window.changeTheme(theme));
            group.add(item);
            menu.add(item);
        }
        return menu;
    }

    private void newLibrary() {
        LibraryDialogs.newLibrary(window.frame().getRootPane(), before())
                .ifPresent(asked -> room.create(asked.folder(), asked.name(), asked.hand(), this::welcome));
    }

    private void openLibrary() {
        LibraryDialogs.openLibrary(window.frame().getRootPane()).ifPresent(folder -> room.open(folder, this::welcome));
    }

    private void firstCopy() {
        LibraryDialogs.firstCopy(window.frame().getRootPane(), before())
                .ifPresent(asked -> room.copyFrom(asked.sharedCopy(), asked.folder(), asked.hand(), this::welcome));
    }

    private void welcome(Library library) {
        window.say("\"" + room.nameOf(library) + "\" is open.");
        window.show(new Place.Gallery());
    }

    private Hand before() {
        return new Hand(
                room.settings().handName().orElse(""),
                room.settings().handAddress().orElse(""));
    }

    private static JMenu menu(String name, String text, char mnemonic) {
        JMenu menu = new JMenu(text);
        menu.setName(name);
        menu.setMnemonic(mnemonic);
        return menu;
    }
}
