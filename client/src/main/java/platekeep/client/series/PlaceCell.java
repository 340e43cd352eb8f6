package platekeep.client.series;

import java.awt.Color;
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
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;

/** Paints one plate of a series: its place, its picture, its title. */
final class PlaceCell extends JComponent implements ListCellRenderer<SeriesState.Card> {
    private static final long serialVersionUID = 1L;

    private static final Dimension PICTURE = new Dimension(184, 132);
    private static final int GAP = 8;

    private final transient Pictures pictures;
    private transient SeriesState.Card card;
    private boolean isChosen;
    private boolean isFocused;

    PlaceCell(Pictures pictures) {
        this.pictures = pictures;
    }

    static Dimension size(FontMetrics metrics) {
        return new Dimension(PICTURE.width + 2 * GAP + 8, PICTURE.height + 3 * GAP + 2 * metrics.getHeight() + 8);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends SeriesState.Card> list,
            SeriesState.Card value,
            int index,
            boolean isSelected,
            boolean cellHasFocus) {
        card = value;
        isChosen = isSelected;
        isFocused = cellHasFocus && list.isFocusOwner();
        setFont(list.getFont());
        setToolTipText(value.title() + "  ·  " + value.words());
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        g.setColor(isChosen ? Look.chosen() : Look.card());
        g.fillRoundRect(4, 4, getWidth() - 8, getHeight() - 8, 10, 10);
        g.setColor(isChosen || isFocused ? Look.accent() : Look.edge());
        g.drawRoundRect(4, 4, getWidth() - 9, getHeight() - 9, 10, 10);
        if (isFocused) {
            g.drawRoundRect(5, 5, getWidth() - 11, getHeight() - 11, 9, 9);
        }
        int x = GAP + 4;
        g.setColor(new Color(Look.cloth()));
        g.fillRect(x, x, PICTURE.width, PICTURE.height);
        card.picture()
                .flatMap(source -> pictures.of(source, PICTURE))
                .ifPresent(image -> g.drawImage(image, x, x, null));
        paintPlace(g, x);
        paintWords(g, x);
        g.dispose();
    }

    private void paintPlace(Graphics2D g, int x) {
        g.setFont(getFont().deriveFont(Font.BOLD));
        FontMetrics metrics = g.getFontMetrics();
        String place = Integer.toString(card.number());
        int width = metrics.stringWidth(place) + 14;
        g.setColor(Look.card());
        g.fillRoundRect(x + 4, x + 4, width, metrics.getHeight() + 2, 14, 14);
        g.setColor(Look.ink());
        g.drawString(place, x + 11, x + 5 + metrics.getAscent());
    }

    private void paintWords(Graphics2D g, int x) {
        int width = getWidth() - 2 * x;
        FontMetrics bold = g.getFontMetrics(getFont().deriveFont(Font.BOLD));
        int y = x + PICTURE.height + GAP + bold.getAscent() - 2;
        g.setFont(bold.getFont());
        g.setColor(card.isHere() ? Look.ink() : Look.trouble());
        g.drawString(Texts.cut(card.title(), bold, width), x, y);
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 1f));
        g.setColor(Look.faintInk());
        g.drawString(Texts.cut(card.words(), g.getFontMetrics(), width), x, y + bold.getHeight());
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return card == null ? "" : card + ", " + card.words();
                }
            };
        }
        return accessibleContext;
    }
}
