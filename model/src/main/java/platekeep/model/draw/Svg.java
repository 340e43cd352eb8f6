package platekeep.model.draw;

import java.util.Locale;
import java.util.TreeMap;

/**
 * The chart of a plate as a drawing of lines (SVG 1.1) on white paper, with pleat and row numbers, gathering rows and the
 * centre. A cable is a bar with round ends over its place, so that it can be printed at any size.
 */
public final class Svg {
    private static final int BESIDE = 44;
    private static final int ABOVE = 28;
    private static final int BELOW = 12;
    private static final String INK = "#5A666E";

    private final Drawing drawing;
    private final ChartScale scale;
    private final StringBuilder out = new StringBuilder();

    private Svg(Drawing drawing, ChartScale scale) {
        this.drawing = drawing;
        this.scale = scale;
    }

    /** The text of the drawing; linear in the chart. */
    public static String chart(Drawing drawing, ChartScale scale) {
        return new Svg(drawing, scale).written();
    }

    private String written() {
        double width = scale.left(drawing.pleats()) + 2 * BESIDE;
        double height = scale.top(drawing.height()) + ABOVE + BELOW;
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"%s\""
                        + " height=\"%s\" viewBox=\"%d %s %s %s\">",
                n(width), n(height), -BESIDE, n(scale.top(drawing.top()) - ABOVE), n(width), n(height));
        line("<title>%s</title>", escaped(drawing.plate().title()));
        line(
                "<rect x=\"%d\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#FFFFFF\"/>",
                -BESIDE, n(scale.top(drawing.top()) - ABOVE), n(width), n(height));
        grid();
        gathering();
        cables();
        strands();
        knots();
        centre();
        numbers();
        line("</svg>");
        return out.toString();
    }

    private void grid() {
        double top = scale.top(drawing.top());
        double bottom = scale.top(drawing.rows());
        double right = scale.left(drawing.pleats());
        for (int i = 0; i <= drawing.pleats(); i++) {
            boolean isTenth = Math.floorMod(drawing.plate().from() + i - 1, 10) == 0;
            rule(scale.left(i), top, scale.left(i), bottom, isTenth ? "#BCC7CE" : "#E3E8EB", "");
        }
        for (int row = 0; row <= drawing.rows(); row++) {
            boolean isTenth = (drawing.rows() - row) % 10 == 0;
            rule(0, scale.top(row), right, scale.top(row), isTenth ? "#BCC7CE" : "#E3E8EB", "");
        }
    }

    private void gathering() {
        double right = scale.left(drawing.pleats());
        for (GatheringRow row : drawing.gathering()) {
            double y = scale.top(row.y());
            rule(0, y, right, y, "#5F8CA3", " stroke-dasharray=\"7 3 2 3\"");
            if (!row.label().isEmpty()) {
                text(right + 8, y + 4, "start", "#5F8CA3", row.label());
            }
        }
    }

    private void centre() {
        double x = scale.left(drawing.pleats() / 2.0);
        rule(x, scale.top(drawing.top()), x, scale.top(drawing.rows()), "#A4432F", " stroke-dasharray=\"4 4\"");
    }

    private void rule(double x1, double y1, double x2, double y2, String colour, String more) {
        line("<path d=\"M%s %sL%s %s\" stroke=\"%s\" fill=\"none\"%s/>", n(x1), n(y1), n(x2), n(y2), colour, more);
    }

    private void cables() {
        line(
                "<defs><rect id=\"cable\" x=\"0.5\" y=\"0.5\" width=\"%s\" height=\"%s\" rx=\"%s\"/></defs>",
                n(scale.cable() - 1), n(scale.half() - 1), n(scale.half() * 0.45));
        TreeMap<Integer, StringBuilder> byShade = new TreeMap<>();
        for (int row = 0; row < drawing.rows(); row++) {
            for (int i = 0; i < drawing.positions(); i++) {
                if (drawing.rgb(row, i) != Drawing.NOTHING) {
                    byShade.computeIfAbsent(drawing.rgb(row, i), shade -> new StringBuilder())
                            .append("<use xlink:href=\"#cable\" x=\"")
                            .append(n(scale.left(i)))
                            .append("\" y=\"")
                            .append(n(scale.top(row, drawing.kind(row, i))))
                            .append("\"/>\n");
                }
            }
        }
        byShade.forEach((shade, cables) -> {
            line("<g fill=\"%s\" stroke=\"%s\">", hex(shade), hex(darker(shade)));
            out.append(cables);
            line("</g>");
        });
    }

    private void strands() {
        for (Strand strand : drawing.strands()) {
            line(
                    "<path d=\"M%s %sL%s %s\" stroke=\"%s\" stroke-width=\"%s\" stroke-linecap=\"round\"/>",
                    n(scale.left(strand.x1())),
                    n(scale.top(strand.y1())),
                    n(scale.left(strand.x2())),
                    n(scale.top(strand.y2())),
                    hex(strand.rgb()),
                    n(scale.half() * 0.6));
        }
    }

    private void knots() {
        for (Knot knot : drawing.knots()) {
            line(
                    "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\" stroke=\"%s\"><title>%s</title></circle>",
                    n(scale.left(knot.x())),
                    n(scale.top(knot.y())),
                    n(scale.pleat() * 0.62),
                    hex(knot.rgb()),
                    hex(darker(knot.rgb())),
                    escaped(knot.stitch()));
        }
    }

    private void numbers() {
        int from = drawing.plate().from();
        for (int i = 0; i < drawing.pleats(); i++) {
            if (Math.floorMod(from + i, 10) == 0) {
                text(scale.left(i + 0.5), scale.top(drawing.top()) - 8, "middle", INK, Integer.toString(from + i));
            }
        }
        for (int row = 0; row < drawing.rows(); row++) {
            int number = drawing.plate().numberFromBottom(row);
            if (number % 5 == 0) {
                text(-8, scale.top(row + 0.5) + 4, "end", INK, Integer.toString(number));
            }
        }
    }

    private void text(double x, double y, String anchor, String colour, String words) {
        line(
                "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\" fill=\"%s\" font-family=\"sans-serif\" font-size=\"11\">%s</text>",
                n(x), n(y), anchor, colour, escaped(words));
    }

    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private static String n(double number) {
        double rounded = Math.rint(number * 100) / 100;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }

    private static String hex(int rgb) {
        return String.format(Locale.ROOT, "#%06X", rgb);
    }

    private static int darker(int rgb) {
        int red = (rgb >> 16 & 255) * 7 / 10;
        int green = (rgb >> 8 & 255) * 7 / 10;
        int blue = (rgb & 255) * 7 / 10;
        return red << 16 | green << 8 | blue;
    }

    private static String escaped(String words) {
        StringBuilder safe = new StringBuilder();
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                default -> safe.appendCodePoint(c < ' ' ? ' ' : c);
            }
        });
        return safe.toString();
    }
}
