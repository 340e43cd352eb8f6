package platekeep.client.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.StringTokenizer;
import javax.swing.Icon;

/**
 * Our own line drawings for the rail and the tools, drawn on a square of 24 units in the colour of the text beside
 * them.
 */
public enum Sign {
    GALLERY("M3 4h8v7h-8z M13 4h8v7h-8z M3 13h8v7h-8z M13 13h8v7h-8z"),
    PLATE("M3 5h8v4h-8z M13 5h8v4h-8z M8 10h8v4h-8z M3 15h8v4h-8z M13 15h8v4h-8z"),
    COMPARE("M3 4h7v16h-7z M14 4h7v16h-7z M5 8h3 M5 12h3 M16 8h3 M16 12h3 M16 16h3"),
    JOIN("M5 3v5l7 6l7 -6v-5 M12 14v7 M9 18l3 3l3 -3"),
    PARTNER("M3 8h15 M14 4l4 4l-4 4 M21 16h-15 M10 12l-4 4l4 4"),
    SHEET("M6 3h9l4 4v14h-13z M15 3v4h4 M9 12h7 M9 16h7"),
    PAPER("M8 3h12v15h-12z M4 7v14h12 M11 13l3 -4l3 4 M11 7h3"),
    SERIES("M2 6h6v9h-6z M9 6h6v9h-6z M16 6h6v9h-6z M3 19h4 M10 19h4 M17 19h4"),
    SEARCH("M10 4l4 2l2 4l-2 4l-4 2l-4 -2l-2 -4l2 -4z M15 15l6 6"),
    ALIKE("M3 14v-4h2v-3h3v3h2v4z M14 14v-4h2v-3h3v3h2v4z M6 18h5 M13 18h5"),
    PLUS("M12 4v16 M4 12h16"),
    MINUS("M4 12h16"),
    PAINT("M14 4l6 6l-10 10l-6 1l1 -6z M12 6l6 6"),
    ERASE("M10 5h11v7l-8 8h-5l-5 -5z M7 8l7 11"),
    PICK("M13 7l4 4l-9 9h-4v-4z M14 4l6 6"),
    FILL("M12 3l8 8l-8 8l-8 -8z M8 7l8 8 M21 14v6"),
    RUN("M2 10h6v4h-6z M9 10h6v4h-6z M16 10h6v4h-6z"),
    LINE("M2 17h7v4h-7z M8 10h7v4h-7z M15 3h7v4h-7z"),
    BLOCK("M3 5h18v14h-18z M3 12h18 M12 5v7 M8 12v7 M16 12v7"),
    RIM("M3 4h18v16h-18z M8 9h8v6h-8z"),
    REGION("M3 8v-5h5 M16 3h5v5 M21 16v5h-5 M8 21h-5v-5 M7 10h10v4h-10z"),
    FIGURE("M5 21h14v-6h-4v-6h-6v6h-4z M3 5v-2h4 M17 3h4v2"),
    STITCH("M2 15h9v5h-9z M13 15h9v5h-9z M12 4l3 1l1 3l-1 3l-3 1l-3 -1l-1 -3l1 -3z"),
    REMARK("M3 4h18v12h-10l-5 5v-5h-3z M7 9h10 M7 12h6"),
    RECOLOUR("M3 4h12v5h-12z M9 15h12v5h-12z M6 12v5h-3 M18 12v-5h3"),
    MIRROR_DRAW("M12 3v18 M3 10h6v4h-6z M15 10h6v4h-6z"),
    MIRROR_ACROSS("M12 3v18 M9 7l-6 10h6z M15 7l6 10h-6z"),
    MIRROR_OVER("M3 12h18 M7 9l10 -6v6z M7 15l10 6v-6z"),
    REPEAT("M2 8h5v8h-5z M10 8h5v8h-5z M18 8h4 M18 16h4"),
    GATHER("M2 16l4 -8l4 8l4 -8l4 8l4 -8"),
    POINT("M5 3l14 9l-7 1l-3 7z"),
    UNDO("M9 5l-5 5l5 5 M4 10h10l5 3v6"),
    REDO("M15 5l5 5l-5 5 M20 10h-10l-5 3v6"),
    ZOOM_IN("M10 4l4 2l2 4l-2 4l-4 2l-4 -2l-2 -4l2 -4z M15 15l6 6 M10 7v6 M7 10h6"),
    ZOOM_OUT("M10 4l4 2l2 4l-2 4l-4 2l-4 -2l-2 -4l2 -4z M15 15l6 6 M7 10h6"),
    FIT("M4 9v-5h5 M15 4h5v5 M20 15v5h-5 M9 20h-5v-5"),
    SAVE("M5 3h11l4 4v14h-15z M8 3v6h8v-6 M8 21v-7h9v7"),
    ROW_ABOVE("M3 13h18v7h-18z M12 3v7 M9 6h6"),
    ROW_BELOW("M3 4h18v7h-18z M12 14v7 M9 18h6"),
    ROW_AGAIN("M3 4h18v6h-18z M3 14h18v6h-18z"),
    ROW_AWAY("M3 8h18v8h-18z M8 4l8 16 M16 4l-8 16"),
    LEFT("M20 12h-16 M10 6l-6 6l6 6"),
    RIGHT("M4 12h16 M14 6l6 6l-6 6"),
    CLOSE("M6 6l12 12 M18 6l-12 12"),
    LIGHT(
            "M12 8l3 1l1 3l-1 3l-3 1l-3 -1l-1 -3l1 -3z M12 2v3 M12 19v3 M2 12h3 M19 12h3 M5 5l2 2 M17 17l2 2 M5 19l2 -2 M17 7l2 -2"),
    TROUBLE("M12 3l10 18h-20z M12 10v5 M12 17v1"),
    TICK("M4 13l5 5l11 -12");

