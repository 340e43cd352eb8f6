package platekeep.client.plate;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.draft.Drafts;
import platekeep.client.plate.begin.BeginItems;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.plate.work.PlatePresenter;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;

/** The Plate screen of the window. */
public final class PlateScreen implements Screen {
    private final PlatePanel panel;
    private final PlatePresenter presenter;
    private final PlateMenus menus;

    public PlateScreen(Workroom room, Drafts drafts, Motifs motifs, Thumbnails thumbnails) {
        this.panel = new PlatePanel(room.tasks(), thumbnails);
        this.presenter = new PlatePresenter(room, drafts, motifs, panel);
        panel.ears().lead(room, presenter);
        this.menus = new PlateMenus(panel, presenter, new BeginItems(room, drafts, panel));
    }

    @Override
    public String word() {
        return "Plate";
    }

    @Override
    public Icon icon() {
        return Sign.PLATE.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.OnePlate;
    }

    @Override
    public void show(Place place) {
        Place.OnePlate one = (Place.OnePlate) place;
        presenter.open(one.library(), one.plateId());
    }

    @Override
    public void entered() {
        panel.chart().requestFocusInWindow();
    }

    @Override
    public List<JMenu> menus() {
        return menus.all();
    }

    @Override
    public void closing() {
        panel.takeTyped();
        presenter.makeSafe();
    }
}
