package platekeep.client.compare.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import platekeep.client.compare.chart.Line;
import platekeep.client.compare.chart.Line.Edited;
import platekeep.client.compare.chart.Line.Fate;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots;
import platekeep.client.ui.Look;
import platekeep.model.compare.Side;

/**
 * The column between two charts: the row's number in each, and what happened to the row by sign and word; rows next to
 * each other that share their fate share a bracket. An arrow leads from where a row stood to where it was moved.
 */
final class RowColumn {
    /** The room for the numbers of one side. */
    static final int NUMBERS = 38;

    /** The room between them. */
    static final int SIGNS = 92;

    static final int WIDTH = 2 * NUMBERS + SIGNS;

    private final PairedPlates plates;
    private final Sight sight;
    /** Where there is room for the next words, in dots. */
    private double wordsFrom = Integer.MIN_VALUE;

    RowColumn(PairedPlates plates, Sight sight) {
        this.plates = plates;
        this.sight = sight;
    }

    void paint(Graphics2D g, Seen seen, Spots chosen) {
        paintNumbers(g, Side.BEFORE, seen, NUMBERS - 8);
        paintNumbers(g, Side.AFTER, seen, WIDTH - 8);
        paintMoves(g, seen);
        paintSigns(g, seen);
        paintPointers(g, seen, chosen);
    }

    private void paintNumbers(Graphics2D g, Side side, Seen seen, int right) {
        FontMetrics metrics = g.getFontMetrics();
        int every = PleatRuler.every(metrics.getHeight() - 2, sight.scale().row());
        for (int at = seen.first(); at <= seen.last(); at++) {
            Line line = plates.lines().line(at);
            int row = line.row(side);
            if (row == Line.NONE) {
                continue;
            }
            int number = plates.plate(side).numberFromBottom(row);
            if (number % every == 0) {
                String text = Integer.toString(number);
                g.setFont(g.getFont().deriveFont(line.isMarked() ? Font.BOLD : Font.PLAIN));
                g.setColor(line.isMarked() ? Look.ink() : Look.faintInk());
                g.drawString(text, right - g.getFontMetrics().stringWidth(text), (int)
                        (sight.yOf(at + 0.5) + metrics.getAscent() / 2.0 - 1));
            }
        }
        g.setFont(g.getFont().deriveFont(Font.PLAIN));
    }

    private void paintSigns(Graphics2D g, Seen seen) {
        int at = seen.first();
        while (at > 0 && isOneGroup(at - 1, at)) {
            at--;
        }
        while (at <= seen.last()) {
            int end = at + 1;
            while (end < plates.lines().size() && isOneGroup(end - 1, end)) {
                end++;
            }
            if (plates.lines().line(at).isMarked()) {
                paintSign(g, at, end);
            }
            at = end;
        }
    }

    private boolean isOneGroup(int at, int next) {
        Line a = plates.lines().line(at);
        Line b = plates.lines().line(next);
        boolean isOneMove = a.mate() == Line.NONE || b.mate() == a.mate() + 1;
        return a.fate() == b.fate() && a.edited() == b.edited() && isOneMove;
    }

    private void paintSign(Graphics2D g, int from, int end) {
        Line line = plates.lines().line(from);
        double high = sight.yOf(from);
        double low = Math.max(high + 3, sight.yOf(end));
        bracket(g, line, high + 0.5, low - 0.5);
        FontMetrics metrics = g.getFontMetrics();
        double middle = Math.max(wordsFrom + metrics.getAscent() / 2.0, (Math.max(high, 0) + low) / 2);
        boolean isNear = middle <= low + metrics.getAscent();
        if (isNear && (low - high >= metrics.getAscent() - 1 || end - from == 1)) {
            wordsFrom = middle + metrics.getAscent() / 2.0;
            word(g, words(line, from, end), middle);
        }
    }

    private static void word(Graphics2D g, String text, double middle) {
        g.setFont(g.getFont().deriveFont(Font.BOLD));
        FontMetrics metrics = g.getFontMetrics();
        int width = metrics.stringWidth(text);
        int x = NUMBERS + (SIGNS - width) / 2;
        g.setColor(Look.card());
        g.fill(new Rectangle2D.Double(x - 3.0, middle - metrics.getAscent() / 2.0, width + 6.0, metrics.getAscent()));
        g.setColor(Look.ink());
        g.drawString(text, x, (int) (middle + metrics.getAscent() / 2.0 - 1));
        g.setFont(g.getFont().deriveFont(Font.PLAIN));
    }

