package platekeep.client.window;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import platekeep.client.ui.Look;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** The foot of the window: what was done, what is under way, and, above, what went wrong until she has seen it. */
final class StatusLine extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel said = Widgets.faint("status", " ");
    private final JLabel busy = Widgets.faint("status-busy", "");
    private final JPanel trouble = new JPanel(new BorderLayout(12, 0));
    private final JTextArea troubleText = Widgets.prose("trouble", "");
    private final JLabel sign = new JLabel();
    private long troubleAt;

    StatusLine() {
        setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
        trouble.setName("trouble-bar");
        JButton seen = Widgets.button("trouble-seen", "Understood", () -> trouble.setVisible(false));
        trouble.setBorder(
                javax.swing.BorderFactory.createCompoundBorder(Widgets.edge(1, 0, 0, 0), Widgets.air(10, 16, 10, 14)));
        trouble.add(sign, BorderLayout.WEST);
        trouble.add(troubleText, BorderLayout.CENTER);
        JPanel right = Widgets.clear(new java.awt.FlowLayout(java.awt.FlowLayout.RIGHT, 0, 0));
        right.add(seen);
        trouble.add(right, BorderLayout.EAST);
        Widgets.styled(trouble, "background: $Platekeep.card");
        trouble.setVisible(false);
        add(trouble);
        add(line());
    }

    private JComponent line() {
        JPanel line = new JPanel(new BorderLayout());
        line.setBorder(
                javax.swing.BorderFactory.createCompoundBorder(Widgets.edge(1, 0, 0, 0), Widgets.air(4, 14, 4, 14)));
        line.add(said, BorderLayout.CENTER);
        line.add(busy, BorderLayout.EAST);
        return line;
    }

    void say(String sentence) {
        said.setText(sentence.isEmpty() ? " " : sentence);
    }

    void busy(String what) {
        busy.setText(what);
    }

    /** Another screen is in front: what went wrong on the one before is passed, unless the same key led here. */
    void screenChanged() {
        if (troubleAt != EventQueue.getMostRecentEventTime()) {
            trouble.setVisible(false);
        }
    }

    void trouble(String sentences) {
        troubleAt = EventQueue.getMostRecentEventTime();
        sign.setIcon(Sign.TROUBLE.icon(24, Look.trouble()));
        troubleText.setText(sentences);
        trouble.setVisible(true);
        revalidate();
    }
}
