package platekeep.client.many;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import platekeep.client.ui.Thumbnails;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** What a small picture costs on one core, beside the cheapest picture there could be and the usual way to draw one. */
final class PictureFigures {
    private static final Dimension SIZE = new Dimension(240, 180);
    private static final int TURNS = 15;

    private final List<Plate> plates;
    private final Consumer<Figure> told;

    /**
     * @param plates of about the size of a real one, 96 by 40
     */
    PictureFigures(List<Plate> plates, Consumer<Figure> told) {
        this.plates = plates;
        this.told = told;
    }

    void measure() throws Exception {
        for (int i = 0; i < 15; i++) {
            thumbnails();
            cells();
            shapes();
        }
        double[] cells = Figure.onOneCore(TURNS, this::thumbnails, this::cells);
        double[] shapes = Figure.onOneCore(TURNS, this::thumbnails, this::shapes);
        double one = cells[0] / plates.size();
        told.accept(Figure.beside("a small picture, 240 x 180", one, "nearest-cell fill", cells[1] / plates.size(), 2));
        told.accept(Figure.beside(
                "the same", shapes[0] / plates.size(), "antialiased shapes", shapes[1] / plates.size(), 0.125));
        told.accept(Figure.beside("small pictures a second on one core (more is better)", 1000 / one, "", 0, 0));
    }

    private void thumbnails() {
        plates.forEach(plate -> Thumbnails.draw(plate, SIZE));
    }

    private void cells() {
        plates.forEach(PictureFigures::cells);
    }

    private void shapes() {
        plates.forEach(PictureFigures::shapes);
    }

    /** Each dot takes the colour of the cell that lies under it. */
    private static BufferedImage cells(Plate plate) {
        int[] rgb = new int[128];
        plate.palette().entries().forEach((key, colour) -> rgb[key] = colour.rgb());
        rgb[Row.EMPTY] = 0xD8DDE2;
        int[] pixels = new int[SIZE.width * SIZE.height];
        int positions = plate.positions();
        int rows = plate.rows().size();
        for (int y = 0; y < SIZE.height; y++) {
            String cells = plate.rows().get(y * rows / SIZE.height).cells();
            for (int x = 0; x < SIZE.width; x++) {
                pixels[y * SIZE.width + x] = rgb[cells.charAt(x * positions / SIZE.width)];
            }
        }
        BufferedImage image = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        image.getRaster().setDataElements(0, 0, SIZE.width, SIZE.height, pixels);
        return image;
    }

    /** Each cable is a rounded bar, drawn by the graphics library. */
    private static BufferedImage shapes(Plate plate) {
        BufferedImage image = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(0xD8DDE2));
        g.fillRect(0, 0, SIZE.width, SIZE.height);
        Drawing drawing = Drawing.of(plate);
        ChartScale scale = ChartScale.fitting(drawing.pleats(), drawing.height(), SIZE.width, SIZE.height);
        RoundRectangle2D bar = new RoundRectangle2D.Double();
        for (int row = 0; row < drawing.rows(); row++) {
            for (int i = 0; i < drawing.positions(); i++) {
                int rgb = drawing.rgb(row, i);
                if (rgb != Drawing.NOTHING) {
                    double y = scale.top(row, drawing.kind(row, i));
                    bar.setRoundRect(scale.left(i), y, scale.cable(), scale.half(), scale.half(), scale.half());
                    g.setColor(new Color(rgb));
                    g.fill(bar);
                }
            }
        }
        g.dispose();
        return image;
    }
}
