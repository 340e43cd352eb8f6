package platekeep.client.many;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import platekeep.model.draw.ChartScale;
import platekeep.model.plate.Row;

/** A chart being drawn: a grid of cells under shapes whose measures are pleats across and down. */
final class Sheet {
    private final char[][] cells;

    Sheet(int rows, int positions) {
        cells = new char[rows][positions];
        for (char[] row : cells) {
            Arrays.fill(row, Row.EMPTY);
        }
    }

    static Sheet of(List<String> rows) {
        Sheet sheet = new Sheet(rows.size(), rows.get(0).length());
        for (int r = 0; r < rows.size(); r++) {
            sheet.cells[r] = rows.get(r).toCharArray();
        }
        return sheet;
    }

    int positions() {
        return cells[0].length;
    }

    /** How high it is, in pleats. */
    double height() {
        return cells.length * ChartScale.ROW_TO_PLEAT;
    }

    List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (char[] row : cells) {
            rows.add(new String(row));
        }
        return rows;
    }

    /** Fills what lies under a shape. */
    void fill(Shape shape, char key) {
        Rectangle2D box = shape.getBounds2D();
        int top = Math.max(0, (int) Math.floor(box.getMinY() / ChartScale.ROW_TO_PLEAT));
        int bottom = Math.min(cells.length - 1, (int) Math.ceil(box.getMaxY() / ChartScale.ROW_TO_PLEAT));
        int left = Math.max(0, (int) Math.floor(box.getMinX()));
        int right = Math.min(positions() - 1, (int) Math.ceil(box.getMaxX()));
        for (int r = top; r <= bottom; r++) {
            for (int i = left; i <= right; i++) {
                if (shape.contains(i + 0.5, (r + 0.5) * ChartScale.ROW_TO_PLEAT)) {
                    cells[r][i] = key;
                }
            }
        }
    }

    /** Whether nothing lies in a box yet. */
    boolean isFree(Rectangle2D box) {
        for (int r = 0; r < cells.length; r++) {
            for (int i = 0; i < positions(); i++) {
                if (cells[r][i] != Row.EMPTY && box.contains(i + 0.5, (r + 0.5) * ChartScale.ROW_TO_PLEAT)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A brush for a box of the sheet, in which things are placed by parts of it: 0 to 1 across and down. */
    Brush brush(Rectangle2D box, boolean mirrored) {
        AffineTransform place = AffineTransform.getTranslateInstance(box.getX(), box.getY());
        place.scale(box.getWidth(), box.getHeight());
        if (mirrored) {
            place.translate(1, 0);
            place.scale(-1, 1);
        }
        return new Brush(this, place);
    }

    /** Paints in a box of a sheet. */
    record Brush(Sheet sheet, AffineTransform place) {

        Brush box(char key, double x, double y, double width, double height) {
            sheet.fill(place.createTransformedShape(new Rectangle2D.Double(x, y, width, height)), key);
            return this;
        }

        Brush oval(char key, double x, double y, double across, double down) {
            Shape oval = new Ellipse2D.Double(x - across, y - down, 2 * across, 2 * down);
            sheet.fill(place.createTransformedShape(oval), key);
            return this;
        }

        /** A filled outline through points given as x and y in turn. */
        Brush outline(char key, double... points) {
            Path2D path = new Path2D.Double();
            path.moveTo(points[0], points[1]);
            for (int i = 2; i < points.length; i += 2) {
                path.lineTo(points[i], points[i + 1]);
            }
            path.closePath();
            sheet.fill(place.createTransformedShape(path), key);
            return this;
        }
    }
}
