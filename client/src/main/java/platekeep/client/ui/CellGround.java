package platekeep.client.ui;

import java.awt.Component;
import java.awt.Graphics2D;

/** What lies under a cell of a list that we paint ourselves: whether it is chosen, and whether the keys are on it. */
public final class CellGround {
    private static final int ROUND = 8;

    private CellGround() {}

    public static void paintChosen(Graphics2D g, Component cell) {
        g.setColor(Look.chosen());
        g.fillRoundRect(2, 2, cell.getWidth() - 4, cell.getHeight() - 4, ROUND, ROUND);
    }

    public static void paintFocus(Graphics2D g, Component cell) {
        g.setColor(Look.accent());
        g.drawRoundRect(2, 2, cell.getWidth() - 5, cell.getHeight() - 5, ROUND, ROUND);
    }
}
