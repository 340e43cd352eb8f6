package platekeep.client.carry;

import java.awt.Component;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JMenu;
import platekeep.client.draft.Drafts;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Widgets;

/** The lines of a menu by which plates are copied and moved. */
public final class CarryItems {
    private final CarryPresenter presenter;
    private final Supplier<List<Place.OnePlate>> chosen;

    /**
     * @param over where the questions are asked
     * @param chosen the plates that are meant
     */
    public CarryItems(Workroom room, List<Drafts> drafts, Component over, Supplier<List<Place.OnePlate>> chosen) {
        this.presenter = new CarryPresenter(room, drafts, new CarryDialogs(over));
        this.chosen = chosen;
    }

    /** Adds them to a menu. */
    public void addTo(JMenu menu) {
        menu.add(Widgets.item(
                "menu-copy-over",
                "Copy to another library…",
                "ctrl shift C",
                () -> presenter.carry(Way.COPY, chosen.get())));
        menu.add(Widgets.item(
                "menu-move-over",
                "Move to another library…",
                "ctrl shift X",
                () -> presenter.carry(Way.MOVE, chosen.get())));
    }
}
