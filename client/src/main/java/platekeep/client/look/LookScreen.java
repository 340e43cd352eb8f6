package platekeep.client.look;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The search by look as a screen of the window. */
public final class LookScreen implements Screen {
    private final LookPanel panel;
    private final LookPresenter presenter;

    public LookScreen(Workroom room, Thumbnails thumbnails) {
        this.panel = new LookPanel(room.tasks(), thumbnails);
        this.presenter = new LookPresenter(room, panel);
        panel.presenter(presenter);
        presenter.begin();
    }

    @Override
    public String word() {
        return "Alike";
    }

    @Override
    public Icon icon() {
        return Sign.ALIKE.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Search;
    }

    @Override
    public void show(Place place) {
        presenter.search(((Place.Search) place).sought());
    }

    @Override
    public void entered() {
        panel.enter();
    }

    @Override
    public List<JMenu> menus() {
        JMenu menu = new JMenu("Alike");
        menu.setName("menu-alike");
        menu.setMnemonic('A');
        for (LookState.Way way : LookState.Way.values()) {
            menu.add(Widgets.item(
                    "menu-alike-" + way.name().toLowerCase(java.util.Locale.ROOT),
                    way.word(),
                    "alt " + (way.ordinal() + 1),
                    () -> presenter.take(way)));
        }
        menu.addSeparator();
        menu.add(Widgets.item("menu-alike-open", "Open", "ctrl O", () -> panel.act(DetailPanel.Act.OPEN)));
        menu.add(
                Widgets.item("menu-alike-compare", "Side by side", "ctrl D", () -> panel.act(DetailPanel.Act.COMPARE)));
        menu.add(Widgets.item("menu-alike-on", "Like this one", "ctrl shift Y", () -> panel.act(DetailPanel.Act.LIKE)));
        menu.add(Widgets.item(
                "menu-alike-back", "Bring back…", "ctrl shift B", () -> panel.act(DetailPanel.Act.BRING_BACK)));
        menu.addSeparator();
        menu.add(Widgets.item("menu-alike-stop", "Stop searching", "ESCAPE", presenter::stop));
        return List.of(menu);
    }
}
