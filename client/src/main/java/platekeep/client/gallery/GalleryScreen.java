package platekeep.client.gallery;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.carry.CarryItems;
import platekeep.client.draft.Drafts;
import platekeep.client.paper.PaperShelf;
import platekeep.client.paper.bring.BringItems;
import platekeep.client.plate.begin.BeginItems;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The gallery as a screen of the window. */
public final class GalleryScreen implements Screen {
    private static final String SIZE = "gallery.size";
    private static final int FIRST_SIZE = 224;

    private final GalleryPanel panel;
    private final GalleryPresenter presenter;
    private final BeginItems begin;
    private final BringItems bring;
    private final CarryItems carry;
    private final Workroom room;

    /**
     * @param drafts where what is drawn is kept
     * @param typed where facts that are typed are kept
     */
    public GalleryScreen(Workroom room, Drafts drafts, Drafts typed, Thumbnails thumbnails) {
        this.room = room;
        int size = room.settings().number(SIZE).orElse(FIRST_SIZE);
        PaperShelf shelf = new PaperShelf(room, () -> panel().repaint());
        this.panel = new GalleryPanel(room.tasks(), thumbnails, new CardPapers(room, shelf), size, width -> {
            room.settings().put(SIZE, Integer.toString(width));
            room.remember();
        });
        this.presenter = new GalleryPresenter(room, drafts, panel);
        this.begin = new BeginItems(room, drafts, panel);
        this.bring = new BringItems(room, panel);
        this.carry = new CarryItems(room, List.of(drafts, typed), panel, this::chosen);
        panel.presenter(presenter);
    }

    private List<Place.OnePlate> chosen() {
        return presenter.plates(panel.chosenCards());
    }

    private void fillIn() {
        List<Place.OnePlate> plates = chosen();
        if (!plates.isEmpty()) {
            room.go(new Place.Paper(plates));
        }
    }

    @Override
    public String word() {
        return "Gallery";
    }

    @Override
    public Icon icon() {
        return Sign.GALLERY.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Gallery;
    }

    @Override
    public void show(Place place) {
        // there is one gallery
    }

    @Override
    public void entered() {
        presenter.entered();
        panel.toCards();
    }

    @Override
    public List<JMenu> menus() {
        JMenu menu = new JMenu("Plates");
        menu.setName("menu-plates");
        menu.setMnemonic('P');
        menu.add(Widgets.item("menu-find", "Find", "ctrl F", panel::toSearch));
        menu.add(Widgets.item("menu-show-all", "Show all", "ctrl shift F", presenter::clear));
        menu.addSeparator();
        menu.add(Widgets.item("menu-open-plate", "Open", "ctrl O", panel::openChosen));
        menu.add(Widgets.item("menu-new-plate", "New plate…", "ctrl N", presenter::begin));
        menu.add(Widgets.item("menu-new-from", "New plate from this one", "ctrl shift N", panel::beginFromChosen));
        begin.addTo(menu);
        bring.addTo(menu);
        menu.add(Widgets.item("menu-compare-two", "Compare the two chosen", "ctrl D", panel::compareChosen));
        menu.addSeparator();
        menu.add(Widgets.item("menu-fill-in", "Facts, one after the other", "ctrl shift E", this::fillIn));
        carry.addTo(menu);
        menu.addSeparator();
        menu.add(Widgets.item("menu-like-plate", "Plates like this one", "ctrl shift Y", panel::likeChosen));
        menu.add(Widgets.item("menu-doubles", "Near doubles", "", () -> presenter.search(new Sought.Doubles())));
        menu.add(Widgets.item(
                "menu-once", "Find in old versions…", "ctrl alt F", () -> presenter.search(new Sought.OnceSaid(""))));
        menu.addSeparator();
        menu.add(Widgets.item("menu-put-away", "Put away…", "DELETE", panel::putChosenAway));
        menu.add(Widgets.item("menu-bring-back", "Bring back a plate…", "ctrl shift B", presenter::bringBack));
        return List.of(menu);
    }
}
