package platekeep.client.partner;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.FolderField;
import platekeep.client.ui.Widgets;

/** The Partner screen: on top the shared copy, below what came beside what waits. */
final class PartnerPanel extends JPanel implements PartnerView {
    private static final long serialVersionUID = 1L;

    private final JComboBox<String> libraries = new JComboBox<>();
    private final JTextArea where = Widgets.prose("partner-shared-copy", "");
    private final JTextArea came = Widgets.prose("partner-came", "");
    private final JTextArea waits = Widgets.prose("partner-waits", "");
    private final JButton bringIn = Widgets.mainButton(
            "partner-bring-in", "Bring in (Ctrl+B)", () -> presenter().bringIn());
    private final JButton send = Widgets.mainButton(
            "partner-send", "Send (Ctrl+E)", () -> presenter().send());
    private final JButton look =
            Widgets.button("partner-look", "Look again (F5)", () -> presenter().look());
    private final JButton choose = Widgets.button("partner-choose-folder", "Choose folder…", this::chooseFolder);
    private final JLabel first = Widgets.faint("partner-first", "Bring in what came first; then send.");
    private transient PartnerPresenter presenter;
    private boolean showing;
    private boolean isExpected;

    PartnerPanel() {
        super(new BorderLayout());
        libraries.setName("partner-library");
        libraries.addActionListener(e -> {
            if (!showing) {
                presenter().choose(libraries.getSelectedIndex());
            }
        });
        JPanel inside = new JPanel(new MigLayout(
                "insets 24 32 24 32, fill, wrap 2", "[grow, fill, sg]24[grow, fill, sg]", "[][]16[][grow, fill]12[]"));
        inside.add(Widgets.title("partner-title", "Partner"), "split 2, span 2, growx");
        inside.add(libraries, "w 240!, gapleft push");
        inside.add(where, "split 3, span 2, growx, pushx, wmin 0");
        inside.add(choose, "growx 0");
        inside.add(look, "growx 0");
        inside.add(Widgets.heading("What came"));
        inside.add(Widgets.heading("What waits to be sent"));
        inside.add(Widgets.scroll("partner-came-scroll", came), "grow");
        inside.add(Widgets.scroll("partner-waits-scroll", waits), "grow");
        inside.add(bringIn, "growx 0");
        inside.add(send, "split 2, growx 0");
        inside.add(first, "gapleft 8");
        add(inside, BorderLayout.CENTER);
        Widgets.onKey(this, "ctrl B", () -> press(bringIn));
        Widgets.onKey(this, "ctrl E", () -> press(send));
        Widgets.onKey(this, "F5", () -> press(look));
        show(PartnerState.NOTHING);
    }

    private static void press(JButton button) {
        if (button.isEnabled()) {
            button.doClick();
        }
    }

    void presenter(PartnerPresenter newPresenter) {
        presenter = newPresenter;
    }

    private PartnerPresenter presenter() {
        return presenter;
    }

    /** Puts the focus on the button that is most likely wanted, and again when it is known what came. */
    void toButtons() {
        isExpected = true;
        toUsefulButton();
    }

    private void toUsefulButton() {
        (bringIn.isEnabled() ? bringIn : send.isEnabled() ? send : look).requestFocusInWindow();
    }

    private void chooseFolder() {
        FolderField folder = new FolderField("shared-folder");
        JPanel form = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]", "[]12[]"));
        form.add(
                Widgets.prose(
                        "shared-text",
                        "Through this folder your versions reach your partner: on a stick, or kept alike on both"
                                + " computers. It is made where it is not there yet."),
                "wmin 420");
        form.add(folder);
        if (Ask.ask(this, "Folder of the shared copy", form, "Share here", folder::wrong) == Ask.Answer.YES) {
            presenter.share(folder.path());
        }
    }

    @Override
    public void show(PartnerState state) {
        showing = true;
        libraries.setModel(new DefaultComboBoxModel<>(state.libraries().toArray(String[]::new)));
        libraries.setSelectedIndex(state.chosen());
        libraries.setVisible(state.libraries().size() > 1);
        showing = false;
        boolean open = state.chosen() >= 0;
        where.setText(
                !open
                        ? state.isLooking() ? "Opening the library …" : "Open a library first."
                        : state.sharedCopy()
                                .map(folder -> "Shared copy: " + folder)
                                .or(() -> Optional.of("Looking at the shared copy …")
                                        .filter(w -> state.isLooking()))
                                .orElse("No shared copy yet. Choose a folder that you and your partner can both reach:"
                                        + " on a stick, or one that is kept alike on both computers."));
        choose.setEnabled(open);
        look.setEnabled(open && state.sharedCopy().isPresent());
        fill(came, state.came(), state.looked() ? "Nothing new." : "");
        fill(waits, state.waits(), state.looked() ? "Everything was sent." : "");
        bringIn.setEnabled(state.canBringIn());
        send.setEnabled(state.canSend());
        first.setVisible(state.mustBringInFirst());
        if (isExpected && state.looked()) {
            isExpected = false;
            toUsefulButton();
        }
    }

    private static void fill(JTextArea area, List<String> lines, String none) {
        area.setText(lines.isEmpty() ? none : String.join("\n", lines));
        area.setCaretPosition(0);
    }
}
