package platekeep.client.plate.begin;

import java.awt.Component;
import javax.swing.JMenu;
import platekeep.client.draft.Drafts;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Widgets;

/** The lines of a menu by which plates are begun from something else. */
public final class BeginItems {
    private final BeginPresenter presenter;

    /**
     * @param over where the questions are asked
     */
    public BeginItems(Workroom room, Drafts drafts, Component over) {
        this.presenter = new BeginPresenter(room, drafts, new BeginDialogs(over));
    }

    /** Adds them to a menu. */
    public void addTo(JMenu menu) {
        menu.add(Widgets.item("menu-begin-picture", "New plate from a picture…", "ctrl alt P", presenter::fromPicture));
        menu.add(Widgets.item("menu-begin-text", "New plate from a text file…", "ctrl alt T", presenter::fromTextFile));
        menu.add(Widgets.item(
                "menu-begin-clipboard", "New plate from copied text…", "ctrl shift V", presenter::fromClipboard));
    }
}
