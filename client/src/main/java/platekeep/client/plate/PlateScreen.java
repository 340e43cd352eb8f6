package platekeep.client.plate;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.carry.CarryItems;
import platekeep.client.draft.Drafts;
import platekeep.client.paper.beside.BesidePresenter;
import platekeep.client.paper.bring.BringDialogs;
import platekeep.client.paper.bring.BringPresenter;
import platekeep.client.plate.begin.BeginItems;
import platekeep.client.plate.begin.BlankChart;
import platekeep.client.plate.picture.PictureItem;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.plate.work.PlatePresenter;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The Plate screen of the window. */
public final class PlateScreen implements Screen {
    private final PlatePanel panel;
    private final PlatePresenter presenter;
    private final PlateMenus menus;
    private final BesidePresenter beside;
    private final CarryItems carry;
    private final Workroom room;

    /**
     * @param drafts where what is drawn is kept
     * @param typed where facts that are typed elsewhere are kept
     */
    public PlateScreen(Workroom room, Drafts drafts, Drafts typed, Motifs motifs, Thumbnails thumbnails) {
        this.panel = new PlatePanel(room.tasks(), thumbnails);
        this.presenter = new PlatePresenter(room, drafts, motifs, panel);
        panel.ears().lead(room, presenter);
        BringPresenter bring = new BringPresenter(room, new BringDialogs(panel));
        this.beside = new BesidePresenter(room, bring, panel.beside());
        panel.beside().presenter(beside);
        panel.onShow(() -> presenter
                .current()
                .ifPresent(
                        open -> beside.of(open.library(), open.id(), open.now().title())));
        panel.beside().onBegin(this::beginChart);
        this.carry = new CarryItems(room, List.of(drafts, typed), panel, this::shown);
        this.room = room;
        this.menus =
                new PlateMenus(panel, presenter, new BeginItems(room, drafts, panel), new PictureItem(room, panel));
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
        return place instanceof Place.OnePlate || place instanceof Place.InPlate;
    }

    @Override
    public void show(Place place) {
        if (place instanceof Place.InPlate found) {
            presenter.open(found);
            return;
        }
        Place.OnePlate one = (Place.OnePlate) place;
        presenter.open(one.library(), one.plateId());
    }

    @Override
    public void entered() {
        panel.chart().requestFocusInWindow();
    }

    @Override
    public List<JMenu> menus() {
        List<JMenu> all = menus.all();
        JMenu plate = all.get(0);
        plate.addSeparator();
        plate.add(Widgets.item("menu-begin-chart", "Begin the chart…", "ctrl alt K", this::beginChart));
        plate.add(Widgets.item("menu-add-pictures", "Add scans or photos…", "ctrl alt A", beside::add));
        plate.add(Widgets.item("menu-turn-paper", "Paper or chart", "ctrl shift P", panel::turnPaper));
        plate.add(Widgets.item("menu-fill-in", "Facts, with the paper", "ctrl shift E", this::fillIn));
        plate.add(Widgets.item("menu-in-series", "Its place in its series", "ctrl J", this::inSeries));
        carry.addTo(plate);
        return all;
    }

    private List<Place.OnePlate> shown() {
        return presenter
                .current()
                .map(open -> List.of(new Place.OnePlate(open.library(), open.id())))
                .orElse(List.of());
    }

    private void beginChart() {
        boolean isBare =
                presenter.current().filter(open -> open.now().rows().isEmpty()).isPresent();
        if (!isBare) {
            room.front().trouble("This plate has its chart already, or no plate is open.");
            return;
        }
        BlankChart.ask(panel)
                .ifPresent(chart -> presenter
                        .draw()
                        .facts("Begin the chart", plate -> chart.on(plate, new java.security.SecureRandom())));
    }

    private void inSeries() {
        shown().forEach(plate -> room.go(new Place.InSeries(plate.library(), plate.plateId())));
    }

    private void fillIn() {
        if (!shown().isEmpty()) {
            room.go(new Place.Paper(shown()));
        }
    }

    @Override
    public void closing() {
        panel.takeTyped();
        presenter.makeSafe();
    }
}
