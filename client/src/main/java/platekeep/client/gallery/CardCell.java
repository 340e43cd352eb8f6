package platekeep.client.gallery;

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
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.Look;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.PlateSource;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Texts;
import platekeep.client.ui.Widgets;

/** Paints one plate of the gallery: the picture, its marks, title and facts. */
final class CardCell extends JComponent implements ListCellRenderer<Card> {
    private static final long serialVersionUID = 1L;

    private static final int GAP = 8;
    private static final int TEXT_LINES = 3;

    /** In narrower cards the ages may need a line more. */
    private static final int NARROW = 190;

    private final transient Pictures pictures;
    private final transient Papers paper;
    private final transient CardGround ground = new CardGround();
    private Dimension picture;
    private transient Card card;
    private boolean chosen;
    private boolean focused;

    /** Knows of scans and photos. */
    interface Papers {
        /** What is shown in place of a chart; empty where there is a chart or no picture. */
        Optional<PictureSource> of(Card card);

        /** The name of the library that it lies in; empty where only one is open. */
        String library(Card card);

        /** What lies beside a chart, in words; empty where nothing does. */
        String beside(Card card);
    }

    CardCell(Pictures pictures, Papers paper, Dimension picture) {
        this.pictures = pictures;
        this.paper = paper;
        this.picture = picture;
    }

    void pictureSize(Dimension size) {
        this.picture = size;
    }

    int pictureWidth() {
        return picture.width;
    }

    /** How large a cell is around a picture. */
    Dimension cellSize(FontMetrics metrics) {
        return new Dimension(
                picture.width + 2 * GAP + 8,
                picture.height + 3 * GAP + (TEXT_LINES + factLines() - 1) * metrics.getHeight() + 8);
    }

    private int factLines() {
        return picture.width < NARROW ? 2 : 1;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Card> list, Card value, int index, boolean isSelected, boolean cellHasFocus) {
        this.card = value;
        this.chosen = isSelected;
        this.focused = cellHasFocus && list.isFocusOwner();
        setFont(list.getFont());
        // what the card has no room for
        setToolTipText(value.title() + (value.facts().isEmpty() ? "" : "  ·  " + value.facts()) + "  ·  "
                + value.library() + (value.found().isEmpty() ? "" : "  ·  Found in " + value.foundWords()));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        paintGround(g);
        paintPicture(g);
        paintMarks(g);
        paintBeside(g);
        paintText(g);
        g.dispose();
    }

    private void paintGround(Graphics2D g) {
        ground.paint(
                g,
                getWidth(),
                getHeight(),
                chosen ? Look.chosen() : Look.card(),
                chosen || focused ? Look.accent() : Look.edge(),
                focused ? 2f : 1f);
    }

    private void paintPicture(Graphics2D g) {
        int x = GAP + 4;
        int y = GAP + 4;
        double zoom = g.getTransform().getScaleX();
        Dimension dots = new Dimension((int) Math.ceil(picture.width * zoom), (int) Math.ceil(picture.height * zoom));
        Optional<BufferedImage> ready = card.plate()
                .flatMap(plate ->
                        pictures.of(paper.of(card).orElseGet(() -> new PlateSource(card.content(), plate)), dots));
        if (ready.isPresent()) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(ready.get(), x, y, picture.width, picture.height, null);
        } else {
            g.setColor(new Color(Look.cloth()));
            g.fillRect(x, y, picture.width, picture.height);
            if (card.plate().isEmpty()) {
                Sign.TROUBLE
                        .icon(48, Look.trouble())
                        .paintIcon(this, g, x + picture.width / 2 - 24, y + picture.height / 2 - 24);
            }
        }
    }

    private void paintMarks(Graphics2D g) {
        Font small = getFont().deriveFont(getFont().getSize2D() - 2f);
        FontMetrics metrics = g.getFontMetrics(small);
        g.setFont(small);
        int right = GAP + 4 + picture.width - 6;
        int y = GAP + 10;
        for (Card.Mark mark : card.marks()) {
            int width = metrics.stringWidth(mark.word()) + 14;
            int height = metrics.getHeight() + 2;
            Color colour = ground(mark);
            g.setColor(colour);
            g.fill(new RoundRectangle2D.Double(right - width, y, width, height, height, height));
            g.setColor(Widgets.readableOn(colour));
            g.drawString(mark.word(), right - width + 7, y + 1 + metrics.getAscent());
            y += height + 4;
        }
    }

    private static Color ground(Card.Mark mark) {
        return switch (mark) {
            case CLASH, ERRORS, DAMAGED -> Look.trouble();
            case DRAFT -> Look.accent();
            case REMARKS -> Look.warning();
            case UNSENT -> new Color(0x4A5A64);
        };
    }

    /**
     * Says at the upper left of the picture in which library it lies, at the lower left that there is paper or finished
     * work to be seen beside a chart, and above that by which version it was found.
     */
    private void paintBeside(Graphics2D g) {
        int height = g.getFontMetrics(getFont()).getHeight();
        int y = GAP + picture.height - height - 2;
        String beside = paper.beside(card);
        paintNote(g, paper.library(card), GAP + 10, picture.width / 2);
        paintNote(g, beside, y, picture.width / 2);
        paintNote(g, card.foundWords(), beside.isEmpty() ? y : y - height - 4, picture.width - 26);
    }

    private void paintNote(Graphics2D g, String note, int y, int most) {
        if (note.isEmpty()) {
            return;
        }
        Font small = getFont().deriveFont(getFont().getSize2D() - 2f);
        FontMetrics metrics = g.getFontMetrics(small);
        String words = Texts.cut(note, metrics, most);
        int height = metrics.getHeight() + 2;
        int x = GAP + 10;
        g.setFont(small);
        g.setColor(Look.card());
        g.fill(new RoundRectangle2D.Double(x, y, metrics.stringWidth(words) + 14, height, height, height));
        g.setColor(Look.faintInk());
        g.drawString(words, x + 7, y + 1 + metrics.getAscent());
    }

    private void paintText(Graphics2D g) {
        Font bold = getFont().deriveFont(Font.BOLD);
        FontMetrics metrics = g.getFontMetrics(getFont());
        int x = GAP + 6;
        int width = getWidth() - 2 * GAP - 12;
        int y = 2 * GAP + 4 + picture.height + metrics.getAscent();
        g.setFont(bold);
        g.setColor(Look.ink());
        g.drawString(Texts.cut(card.title(), g.getFontMetrics(bold), width), x, y);
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 1f));
        FontMetrics small = g.getFontMetrics();
        g.setColor(card.plate().isEmpty() ? Look.trouble() : Look.faintInk());
        int line = y;
        boolean hasFacts = !card.facts().isEmpty();
        for (String facts : Texts.wrapped(hasFacts ? card.facts() : "", small, width, factLines())) {
            line += metrics.getHeight();
            g.drawString(facts, x, line);
        }
        line += hasFacts ? metrics.getHeight() : 2 * metrics.getHeight();
        g.drawString(Texts.cut(card.size(), small, width), x, line - 1);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return card == null
                            ? ""
                            : card.title() + ", " + card.facts() + ", " + card.size()
                                    + (paper.library(card).isEmpty() ? "" : ", in " + paper.library(card))
                                    + (card.found().isEmpty() ? "" : ", found in " + card.foundWords());
                }
            };
        }
        return accessibleContext;
    }
}
