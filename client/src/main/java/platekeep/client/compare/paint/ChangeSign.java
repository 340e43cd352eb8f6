package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import platekeep.client.ui.Look;
import platekeep.model.compare.Difference;

/** The small sign of a kind of change, the same in the list, in the key and on the charts. */
public enum ChangeSign {
    ROW_ADDED("+"),
    ROW_REMOVED("\u2212"),
    ROW_MOVED("\u2195"),
    PUT_IN(""),
    TAKEN_OUT(""),
    RECOLOURED(""),
    MOTION("\u21C4"),
    STITCH(""),
    START(""),
    FACT("\u2022");

    private final String letter;

    ChangeSign(String letter) {
        this.letter = letter;
    }

    /** The sign of a change. */
    public static ChangeSign of(Difference change) {
        return switch (change.about()) {
            case MOTION, WIDTH -> MOTION;
            case ROWS_ADDED -> ROW_ADDED;
            case ROWS_REMOVED -> ROW_REMOVED;
            case ROWS_MOVED -> ROW_MOVED;
            case CABLES -> cables(change.words());
            case LINES, MARKS -> STITCH;
            case STARTS -> START;
            case COLOURS, FACTS, NOTIONS, REMARKS, CLASHES -> FACT;
        };
    }

    private static ChangeSign cables(String words) {
        if (words.contains(" put in")) {
            return PUT_IN;
        }
        return words.contains(" taken out") ? TAKEN_OUT : RECOLOURED;
    }

    /** Paints the sign into a box. */
    public void paint(Graphics2D g, int x, int y, int width, int height) {
        Rectangle2D box = new Rectangle2D.Double(x + 2.5, y + 3.5, width - 5.0, height - 7.0);
        Rectangle2D wide = new Rectangle2D.Double(x - 3.0, y + 2.0, width + 6.0, height - 4.0);
        switch (this) {
            case ROW_ADDED -> band(g, wide, Hatch.RISING);
            case ROW_REMOVED -> band(g, wide, Hatch.FALLING);
            case ROW_MOVED -> band(g, wide, Hatch.LEVEL);
            case PUT_IN, TAKEN_OUT, RECOLOURED -> outline(g, box);
            case STITCH -> stroke(g, new Ellipse2D.Double(x + width / 2.0 - 6, y + height / 2.0 - 6, 12, 12));
            case START -> flag(g, x + width / 2.0 - 4, y + height - 3.0);
            default -> {
                // the letter says all
            }
        }
        FontMetrics metrics = g.getFontMetrics(g.getFont().deriveFont(Font.BOLD));
        g.setFont(g.getFont().deriveFont(Font.BOLD));
        g.setColor(Look.ink());
        g.drawString(letter, (int) (x + (width - metrics.stringWidth(letter)) / 2.0), (int)
                (y + (height + metrics.getAscent() - metrics.getDescent()) / 2.0));
        g.setFont(g.getFont().deriveFont(Font.PLAIN));
    }

    private static void band(Graphics2D g, Rectangle2D box, Hatch hatch) {
        hatch.fill(g, box);
        g.setColor(Look.card());
        g.fill(new Rectangle2D.Double(box.getCenterX() - 4.5, box.getY(), 9, box.getHeight()));
    }

    private void outline(Graphics2D g, Rectangle2D box) {
        g.setColor(Look.ink());
        if (this == TAKEN_OUT) {
            g.setStroke(new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
            g.draw(box);
        } else if (this == PUT_IN) {
            g.setStroke(new BasicStroke(2));
            g.draw(box);
        } else {
            g.setStroke(new BasicStroke(4.6f));
            g.draw(box);
            g.setColor(Look.card());
            g.setStroke(new BasicStroke(1.8f));
            g.draw(box);
        }
    }

    private static void stroke(Graphics2D g, java.awt.Shape shape) {
        g.setColor(Look.ink());
        g.setStroke(new BasicStroke(2));
        g.draw(shape);
    }

    private static void flag(Graphics2D g, double x, double y) {
        Path2D flag = new Path2D.Double();
        flag.moveTo(x, y);
        flag.lineTo(x, y - 13);
        flag.lineTo(x + 9, y - 9.5);
        flag.lineTo(x, y - 6);
        stroke(g, flag);
    }
}
