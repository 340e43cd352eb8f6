package platekeep.client.series;

import java.awt.Color;
import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.CellGround;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;
import platekeep.model.plate.Colour;

/** Paints a group of colours: their swatches side by side, so that a small difference shows, and what they are. */
final class SharedCell extends JComponent implements ListCellRenderer<SeriesState.Shared> {
    private static final long serialVersionUID = 1L;

    static final int HEIGHT = 66;

    private transient SeriesState.Shared shared;
    private boolean isChosen;
    private boolean isFocused;

    @Override
    public Component getListCellRendererComponent(
            JList<? extends SeriesState.Shared> list,
            SeriesState.Shared value,
            int index,
            boolean isSelected,
            boolean cellHasFocus) {
        shared = value;
        isChosen = isSelected;
        isFocused = cellHasFocus && list.isFocusOwner();
        setFont(list.getFont());
        setToolTipText(value.words());
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        if (isChosen) {
            CellGround.paintChosen(g, this);
        }
        if (isFocused) {
            CellGround.paintFocus(g, this);
        }
        int x = 10;
        int width = Math.min(56, (getWidth() - 20) / shared.colours().size());
        for (Colour colour : shared.colours()) {
            g.setColor(new Color(colour.rgb()));
            g.fillRect(x, 8, width, 18);
            x += width;
        }
        g.setColor(Look.edge());
        g.drawRect(10, 8, x - 11, 17);
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 1f));
        g.setColor(Look.ink());
        FontMetrics metrics = g.getFontMetrics();
        int y = 28 + metrics.getAscent();
        for (String line : Texts.wrapped(shared.words(), metrics, getWidth() - 20, 2)) {
            g.drawString(line, 10, y);
            y += metrics.getHeight();
        }
        g.dispose();
    }
}
