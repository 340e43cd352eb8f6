package platekeep.client.compare;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;

/** A version in two lines: when and by whom, and why. */
final class VersionCell extends JPanel implements ListCellRenderer<String> {
    private static final long serialVersionUID = 1L;

    private transient String[] lines = {};
    private boolean isChosen;
    private boolean hasFocus;

    @Override
    public Component getListCellRendererComponent(
            JList<? extends String> list, String value, int index, boolean isSelected, boolean isFocused) {
        lines = value.split("\n", 2);
        isChosen = isSelected;
        hasFocus = isFocused;
        setFont(list.getFont());
        setPreferredSize(new Dimension(10, 44));
        getAccessibleContext().setAccessibleName(value.replace("\n", ": "));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        if (isChosen) {
            g.setColor(Look.chosen());
            g.fillRect(0, 0, getWidth(), getHeight());
        }
        if (hasFocus) {
            g.setColor(Look.accent());
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        g.setFont(getFont().deriveFont(Font.BOLD));
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(Look.ink());
        g.drawString(Texts.cut(lines[0], metrics, getWidth() - 20), 10, 5 + metrics.getAscent());
        g.setFont(getFont());
        g.setColor(Look.faintInk());
        g.drawString(
                Texts.cut(lines.length > 1 ? lines[1] : "", g.getFontMetrics(), getWidth() - 20),
                10,
                6 + metrics.getHeight() + metrics.getAscent());
        g.dispose();
    }
}
