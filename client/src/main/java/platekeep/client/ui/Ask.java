package platekeep.client.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.SwingUtilities;

/**
 * A question in a dialog: a sentence, the parts to fill in, a button for yes and one to give it up. Enter is yes, Escape
 * gives it up. What is not right yet is said in the dialog, which then stays open.
 */
public final class Ask {
    private final JDialog dialog;
    private final JTextArea complaint = Widgets.prose("ask-complaint", "");
    private final JButton yes;
    private boolean agreed;

    private Ask(Component over, String title, JComponent inside, Yes said, Supplier<Optional<String>> wrong) {
        dialog = new JDialog(SwingUtilities.getWindowAncestor(over), title, Dialog.ModalityType.APPLICATION_MODAL);
        yes = said.button;
        yes.addActionListener(e -> agree(wrong));
        JButton no = Widgets.button("ask-no", "Cancel", dialog::dispose);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.RIGHT, 8, 0));
        buttons.add(no);
        buttons.add(yes);
        complaint.setVisible(false);
        Widgets.styled(complaint, "foreground: $Platekeep.trouble");
        JPanel below = new JPanel(new BorderLayout(0, 10));
        below.add(complaint, BorderLayout.CENTER);
        below.add(buttons, BorderLayout.SOUTH);
        JPanel all = new JPanel(new BorderLayout(0, 12));
        all.setBorder(Widgets.air(18, 20, 16, 20));
        all.add(inside, BorderLayout.CENTER);
        all.add(below, BorderLayout.SOUTH);
        dialog.setContentPane(all);
        dialog.getRootPane().setDefaultButton(yes);
        dialog.setFocusTraversalPolicy(new YesFirst(yes, no));
        Widgets.onKey(dialog.getRootPane(), "ESCAPE", dialog::dispose);
        dialog.setName("ask");
    }

    /**
     * Asks.
     *
     * @param over the component that asks
     * @param wrong says what is not right yet; empty when all is well
     * @return whether she said yes
     */
    public static Answer ask(
            Component over, String title, JComponent inside, String yesWord, Supplier<Optional<String>> wrong) {
        return ask(over, title, inside, new Yes(yesWord), wrong);
    }

    /** Asks, with a button for yes that changes with what is chosen. */
    public static Answer ask(
            Component over, String title, JComponent inside, Yes yes, Supplier<Optional<String>> wrong) {
        Ask ask = new Ask(over, title, inside, yes, wrong);
        ask.dialog.pack();
        Dimension size = ask.dialog.getSize();
        ask.dialog.setSize(Math.max(size.width, 440), size.height);
        ask.dialog.setLocationRelativeTo(SwingUtilities.getWindowAncestor(over));
        ask.dialog.setVisible(true);
        return ask.agreed ? Answer.YES : Answer.GIVEN_UP;
    }

    /** The button for yes. */
    public static final class Yes {
        private final JButton button;

        public Yes(String word) {
            this.button = Widgets.mainButton("ask-yes", word, () -> {});
        }

        /** Says something else. */
        public void says(String word) {
            button.setText(word);
        }

        /** Can be pressed, or not. */
        public void canBe(boolean pressed) {
            button.setEnabled(pressed);
        }
    }

    /**
     * Where there is nothing to fill in, the keyboard begins at yes: Enter presses the button that has it, which would
     * give up else.
     */
    private static final class YesFirst extends LayoutFocusTraversalPolicy {
        private static final long serialVersionUID = 1L;

        private final JButton yes;
        private final JButton no;

        YesFirst(JButton yes, JButton no) {
            this.yes = yes;
            this.no = no;
        }

        @Override
        public Component getDefaultComponent(Container dialog) {
            Component first = super.getDefaultComponent(dialog);
            return first == no && yes.isEnabled() ? yes : first;
        }
    }

    /** What came of a question. */
    public enum Answer {
        YES,
        GIVEN_UP
    }

    private void agree(Supplier<Optional<String>> wrong) {
        Optional<String> sentence = wrong.get();
        if (sentence.isPresent()) {
            complaint.setText(sentence.get());
            complaint.setVisible(true);
            dialog.pack();
            dialog.setSize(Math.max(dialog.getWidth(), 440), dialog.getHeight());
        } else {
            agreed = true;
            dialog.dispose();
        }
    }
}
