package platekeep.client.ui;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import javax.swing.border.AbstractBorder;

/** A fine line at some sides in the theme's colour for edges, asked for at each painting. */
final class ThemedEdge extends AbstractBorder {
    private static final long serialVersionUID = 1L;

    private final int top;
    private final int left;
    private final int bottom;
    private final int right;

    ThemedEdge(int top, int left, int bottom, int right) {
        this.top = top;
        this.left = left;
        this.bottom = bottom;
        this.right = right;
    }

    @Override
    public Insets getBorderInsets(Component c, Insets insets) {
        insets.set(top, left, bottom, right);
        return insets;
    }

    @Override
    public void paintBorder(Component c, Graphics g, int x, int y, int width, int height) {
        g.setColor(Look.edge());
        g.fillRect(x, y, width, top);
        g.fillRect(x, y, left, height);
        g.fillRect(x, y + height - bottom, width, bottom);
        g.fillRect(x + width - right, y, right, height);
    }
}
