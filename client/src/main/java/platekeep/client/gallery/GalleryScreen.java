package platekeep.client.gallery;

import java.util.List;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JPopupMenu;
import platekeep.client.carry.CarryItems;
import platekeep.client.draft.Drafts;
import platekeep.client.gallery.tag.TagDialogs;
import platekeep.client.gallery.tag.TagPresenter;
import platekeep.client.library.Library;
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
    private final GalleryPanel panel;
    private final GalleryPresenter presenter;
    private final BeginItems begin;
    private final BringItems bring;
    private final CarryItems carry;
    private final SearchItems searches;
    private final TagPresenter tags;
    private final Workroom room;

    /**
     * @param drafts where what is drawn is kept
     * @param typed where facts that are typed are kept
     */
    public GalleryScreen(Workroom room, Drafts drafts, Drafts typed, Thumbnails thumbnails) {
        this.room = room;
        PaperShelf shelf = new PaperShelf(room, () -> panel().repaint());
        CardList list = new CardList(
                room.tasks(),
                thumbnails,
                new CardPapers(room, shelf),
                room.settings().number(GalleryPanel.SIZE).orElse(GalleryPanel.FIRST_SIZE));
        this.panel = new GalleryPanel(list, room.settings(), room::remember);
        this.presenter = new GalleryPresenter(room, drafts, panel);
        this.begin = new BeginItems(room, drafts, panel);
        this.bring = new BringItems(room, panel);
        this.carry = new CarryItems(room, List.of(drafts, typed), panel, this::chosen);
        this.tags = new TagPresenter(room, new TagDialogs(panel), presenter::summaries);
        this.searches = new SearchItems(panel, presenter.narrowing());
        panel.presenter(presenter);
        panel.popup(this::popup);
    }

    private List<Place.OnePlate> chosen() {
        return presenter.plates(panel.chosenCards());
    }

    private void inSeries() {
        chosen().stream().findFirst().ifPresent(plate -> room.go(new Place.InSeries(plate.library(), plate.plateId())));
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
        menu.add(Widgets.item(
                "menu-show-all",
                "Show all",
                "ctrl shift F",
                () -> presenter.narrowing().clear()));
        menu.add(Widgets.item("menu-narrow", "Narrow down", "ctrl G", panel::toPick));
        menu.add(Widgets.item("menu-list-view", "Cards or list", "ctrl shift L", panel::turnList));
        JMenu sort = new JMenu("Sort by");
        sort.setName("menu-sort");
        PlateTable.sorts()
                .forEach((word, by) -> sort.add(Widgets.item(
                        "menu-sort-" + by, word, "", () -> presenter.narrowing().sortBy(by))));
        menu.add(sort);
        menu.addSeparator();
        menu.add(Widgets.item("menu-open-plate", "Open", "ctrl O", panel::openChosen));
        menu.add(Widgets.item("menu-new-plate", "New plate…", "ctrl N", presenter::begin));
        menu.add(Widgets.item("menu-new-from", "New plate from this one", "ctrl shift N", panel::beginFromChosen));
        begin.addTo(menu);
        bring.addTo(menu);
        menu.add(Widgets.item("menu-compare-two", "Compare the two chosen", "ctrl D", panel::compareChosen));
        menu.addSeparator();
        menu.add(Widgets.item("menu-fill-in", "Facts, one after the other", "ctrl shift E", this::fillIn));
        menu.add(Widgets.item("menu-in-series", "Its place in its series", "ctrl J", this::inSeries));
        carry.addTo(menu);
        menu.addSeparator();
        menu.add(Widgets.item("menu-like-plate", "Plates like this one", "ctrl shift Y", panel::likeChosen));
        menu.add(Widgets.item(
                "menu-doubles", "Near doubles", "ctrl alt D", () -> presenter.search(new Sought.Doubles())));
        menu.add(Widgets.item(
                "menu-once", "Find in old versions…", "ctrl alt F", () -> presenter.search(new Sought.OnceSaid(""))));
        menu.addSeparator();
        menu.add(Widgets.item("menu-put-away", "Put away…", "DELETE", panel::putChosenAway));
        menu.add(Widgets.item("menu-bring-back", "Bring back a plate…", "ctrl shift B", presenter::bringBack));
        return List.of(menu, tagMenu(), searches.menu());
    }

    private JMenu tagMenu() {
        JMenu menu = new JMenu("Tags");
        menu.setName("menu-tags");
        menu.setMnemonic('T');
        menu.add(Widgets.item("menu-tag", "Tag the chosen plates…", "ctrl T", this::tag));
        menu.add(Widgets.item("menu-themes", "Themes of the library…", "ctrl shift T", this::themes));
        menu.addSeparator();
        menu.add(Widgets.item(
                "menu-untag", "Take back what was tagged last", "ctrl Z", tags.takingBack()::takeBackLast));
        menu.add(Widgets.item("menu-untag-from", "Take tags back from the history…", "ctrl alt Z", this::takeBack));
        if (room.open().size() > 1) {
            menu.addSeparator();
            room.open()
                    .forEach(library -> menu.add(Widgets.item(
                            "menu-themes-" + room.nameOf(library),
                            "Themes of " + room.nameOf(library) + "…",
                            "",
                            () -> themes(library))));
        }
        return menu;
    }

    /** The themes of the library that the chosen plate lies in, else of the first. */
    private void themes() {
        if (presenter.isAllRead()) {
            here().ifPresent(tags::themes);
        }
    }

    private void takeBack() {
        here().ifPresent(tags.takingBack()::takeBackFrom);
    }

    private Optional<Library> here() {
        return presenter.plates(panel.chosenCards()).stream()
                .map(plate -> plate.library())
                .findFirst()
                .or(() -> room.open().stream().findFirst());
    }

    private void themes(Library library) {
        if (presenter.isAllRead()) {
            tags.themes(library);
        }
    }

    private void tag() {
        tags.tag(presenter.taggable(panel.chosenCards()));
    }

    private JPopupMenu popup() {
        JPopupMenu menu = new JPopupMenu();
        menu.add(Widgets.action("Open", panel::openChosen));
        menu.add(Widgets.action("New plate from this one", panel::beginFromChosen));
        menu.add(Widgets.action("Plates like this one", panel::likeChosen));
        menu.add(Widgets.action("Tags…", this::tag));
        if (panel.chosenCards().size() == 2) {
            menu.add(Widgets.action("Compare the two", panel::compareChosen));
        }
        menu.addSeparator();
        menu.add(Widgets.action("Put away…", panel::putChosenAway));
        return menu;
    }
}
