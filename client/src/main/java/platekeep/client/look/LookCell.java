package platekeep.client.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;
import platekeep.client.ui.Widgets;

/** Paints one hit: the picture, its title, why it was found, and its version where it is an old one. */
final class LookCell extends JComponent implements ListCellRenderer<LookCard> {
    private static final long serialVersionUID = 1L;

    private static final int GAP = 12;
    private static final int LINES = 4;
    private static final int ARC = 10;

    private final transient Pictures pictures;
    private Dimension picture = new Dimension(200, 150);
    private transient LookCard card;
    private boolean chosen;
    private boolean focused;

    LookCell(Pictures pictures) {
        this.pictures = pictures;
    }

    /** Takes as much of a cell as it is wide; gives the cell's height. */
    int cellHeight(int width, FontMetrics metrics) {
        picture = new Dimension(width - 2 * GAP, (width - 2 * GAP) * 3 / 4);
        return picture.height + 2 * GAP + 6 + LINES * metrics.getHeight();
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends LookCard> list, LookCard value, int index, boolean isSelected, boolean cellHasFocus) {
        this.card = value;
        this.chosen = isSelected;
        this.focused = cellHasFocus && list.isFocusOwner();
        setFont(list.getFont());
        setToolTipText(value.where().isEmpty() ? value.why() : value.why() + "  ·  " + value.where());
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        RoundRectangle2D ground = new RoundRectangle2D.Double(4.5, 4.5, getWidth() - 9, getHeight() - 9, ARC, ARC);
        g.setColor(chosen ? Look.chosen() : Look.card());
        g.fill(ground);
        g.setColor(chosen || focused ? Look.accent() : Look.edge());
        g.setStroke(new BasicStroke(focused ? 2f : 1f));
        g.draw(ground);
        paintPicture(g);
        paintMark(g);
        paintText(g);
        g.dispose();
    }

    private void paintPicture(Graphics2D g) {
        double zoom = g.getTransform().getScaleX();
        Dimension dots = new Dimension((int) Math.ceil(picture.width * zoom), (int) Math.ceil(picture.height * zoom));
        Optional<BufferedImage> ready = pictures.of(card.picture(), dots);
        if (ready.isPresent()) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(ready.get(), GAP, GAP, picture.width, picture.height, null);
        } else {
            g.setColor(new Color(Look.cloth()));
            g.fillRect(GAP, GAP, picture.width, picture.height);
        }
    }

    private void paintMark(Graphics2D g) {
        String word = card.group() > 0 ? "group " + card.group() : card.mark();
        if (word.isEmpty()) {
            return;
        }
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 2f));
        FontMetrics metrics = g.getFontMetrics();
        int width = metrics.stringWidth(word) + 14;
        int height = metrics.getHeight() + 2;
        int x = GAP + picture.width - 6 - width;
        Color ground = card.group() % 2 == 1 || card.mark().equals("put away") ? Look.accent() : new Color(0x4A5A64);
        g.setColor(ground);
        g.fill(new RoundRectangle2D.Double(x, GAP + 6, width, height, height, height));
        g.setColor(Widgets.readableOn(ground));
        g.drawString(word, x + 7, GAP + 7 + metrics.getAscent());
    }

    private void paintText(Graphics2D g) {
        Font bold = getFont().deriveFont(Font.BOLD);
        FontMetrics metrics = g.getFontMetrics(bold);
        int x = GAP + 2;
        int width = getWidth() - 2 * x;
        int y = GAP + 6 + picture.height + metrics.getAscent();
        g.setFont(bold);
        g.setColor(Look.ink());
        g.drawString(Texts.cut(card.title(), metrics, width), x, y);
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 1f));
        FontMetrics small = g.getFontMetrics();
        List<String> why = Texts.wrapped(card.why(), small, width, card.where().isEmpty() ? 3 : 2);
        for (String line : why) {
            y += metrics.getHeight();
            g.drawString(line, x, y);
        }
        g.setColor(Look.faintInk());
        if (!card.where().isEmpty()) {
            g.drawString(Texts.cut(card.where(), small, width), x, y + metrics.getHeight());
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return card == null ? "" : card.title() + ", " + card.why() + ", " + card.where();
                }
            };
        }
        return accessibleContext;
    }
}
