package platekeep.client.compare;

import java.awt.BorderLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** The head of one side: its plate, to be pressed for another one, its version, and steps to the versions beside it. */
final class SideHead extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JButton title;
    private final JLabel version;
    private final JButton older;
    private final JButton newer;
    private final String word;

    /** Hears what is asked for. */
    interface Ears {
        void pick();

        void older();

        void newer();
    }

    /**
     * @param name for tests
     * @param word what the side is called
     */
    SideHead(String name, String word, Ears ears) {
        super(new BorderLayout());
        this.word = word;
        setName(name);
        setOpaque(false);
        title = Widgets.button(name + "-title", SideState.NONE.title(), ears::pick);
        Widgets.styled(title, "font: bold +2; toolbar.margin: 2,8,2,8");
        title.setHorizontalAlignment(SwingConstants.LEADING);
        title.putClientProperty("JButton.buttonType", "toolBarButton");
        Widgets.clickable(title);
        version = Widgets.faint(name + "-version", " ");
        older = Widgets.iconButton(name + "-older", Sign.LEFT.icon(16), word + ": the version before", ears::older);
        newer = Widgets.iconButton(name + "-newer", Sign.RIGHT.icon(16), word + ": the version after", ears::newer);
        JPanel all = Widgets.clear(new MigLayout("insets 0, gap 4 2, fillx", "[][0:pref:]push[][]", "[]2[]"));
        all.add(Widgets.heading(word));
        all.add(title, "wmin 60");
        all.add(older);
        all.add(newer, "wrap");
        all.add(version, "span, growx, wmin 0");
        add(all, BorderLayout.CENTER);
    }

    void show(SideState state) {
        title.setText(state.title() + "  ▾");
        title.getAccessibleContext()
                .setAccessibleName(word + ": " + state.title() + ". Choose another plate or version");
        title.setToolTipText("Choose another plate or version");
        version.setText(state.version().isEmpty() ? " " : state.version());
        version.setToolTipText(state.version().isEmpty() ? null : state.version());
        older.setEnabled(state.older() == SideState.Step.THERE);
        newer.setEnabled(state.newer() == SideState.Step.THERE);
    }

    void enter() {
        title.requestFocusInWindow();
    }
}
