package platekeep.client.plate.picture;

import java.awt.Component;
import java.util.function.Consumer;
import javax.swing.JMenuItem;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.Drawing;

/** The line of a menu by which a picture of a plate is kept. */
public final class PictureItem {
    private final PicturePresenter presenter;

    /**
     * @param over where the questions are asked
     */
    public PictureItem(Workroom room, Component over) {
        this.presenter = new PicturePresenter(room, new PictureDialog(over));
    }

    /**
     * The line.
     *
     * @param shown hands over the plate that is shown, if any
     */
    public JMenuItem item(Consumer<Consumer<Drawing>> shown) {
        return Widgets.item("menu-picture", "Save a picture…", "ctrl shift G", () -> shown.accept(presenter::keep));
    }
}
