package platekeep.client.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import platekeep.client.ui.Look;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.Thumbnails;
import platekeep.model.look.Mirror;
import platekeep.model.plate.Plate;

/**
 * A plate with places in it that were found: each in a double line, dark beside light so that it stands out from every
 * thread, and all around them paler.
 *
 * @param content the id of its content
 * @param places at least one
 */
record Outlined(String content, Plate plate, List<Place> places) implements PictureSource {
    private static final int VEIL = 120;
    private static final float LINE = 1.5f;

    /**
     * A box of cables.
     *
     * @param row the uppermost one, top row 0
     * @param index of its leftmost cables, from 0
     * @param height in rows
     * @param width in cables
     * @param mirror how what was found lies in it
     */
    record Place(int row, int index, int height, int width, Mirror mirror) {}

    Outlined {
        places = List.copyOf(places);
    }

    @Override
    public String key() {
        return content + " " + places.hashCode();
    }

    @Override
    public BufferedImage fitted(Dimension into) {
        return drawn(into);
    }

    @Override
    public BufferedImage drawn(Dimension size) {
        BufferedImage picture = Thumbnails.draw(plate, size);
        Thumbnails.Lie lie = Thumbnails.lie(plate, size);
        Area around = new Area(new Rectangle2D.Double(0, 0, size.width, size.height));
        Area lines = new Area();
        for (Place place : places) {
            Rectangle2D box = lie.box(place.row(), place.index(), place.height(), place.width());
            around.subtract(new Area(box));
            lines.add(new Area(box));
        }
        Graphics2D g = picture.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Color cloth = new Color(Look.cloth());
        g.setColor(new Color(cloth.getRed(), cloth.getGreen(), cloth.getBlue(), VEIL));
        g.fill(around);
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(3 * LINE));
        g.draw(lines);
        g.setColor(Color.BLACK);
        g.setStroke(new BasicStroke(LINE));
        g.draw(lines);
        g.dispose();
        return picture;
    }
}
