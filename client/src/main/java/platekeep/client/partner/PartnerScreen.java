package platekeep.client.partner;

import javax.swing.Icon;
import javax.swing.JComponent;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;

/** The partner and the shared copy as a screen of the window. */
public final class PartnerScreen implements Screen {
    private final PartnerPanel panel = new PartnerPanel();
    private final PartnerPresenter presenter;

    public PartnerScreen(Workroom room) {
        presenter = new PartnerPresenter(room, panel);
        panel.presenter(presenter);
    }

    @Override
    public String word() {
        return "Partner";
    }

    @Override
    public Icon icon() {
        return Sign.PARTNER.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Partner;
    }

    @Override
    public void show(Place place) {
        if (place instanceof Place.Partner partner) {
            presenter.show(partner.library());
        }
    }

    @Override
    public void entered() {
        presenter.entered();
        panel.toButtons();
    }
}
