package platekeep.client.paper.bring;

import java.awt.Component;
import javax.swing.JMenu;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Widgets;

/** The line of a menu by which scans come in. */
public final class BringItems {
    private final BringPresenter presenter;

    /**
     * @param over where the questions are asked
     */
    public BringItems(Workroom room, Component over) {
        this.presenter = new BringPresenter(room, new BringDialogs(over));
    }

    /** Adds it to a menu. */
    public void addTo(JMenu menu) {
        menu.add(Widgets.item("menu-bring-scans", "Bring scans in…", "ctrl shift S", presenter::scans));
    }
}
