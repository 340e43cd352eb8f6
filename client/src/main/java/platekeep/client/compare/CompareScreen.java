package platekeep.client.compare;

import java.util.List;
import java.util.Locale;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.compare.chart.Way;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.compare.Side;

/** The comparison as a screen of the window. */
public final class CompareScreen implements Screen {
    private final ComparePanel panel = new ComparePanel();
    private final ComparePresenter presenter;

    public CompareScreen(Workroom room) {
        this.presenter = new ComparePresenter(room, panel);
        panel.presenter(presenter);
        presenter.begin();
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
        panel.enter();
    }

    @Override
    public List<JMenu> menus() {
        JMenu changes = menu("menu-changes", "Changes", 'C');
        changes.add(Widgets.item("menu-next-change", "Next change", "N", presenter::next));
        changes.add(Widgets.item("menu-previous-change", "Change before", "P", presenter::previous));
        changes.add(Widgets.item("menu-close-up", "The change as large as it fits", "Z", panel.charts()::closeUp));
        changes.addSeparator();
        changes.add(Widgets.item("menu-pick-before", "Choose the left side…", "", () -> presenter.pick(Side.BEFORE)));
        changes.add(Widgets.item("menu-pick-after", "Choose the right side…", "", () -> presenter.pick(Side.AFTER)));
        changes.add(Widgets.item("menu-swap", "Exchange the two sides", "S", presenter::swap));
        changes.addSeparator();
        versions(changes, Side.BEFORE, "Left side", "COMMA", "PERIOD");
        versions(changes, Side.AFTER, "Right side", "shift COMMA", "shift PERIOD");
        JMenu ways = menu("menu-ways", "Charts", 'H');
        for (Way way : Way.values()) {
            String key = String.valueOf(way.ordinal() + 1);
            ways.add(Widgets.item("menu-way-" + key, way.word(), key, () -> presenter.way(way)));
        }
        ways.addSeparator();
        ways.add(Widgets.item("menu-turn", "Turn to the other chart", "T", presenter::turn));
        ways.add(Widgets.item("menu-hold", "Hold, or go on", "H", presenter::hold));
        ways.addSeparator();
        ways.add(Widgets.item(
                "menu-larger", "Larger", "ctrl EQUALS", () -> panel.charts().zoom(1)));
        ways.add(Widgets.item(
                "menu-smaller", "Smaller", "ctrl MINUS", () -> panel.charts().zoom(-1)));
        ways.add(Widgets.item("menu-fit", "All of it", "ctrl 0", panel.charts()::fit));
        ways.add(Widgets.item("menu-to-charts", "Go to the charts", "C", panel.charts()::enter));
        ways.add(Widgets.item("menu-to-changes", "Go to the changes", "L", panel::enter));
        return List.of(changes, ways);
    }

    private static JMenu menu(String name, String text, char mnemonic) {
        JMenu menu = new JMenu(text);
        menu.setName(name);
        menu.setMnemonic(mnemonic);
        return menu;
    }

    private void versions(JMenu menu, Side side, String word, String olderKey, String newerKey) {
        String name = "menu-" + side.name().toLowerCase(Locale.ROOT);
        menu.add(Widgets.item(name + "-older", word + ": the version before", olderKey, () -> presenter.older(side)));
        menu.add(Widgets.item(name + "-newer", word + ": the version after", newerKey, () -> presenter.newer(side)));
    }
}
