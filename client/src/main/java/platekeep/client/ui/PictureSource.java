package platekeep.client.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** Something that can be seen as a picture; drawing it takes time. Two that are equal give the same picture. */
public interface PictureSource {

    /** Tells it from all others; the same for the same content. */
    String key();

    /** The picture fitted into a size, at most as large; what cannot be shown gives a picture that says so. */
    BufferedImage fitted(Dimension into);

    /** The picture in the middle of a ground of just this size. */
    default BufferedImage drawn(Dimension size) {
        int air = Math.max(2, size.height / 24);
        BufferedImage inside =
                fitted(new Dimension(Math.max(1, size.width - 2 * air), Math.max(1, size.height - 2 * air)));
        BufferedImage whole = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = whole.createGraphics();
        g.setColor(new Color(Look.cloth()));
        g.fillRect(0, 0, size.width, size.height);
        int x = (size.width - inside.getWidth()) / 2;
        int y = (size.height - inside.getHeight()) / 2;
        g.setColor(new Color(0, 0, 0, 40));
        g.fillRect(x + 2, y + 2, inside.getWidth(), inside.getHeight());
        g.drawImage(inside, x, y, null);
        g.dispose();
        return whole;
    }
}
