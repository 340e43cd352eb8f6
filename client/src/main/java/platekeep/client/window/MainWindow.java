package platekeep.client.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JFrame;
import javax.swing.JPanel;
import platekeep.client.library.Hand;
import platekeep.client.room.Front;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Theme;
import platekeep.client.ui.Thumbnails;

/** The one window. Made and used on the event thread. */
public final class MainWindow implements Front, RoomListener {
    private static final String BOUNDS = "window.bounds";
    private static final Dimension SMALLEST = new Dimension(820, 560);
    private static final int MOST_STEPS_BACK = 50;

    private final Workroom room;
    private final List<Screen> screens;
    private final JFrame frame = new JFrame("Platekeep");
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final StatusLine status = new StatusLine();
    private final Rail rail;
    private final WindowMenu menu;
    private final Deque<Place> been = new ArrayDeque<>();
    private final Set<Screen> shown = new HashSet<>();
    private final Runnable closed;
    private Theme theme;
    private int inFront = -1;

    /**
     * @param screens in the order of the rail; the first is in front at first
     * @param closed told when the window is gone
     */
    public MainWindow(Workroom room, List<Screen> screens, Theme theme, Runnable closed) {
        this.room = room;
        this.screens = List.copyOf(screens);
        this.theme = theme;
        this.closed = closed;
        this.rail = new Rail(this.screens, this::bringToFront);
        this.menu = new WindowMenu(room, this);
        frame.setName("platekeep");
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.setMinimumSize(SMALLEST);
        frame.add(rail, BorderLayout.WEST);
        frame.add(middle, BorderLayout.CENTER);
        frame.add(status, BorderLayout.SOUTH);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                close();
            }
        });
        FocusKeeper.keepIn(frame);
        // as a rule it is drawn before the window is open
        room.work(progress -> List.of(icon(64), icon(32)), frame::setIconImages);
        room.listen(this);
    }

    /** A flowerette on cloth: six cables over four pleats. */
    private static BufferedImage icon(int size) {
        return Thumbnails.draw(Flowerette.PLATE, new Dimension(size, size));
    }

    /** Opens the window. */
    public void open() {
        frame.setBounds(bounds());
        bringToFront(screens.get(0));
        frame.setVisible(true);
        screens.get(0).entered();
    }

    private Rectangle bounds() {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        Rectangle wanted = room.settings()
                .get(BOUNDS)
                .filter(text -> text.matches("-?\\d{1,5},-?\\d{1,5},\\d{1,5},\\d{1,5}"))
                .map(text -> text.split(","))
                .map(n -> new Rectangle(number(n[0]), number(n[1]), number(n[2]), number(n[3])))
                .orElse(new Rectangle(screen.x, screen.y, 1440, 900));
        Rectangle seen = wanted.intersection(screen);
        boolean fits = seen.width >= SMALLEST.width && seen.height >= SMALLEST.height;
        return fits ? seen : screen;
    }

    private static int number(String text) {
        return Integer.parseInt(text);
    }

    /** Closes the window when every screen has made safe what it has. */
    void close() {
        screens.forEach(Screen::closing);
        Rectangle at = frame.getBounds();
        room.settings().put(BOUNDS, at.x + "," + at.y + "," + at.width + "," + at.height);
        room.settings().write();
        frame.dispose();
        closed.run();
    }

    List<Screen> screens() {
        return screens;
    }

    JFrame frame() {
        return frame;
    }

    void bringToFront(Screen screen) {
        int index = screens.indexOf(screen);
        if (index != inFront) {
            status.screenChanged();
            inFront = index;
            if (shown.add(screen)) {
                middle.add(screen.panel(), screen.word());
            }
            cards.show(middle, screen.word());
            rail.inFront(index);
            frame.setJMenuBar(menu.bar(screen));
            frame.revalidate();
        }
        screen.entered();
    }

    /** Puts the other theme on, and remembers it. */
    void changeTheme(Theme other) {
        theme = other;
        theme.putOn();
        room.settings().theme(theme.word());
        room.remember();
        frame.setJMenuBar(menu.bar(screens.get(inFront)));
        frame.repaint();
    }

    Theme theme() {
        return theme;
    }

    @Override
    public void show(Place place) {
        for (Screen screen : screens) {
            if (screen.takes(place)) {
                been.push(place);
                if (been.size() > MOST_STEPS_BACK) {
                    been.removeLast();
                }
                screen.show(place);
                bringToFront(screen);
                return;
            }
        }
        trouble("This window has no screen for that. Nothing was changed.");
    }

    /** Goes to where she was before. */
    void back() {
        if (been.size() > 1) {
            been.pop();
            show(been.pop());
        } else {
            bringToFront(screens.get(0));
        }
    }

    @Override
    public void librariesChanged() {
        been.clear();
        menu.librariesChanged();
        frame.setTitle(
                room.open().isEmpty()
                        ? "Platekeep"
                        : String.join(
                                        " · ",
                                        room.open().stream().map(room::nameOf).toList()) + " · Platekeep");
    }

    @Override
    public void say(String sentence) {
        status.say(sentence);
    }

    @Override
    public void trouble(String sentences) {
        status.trouble(sentences);
    }

    @Override
    public void busy(String what) {
        status.busy(what);
    }

    @Override
    public Optional<Hand> askHand(String library, Hand before) {
        return LibraryDialogs.hand(frame.getRootPane(), library, before);
    }
}