    /** Square brackets at the side, or both sides, where the rows stand. */
    private static void bracket(Graphics2D g, Line line, double high, double low) {
        g.setColor(Look.ink());
        g.setStroke(new BasicStroke(1.6f));
        Path2D path = new Path2D.Double();
        if (line.before() != Line.NONE) {
            path.moveTo(NUMBERS - 5.0, high);
            path.lineTo(NUMBERS - 1.0, high);
            path.lineTo(NUMBERS - 1.0, low);
            path.lineTo(NUMBERS - 5.0, low);
        }
        if (line.after() != Line.NONE) {
            double x = NUMBERS + (double) SIGNS;
            path.moveTo(x + 5, high);
            path.lineTo(x + 1, high);
            path.lineTo(x + 1, low);
            path.lineTo(x + 5, low);
        }
        g.draw(path);
    }

    private String words(Line line, int from, int end) {
        int rows = end - from;
        String many = rows == 1 ? "" : rows + " ";
        String edited = line.edited() == Edited.YES ? " \u2260" : "";
        return switch (line.fate()) {
            case ADDED -> "+ " + many + "added";
            case REMOVED -> "\u2212 " + many + "removed";
            case LEFT -> "\u2195 to row " + number(Side.AFTER, line.mate() + rows - 1) + edited;
            case CAME -> "\u2195 from row " + number(Side.BEFORE, line.mate() + rows - 1) + edited;
            case STAYED, BESIDE -> rows == 1 ? "\u2260" : "\u2260 " + rows + " rows";
        };
    }

    private int number(Side side, int line) {
        return plates.plate(side).numberFromBottom(plates.lines().line(line).row(side));
    }

    private void paintMoves(Graphics2D g, Seen seen) {
        for (int at = 0; at < plates.lines().size(); at++) {
            Line line = plates.lines().line(at);
            boolean isSeen = line.fate() == Fate.LEFT
                    && Math.min(at, line.mate()) <= seen.last()
                    && Math.max(at, line.mate()) >= seen.first();
            if (isSeen) {
                paintMove(g, sight.yOf(at + 0.5), sight.yOf(line.mate() + 0.5));
            }
        }
    }

    private static void paintMove(Graphics2D g, double from, double to) {
        Color ink = Look.faintInk();
        g.setColor(ink);
        g.setStroke(new BasicStroke(1.2f));
        double left = NUMBERS;
        double right = NUMBERS + (double) SIGNS - 1;
        g.draw(new CubicCurve2D.Double(left, from, left + 40, from, right - 40, to, right - 6, to));
        Path2D head = new Path2D.Double();
        head.moveTo(right, to);
        head.lineTo(right - 7, to - 4);
        head.lineTo(right - 7, to + 4);
        head.closePath();
        g.fill(head);
    }

    /** A heavy arrow head towards each run of lines of the change that is chosen, with a bar along the run. */
    private void paintPointers(Graphics2D g, Seen seen, Spots chosen) {
        g.setColor(Look.trouble());
        for (Side side : Side.values()) {
            List<int[]> runs = new ArrayList<>();
            chosen.forEach(side, seen.first(), seen.last(), (line, stretches) -> {
                if (!runs.isEmpty() && runs.get(runs.size() - 1)[1] == line) {
                    runs.get(runs.size() - 1)[1] = line + 1;
                } else {
                    runs.add(new int[] {line, line + 1});
                }
            });
            runs.forEach(run -> pointer(g, side, sight.yOf(run[0]), sight.yOf(run[1])));
        }
    }

    private static void pointer(Graphics2D g, Side side, double high, double low) {
        double y = (high + low) / 2;
        double tip = side == Side.BEFORE ? 0.5 : WIDTH - 0.5;
        double back = side == Side.BEFORE ? 8 : WIDTH - 8;
        Path2D head = new Path2D.Double();
        head.moveTo(tip, y);
        head.lineTo(back, y - 5);
        head.lineTo(back, y + 5);
        head.closePath();
        g.fill(head);
        if (low - high > 14) {
            g.fill(new Rectangle2D.Double(Math.min(tip, back) + (side == Side.BEFORE ? 5 : 1), high, 2, low - high));
        }
    }
}
