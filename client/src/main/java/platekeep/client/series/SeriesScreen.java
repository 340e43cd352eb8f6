package platekeep.client.series;

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

/** The Series screen of the window. */
public final class SeriesScreen implements Screen {
    private final SeriesPanel panel;
    private final SeriesPresenter presenter;

    public SeriesScreen(Workroom room, SeriesDrafts drafts, Thumbnails thumbnails) {
        this.panel = new SeriesPanel(room.tasks(), thumbnails);
        this.presenter = new SeriesPresenter(room, drafts, panel);
        panel.presenter(presenter);
    }

    @Override
    public String word() {
        return "Series";
    }

    @Override
    public Icon icon() {
        return Sign.SERIES.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.OneSeries || place instanceof Place.InSeries;
    }

    @Override
    public void show(Place place) {
        if (place instanceof Place.InSeries in) {
            presenter.openWith(in.library(), in.plateId());
        } else if (place instanceof Place.OneSeries one) {
            presenter.open(one.library(), one.seriesId());
        }
    }

    @Override
    public void entered() {
        presenter.entered();
        panel.toOrder();
    }

    @Override
    public List<JMenu> menus() {
        JMenu menu = new JMenu("Series");
        menu.setName("menu-series");
        menu.setMnemonic('S');
        menu.add(Widgets.item("menu-series-new", "New series…", "ctrl N", presenter::begin));
        menu.add(Widgets.item("menu-series-save", "Save version…", "ctrl S", this::save));
        menu.add(Widgets.item("menu-series-give-up", "Give the changes up…", "ctrl alt G", presenter::giveUp));
        menu.add(Widgets.item("menu-series-away", "Put the series away…", "ctrl shift DELETE", presenter::putAway));
        menu.addSeparator();
        menu.add(Widgets.item("menu-series-add", "Add plates…", "ctrl shift A", presenter::add));
        menu.add(Widgets.item(
                "menu-series-out", "Take out of the series (Delete)", "", () -> presenter.remove(panel.chosen())));
        menu.add(Widgets.item(
                "menu-series-back", "One place back (Alt+Left)", "", () -> presenter.shift(panel.chosen(), -1)));
        menu.add(Widgets.item(
                "menu-series-on", "One place on (Alt+Right)", "", () -> presenter.shift(panel.chosen(), 1)));
        menu.addSeparator();
        menu.add(Widgets.item("menu-to-series", "To the series", "F7", panel::toList));
        menu.add(Widgets.item("menu-to-order", "To the plates", "F6", panel::toOrder));
        menu.add(Widgets.item("menu-to-shared", "To the colours", "F8", panel::toColours));
        return List.of(menu);
    }

    private void save() {
        panel.takeTyped();
        presenter.save();
    }

    @Override
    public void closing() {
        panel.takeTyped();
        presenter.makeSafe();
    }
}