    private static final String COMMANDS = "Mlhvz";

    private final String path;
    private Path2D lines;

    Sign(String path) {
        this.path = path;
    }

    /** Its lines, read when it is painted for the first time: most signs are not seen at once. */
    private Path2D lines() {
        if (lines == null) {
            lines = parsed(path);
        }
        return lines;
    }

    /** The sign as an icon so many dots wide and high. */
    public Icon icon(int size) {
        return new Drawn(size, null);
    }

    /** The sign in a colour of its own. */
    public Icon icon(int size, Color colour) {
        return new Drawn(size, colour);
    }

    /** Reads moves (M, absolute) and relative lines (l, h, v, z). */
    private static Path2D parsed(String path) {
        Path2D out = new Path2D.Double();
        StringTokenizer tokens = new StringTokenizer(path, " " + COMMANDS, true);
        char command = ' ';
        while (tokens.hasMoreTokens()) {
            String token = tokens.nextToken();
            if (COMMANDS.contains(token)) {
                command = token.charAt(0);
                if (command == 'z') {
                    out.closePath();
                }
            } else if (!token.equals(" ")) {
                double a = Integer.parseInt(token);
                switch (command) {
                    case 'M' -> out.moveTo(a, next(tokens));
                    case 'h' -> line(out, a, 0);
                    case 'v' -> line(out, 0, a);
                    default -> line(out, a, next(tokens));
                }
            }
        }
        return out;
    }

    private static double next(StringTokenizer tokens) {
        String token = tokens.nextToken();
        while (token.equals(" ")) {
            token = tokens.nextToken();
        }
        return Integer.parseInt(token);
    }

    private static void line(Path2D out, double dx, double dy) {
        out.lineTo(out.getCurrentPoint().getX() + dx, out.getCurrentPoint().getY() + dy);
    }

    private final class Drawn implements Icon {
        private final int size;
        private final Color colour;

        Drawn(int size, Color colour) {
            this.size = size;
            this.colour = colour;
        }

        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            PlatePainter.smooth(g);
            Color ink = colour == null ? c.getForeground() : colour;
            g.setColor(c.isEnabled() ? ink : new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 90));
            double zoom = size / 24.0;
            g.translate(x, y);
            g.setStroke(
                    new BasicStroke((float) Math.max(1.3, 1.6 * zoom), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(AffineTransform.getScaleInstance(zoom, zoom).createTransformedShape(lines()));
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return size;
        }

        @Override
        public int getIconHeight() {
            return size;
        }
    }
}
