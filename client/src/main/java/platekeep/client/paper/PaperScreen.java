package platekeep.client.paper;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenu;
import platekeep.client.draft.Drafts;
import platekeep.client.paper.bring.BringDialogs;
import platekeep.client.paper.bring.BringPresenter;
import platekeep.client.paper.bring.FileDrop;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The Paper screen of the window. */
public final class PaperScreen implements Screen {
    private final PaperPanel panel;
    private final PaperPresenter presenter;
    private final BringPresenter bring;

    /**
     * @param drafts where what is typed here is kept, and nothing else
     */
    public PaperScreen(Workroom room, Drafts drafts, Thumbnails thumbnails) {
        this.panel = new PaperPanel(room.tasks(), thumbnails, () -> bring().scans());
        this.presenter = new PaperPresenter(room, drafts, panel);
        this.bring = new BringPresenter(room, new BringDialogs(panel));
        panel.presenter(presenter);
        panel.setTransferHandler(new FileDrop(
                // the program that they come from waits until the drop is over, so the question comes after it
                files -> room.tasks().onEventThread(() -> bring.scans(files))));
    }

    private BringPresenter bring() {
        return bring;
    }

    @Override
    public String word() {
        return "Paper";
    }

    @Override
    public Icon icon() {
        return Sign.PAPER.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Paper;
    }

    @Override
    public void show(Place place) {
        presenter.open(((Place.Paper) place).plates());
    }

    @Override
    public void entered() {
        presenter.entered();
        panel.toTitle();
    }

    @Override
    public List<JMenu> menus() {
        JMenu menu = new JMenu("Paper");
        menu.setName("menu-paper");
        menu.setMnemonic('P');
        menu.add(Widgets.item("menu-bring-scans", "Bring scans in…", "ctrl shift S", bring::scans));
        menu.add(Widgets.item(
                "menu-paper-pile", "All that is only a scan yet", "ctrl alt P", () -> presenter.open(List.of())));
        menu.addSeparator();
        menu.add(Widgets.item("menu-paper-save", "Save version…", "ctrl S", presenter::save));
        menu.add(Widgets.item("menu-paper-open", "Open the plate", "ctrl O", presenter::openPlate));
        menu.addSeparator();
        menu.add(Widgets.item("menu-paper-before", "Themes and ages as before", "F4", panel::asBefore));
        menu.add(Widgets.item("menu-paper-up", "The plate before", "alt UP", () -> presenter.step(-1)));
        menu.add(Widgets.item("menu-paper-down", "The next plate", "alt DOWN", () -> presenter.step(1)));
        menu.add(Widgets.item("menu-paper-all", "Choose all", "ctrl shift A", panel::chooseAll));
        menu.addSeparator();
        menu.add(Widgets.item("menu-to-pile", "To the pile", "F7", panel::toPile));
        menu.add(Widgets.item("menu-to-picture", "To the picture", "F6", panel::toPicture));
        menu.add(Widgets.item("menu-to-form", "To the title", "F8", panel::toTitle));
        return List.of(menu);
    }

    @Override
    public void closing() {
        presenter.makeSafe();
    }
}
