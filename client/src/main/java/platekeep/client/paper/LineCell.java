package platekeep.client.paper;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.CellGround;
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;

/** Paints one plate of the pile: a small picture, its title, and what is not said of it yet. */
final class LineCell extends JComponent implements ListCellRenderer<PaperState.Line> {
    private static final long serialVersionUID = 1L;

    static final int HEIGHT = 62;
    private static final Dimension PICTURE = new Dimension(64, 48);

    private final transient Pictures pictures;
    private transient PaperState.Line line;
    private boolean isChosen;
    private boolean isFocused;

    LineCell(Pictures pictures) {
        this.pictures = pictures;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends PaperState.Line> list,
            PaperState.Line value,
            int index,
            boolean isSelected,
            boolean cellHasFocus) {
        line = value;
        isChosen = isSelected;
        isFocused = cellHasFocus && list.isFocusOwner();
        setFont(list.getFont());
        setToolTipText(value.title() + (value.library().isEmpty() ? "" : "  ·  " + value.library()));
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
        g.setColor(new java.awt.Color(Look.cloth()));
        g.fillRect(8, 7, PICTURE.width, PICTURE.height);
        line.picture()
                .flatMap(source -> pictures.of(source, PICTURE))
                .ifPresent(image -> g.drawImage(image, 8, 7, null));
        paintWords(g);
        g.dispose();
    }

    private void paintWords(Graphics2D g) {
        int x = PICTURE.width + 16;
        int width = getWidth() - x - 8;
        Font bold = getFont().deriveFont(Font.BOLD);
        FontMetrics metrics = g.getFontMetrics(bold);
        g.setFont(bold);
        g.setColor(Look.ink());
        g.drawString(Texts.cut(line.title(), metrics, width), x, 7 + metrics.getAscent());
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 1f));
        FontMetrics small = g.getFontMetrics();
        g.setColor(Look.faintInk());
        String words = line.missing().isEmpty() ? "all said" : line.missing();
        g.drawString(Texts.cut(words, small, width), x, 7 + metrics.getHeight() + small.getAscent());
        if (line.isChanged()) {
            g.setColor(Look.accent());
            g.drawString("not saved", x, 7 + 2 * metrics.getHeight() + small.getAscent() - 2);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return line == null ? "" : line.title() + ", " + line.missing();
                }
            };
        }
        return accessibleContext;
    }
}
