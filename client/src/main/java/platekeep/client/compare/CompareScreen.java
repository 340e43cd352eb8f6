package platekeep.client.compare;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** The comparison as a screen of the window. */
public final class CompareScreen implements Screen {
    private final ComparePanel panel = new ComparePanel();
    private final ComparePresenter presenter;

    public CompareScreen(Workroom room) {
        this.presenter = new ComparePresenter(room, panel);
        panel.presenter(presenter);
    }

    @Override
    public String word() {
        return "Compare";
    }

    @Override
    public Icon icon() {
        return Sign.COMPARE.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Compare;
    }

    @Override
    public void show(Place place) {
        presenter.compare((Place.Compare) place);
    }

    @Override
    public void entered() {
        panel.toChanges();
    }

    @Override
    public List<JMenu> menus() {
        JMenu menu = new JMenu("Changes");
        menu.setName("menu-changes");
        menu.setMnemonic('C');
        menu.add(Widgets.item("menu-next-change", "Next change", "F8", presenter::next));
        menu.add(Widgets.item("menu-previous-change", "Change before", "shift F8", presenter::previous));
        return List.of(menu);
    }
}
