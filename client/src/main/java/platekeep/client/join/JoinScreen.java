package platekeep.client.join;

import javax.swing.Icon;
import javax.swing.JComponent;
import platekeep.client.draft.Drafts;
import platekeep.client.room.Place;
import platekeep.client.room.Screen;
import platekeep.client.room.Workroom;
import platekeep.client.ui.Sign;

/** Deciding what two people changed in two ways, as a screen of the window. */
public final class JoinScreen implements Screen {
    private final JoinPanel panel = new JoinPanel();
    private final JoinPresenter presenter;

    /**
     * @param drafts of plates of the libraries
     * @param joins where decisions about plates are kept that came and are not brought in yet
     */
    public JoinScreen(Workroom room, Drafts drafts, Drafts joins) {
        presenter = new JoinPresenter(room, drafts, joins, panel);
        panel.presenter(presenter);
    }

    @Override
    public String word() {
        return "Join";
    }

    @Override
    public Icon icon() {
        return Sign.JOIN.icon(24);
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public boolean takes(Place place) {
        return place instanceof Place.Join;
    }

    @Override
    public void show(Place place) {
        if (place instanceof Place.Join join) {
            presenter.show(join.library(), join.plateId());
        }
    }

    @Override
    public void entered() {
        presenter.entered();
        panel.toAnswers();
    }

    @Override
    public void closing() {
        presenter.makeSafe();
    }
}
