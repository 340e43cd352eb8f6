package platekeep.client.plate;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.work.HistoryStep;
import platekeep.client.plate.work.PlateState;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;

/** A bar that says what is special about what is shown: an old version, a draft on offer, open clashes. */
final class NoticeBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient PlateEars ears;
    private final JTextArea text = Widgets.prose("notice", "");
    private final JButton bringBack;
    private final JButton compare;
    private final JButton name;
    private final JButton now;
    private final JButton take;
    private final JButton giveUp;
    private final JButton settle;

    NoticeBar(PlateEars ears) {
        super(new MigLayout("insets 8 16 8 14, fillx, hidemode 3, gap 6", "[grow, fill][][][][]"));
        this.ears = ears;
        setName("notice-bar");
        Widgets.styled(this, "background: $Platekeep.chosen");
        bringBack = Widgets.button(
                "version-bring-back", "Bring back", () -> ears.versions().bringBack());
        compare = Widgets.button(
                "version-compare",
                "Compare with the newest",
                () -> ears.versions().compareWithNow());
        name = Widgets.button("version-name", "Name it…", this::nameLooked);
        now = Widgets.button("version-now", "Back to now", () -> ears.versions().lookAtNow());
        take = Widgets.button("draft-take", "Go on with it", () -> ears.plates().takeOffer());
        giveUp = Widgets.button(
                "draft-give-up", "Give it up", () -> ears.plates().giveUp());
        settle = Widgets.button(
                "clash-settle", "Settle them", () -> ears.plates().settle());
        add(text, "wmin 80");
        for (JButton button : new JButton[] {bringBack, compare, name, now, take, giveUp, settle}) {
            add(button);
        }
        setVisible(false);
    }

    private void nameLooked() {
        shownVersion.ifPresent(id -> ears.versions().nameVersion(id));
    }

    private transient Optional<String> shownVersion = Optional.empty();

    void show(PlateState state) {
        shownVersion = state.lookingAt();
        boolean isOld = state.looked().isPresent();
        boolean isOffer = !isOld && state.offer().isPresent();
        int clashes =
                state.plate().map(Plate::clashes).map(java.util.List::size).orElse(0);
        boolean isClash = !isOld && !isOffer && clashes > 0;
        bringBack.setVisible(isOld && state.looked().flatMap(HistoryStep::plate).isPresent());
        compare.setVisible(isOld);
        name.setVisible(isOld);
        now.setVisible(isOld);
        take.setVisible(isOffer);
        giveUp.setVisible(isOffer);
        settle.setVisible(isClash);
        String words = state.looked()
                .map(step ->
                        "You are looking at the version of " + step.day() + " by " + step.hand() + ": " + step.reason())
                .or(state::offer)
                .orElse(
                        clashes == 1
                                ? "One clash is open in this plate."
                                : clashes + " clashes are open in this plate.");
        text.setText(words);
        setVisible(isOld || isOffer || isClash);
    }
}
