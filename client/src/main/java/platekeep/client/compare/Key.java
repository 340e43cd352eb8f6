package platekeep.client.compare;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JPanel;
import platekeep.client.compare.paint.ChangeSign;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Widgets;

/** What the marks on the charts mean. */
final class Key extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final ChangeSign[] SIGNS = {
        ChangeSign.ROW_ADDED, ChangeSign.PUT_IN,
        ChangeSign.ROW_REMOVED, ChangeSign.TAKEN_OUT,
        ChangeSign.ROW_MOVED, ChangeSign.RECOLOURED
    };
    private static final String[] WORDS = {
        "row added", "put in",
        "row removed", "taken out",
        "row moved", "recoloured"
    };
    private static final int LINE = 22;

    Key() {
        setName("compare-key");
        setBorder(Widgets.edge(1, 0, 0, 0));
        setPreferredSize(new Dimension(10, 3 * LINE + 16));
        setToolTipText("What the marks on the charts mean");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        g.setFont(getFont() == null ? g.getFont() : getFont());
        FontMetrics metrics = g.getFontMetrics();
        for (int i = 0; i < SIGNS.length; i++) {
            int x = i % 2 == 0 ? 12 : getWidth() / 2 + 14;
            int y = 8 + i / 2 * LINE;
            SIGNS[i].paint(g, x, y, 22, LINE - 2);
            g.setColor(Look.faintInk());
            g.drawString(WORDS[i], x + 30, y + (LINE - 2 + metrics.getAscent() - metrics.getDescent()) / 2);
        }
        g.dispose();
    }
}
