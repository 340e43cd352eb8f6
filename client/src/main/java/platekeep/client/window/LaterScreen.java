package platekeep.client.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;

/**
 * A screen that is made when it first comes to the front: making all of them before the window opens would keep her
 * waiting longer than everything else together.
 */
public final class LaterScreen implements Screen {
    private static final int SIGN = 24;

    private final Workroom room;
    private final String word;
    private final Sign sign;
    private final Set<Class<? extends Place>> places;
    private final Supplier<Screen> making;
    private Optional<Screen> made = Optional.empty();

    /**
     * @param word the screen's own
     * @param sign the screen's own
     * @param places those that the screen takes
     */
    public LaterScreen(
            Workroom room, String word, Sign sign, Set<Class<? extends Place>> places, Supplier<Screen> making) {
        this.room = room;
        this.word = word;
        this.sign = sign;
        this.places = Set.copyOf(places);
        this.making = making;
    }

    /** The screen itself, made if it was not made yet. On the event thread. */
    public Screen made() {
        if (made.isEmpty()) {
            made = Optional.of(room.joined(making));
        }
        return made.get();
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public Icon icon() {
        return sign.icon(SIGN);
    }

    @Override
    public JComponent panel() {
        return made().panel();
    }

    @Override
    public boolean takes(Place place) {
        return places.contains(place.getClass());
    }

    @Override
    public void show(Place place) {
        made().show(place);
    }

    @Override
    public void entered() {
        made().entered();
    }

    @Override
    public List<JMenu> menus() {
        return made().menus();
    }

    @Override
    public void closing() {
        made.ifPresent(Screen::closing);
    }
}
