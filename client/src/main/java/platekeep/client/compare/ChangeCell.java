package platekeep.client.compare;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import platekeep.client.compare.paint.ChangeSign;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;
import platekeep.model.compare.Difference;

/**
 * A change in words, wrapped to the width of the list, beside the sign that marks it on the charts; the first of a kind
 * has the kind's heading above it. The words are painted as they are, never as markup.
 */
final class ChangeCell extends JPanel implements ListCellRenderer<Difference> {
    private static final long serialVersionUID = 1L;
    private static final int LEFT = 42;
    private static final int MOST_LINES = 6;

    private transient Difference change;
    private transient List<String> lines = List.of();
    private transient List<Integer> shades = List.of();
    private final transient Function<Difference, List<Integer>> shadesOf;
    private boolean isFirst;
    private boolean isChosen;
    private boolean hasFocus;

    /**
     * Cells of a list.
     *
     * @param shadesOf a shade as it was and as it is, where a change is about one
     */
    ChangeCell(Function<Difference, List<Integer>> shadesOf) {
        this.shadesOf = shadesOf;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Difference> list, Difference value, int index, boolean isSelected, boolean focused) {
        change = value;
        isChosen = isSelected;
        hasFocus = focused;
        isFirst =
                index == 0 || !heading(list.getModel().getElementAt(index - 1)).equals(heading(value));
        setFont(list.getFont());
        int width =
                list.getParent() == null ? list.getWidth() : list.getParent().getWidth();
        FontMetrics metrics = list.getFontMetrics(list.getFont());
        shades = shadesOf.apply(value);
        lines = Texts.wrapped(value.words(), metrics, Math.max(60, width - LEFT - 14), MOST_LINES);
        setPreferredSize(new Dimension(60, top() + lines.size() * metrics.getHeight() + (shades.isEmpty() ? 12 : 34)));
        getAccessibleContext().setAccessibleName(heading(value) + ": " + value.words());
        return this;
    }

    private int top() {
        return isFirst ? 28 : 0;
    }

    /** What changes of a kind stand under. */
    static String heading(Difference change) {
        return switch (change.about()) {
            case MOTION, WIDTH -> "Picture";
            case ROWS_ADDED, ROWS_REMOVED, ROWS_MOVED -> "Rows";
            case CABLES -> "Cables";
            case COLOURS -> "Colours";
            case FACTS -> "About the plate";
            case STARTS, LINES, MARKS -> "Starts, lines and single stitches";
            case NOTIONS -> "Notions";
            case REMARKS -> "Remarks";
            case CLASHES -> "Open clashes";
        };
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        FontMetrics metrics = g.getFontMetrics(getFont());
        if (isFirst) {
            g.setFont(getFont().deriveFont(Font.BOLD, getFont().getSize2D() - 1f));
            g.setColor(Look.faintInk());
            g.drawString(heading(change), 12, 20);
        }
        if (isChosen) {
            g.setColor(Look.chosen());
            g.fillRect(0, top(), getWidth(), getHeight() - top());
            g.setColor(Look.trouble());
            g.fillRect(0, top(), 4, getHeight() - top());
        }
        ChangeSign.of(change).paint(g, 12, top() + 6, 22, metrics.getHeight());
        g.setFont(getFont());
        g.setColor(Look.ink());
        int y = top() + 6 + metrics.getAscent();
        for (String line : lines) {
            g.drawString(line, LEFT, y);
            y += metrics.getHeight();
        }
        paintShades(g, y - metrics.getAscent() + 3);
        if (isChosen && hasFocus) {
            g.setColor(Look.accent());
            g.drawRect(0, top(), getWidth() - 1, getHeight() - top() - 1);
        }
        g.dispose();
    }

    /** The old shade, an arrow, the new shade. */
    private void paintShades(Graphics2D g, int y) {
        for (int i = 0; i < shades.size(); i++) {
            int x = LEFT + i * 62;
            g.setColor(new Color(shades.get(i)));
            g.fillRoundRect(x, y, 42, 15, 8, 8);
            g.setColor(Look.faintInk());
            g.drawRoundRect(x, y, 42, 15, 8, 8);
        }
        if (!shades.isEmpty()) {
            g.setColor(Look.ink());
            g.drawString("\u2192", LEFT + 46, y + 12);
        }
    }
}
