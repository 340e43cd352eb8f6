package platekeep.client.ui;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import platekeep.model.plate.Plate;

/**
 * A plate as the finished work on its cloth.
 *
 * @param content the id of its content
 */
public record PlateSource(String content, Plate plate) implements PictureSource {
    @Override
    public String key() {
        return content;
    }

    @Override
    public BufferedImage fitted(Dimension into) {
        return Thumbnails.draw(plate, into);
    }

    @Override
    public BufferedImage drawn(Dimension size) {
        return Thumbnails.draw(plate, size);
    }
}
