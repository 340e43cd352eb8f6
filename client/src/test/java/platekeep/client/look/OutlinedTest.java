package platekeep.client.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.client.ui.Thumbnails;
import platekeep.model.look.Mirror;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

class OutlinedTest {
    private static final Dimension SIZE = new Dimension(240, 180);
    private static final int WHITE = 0xFFFFFF;

    /** Cables in two rows at the places 2 and 3, and one elsewhere. */
    private final Plate plate = new Draft("00000000-0000-4000-8000-000000000001", "Dots")
            .palette(Palette.EMPTY.with('b', new Colour("brick", "#A63C2B", 4)))
            .pleats(Optional.of(new Pleats(1, 12)))
            .rows(List.of(
                    Row.of("aa01", "..........."),
                    Row.of("aa02", "..bb......."),
                    Row.of("aa03", "..bb......."),
                    Row.of("aa04", ".........b.")))
            .build();

    private final BufferedImage plain = Thumbnails.draw(plate, SIZE);
    private final BufferedImage outlined =
            new Outlined("c", plate, List.of(new Outlined.Place(1, 2, 2, 2, Mirror.NONE))).drawn(SIZE);
    private final Rectangle2D box = Thumbnails.lie(plate, SIZE).box(1, 2, 2, 2);

    @Test
    void theBoxIsWhereTheCablesAre() {
        // a thread's rim may be one dot wide beyond its place
        Rectangle2D around =
                new Rectangle2D.Double(box.getX() - 1.5, box.getY() - 1.5, box.getWidth() + 3, box.getHeight() + 3);
        for (int y = 0; y < SIZE.height; y++) {
            for (int x = 0; x < SIZE.width; x++) {
                boolean isThread = redder(plain.getRGB(x, y));
                boolean isElsewhere = x > box.getMaxX() + 8;
                assertThat(!isThread || isElsewhere || around.contains(x, y))
                        .as(x + " " + y)
                        .isTrue();
            }
        }
        assertThat(redder(plain.getRGB((int) box.getCenterX(), (int) box.getCenterY())))
                .isTrue();
    }

    /** WCAG 2.1, 1.4.1: what is told by a colour is told otherwise too. Here a black line between white ones does. */
    @Test
    void aDarkLineBesideALightOneRunsAroundItAndItsInsideStaysAsItWas() {
        int y = (int) box.getCenterY();
        int left = (int) Math.round(box.getMinX());
        int darkest = 255;
        int lightest = 0;
        for (int x = left - 4; x <= left + 4; x++) {
            darkest = Math.min(darkest, outlined.getRGB(x, y) >> 8 & 255);
            lightest = Math.max(lightest, outlined.getRGB(x, y) >> 8 & 255);
        }
        assertThat(darkest).isLessThan(70);
        assertThat(lightest).isGreaterThan(240);
        int x = (int) box.getCenterX();
        assertThat(outlined.getRGB(x, y) & WHITE).isEqualTo(plain.getRGB(x, y) & WHITE);
    }

    @Test
    void allAroundIsPaler() {
        int reddest = 0;
        int palest = 0;
        for (int y = 0; y < SIZE.height; y++) {
            for (int x = (int) box.getMaxX() + 10; x < SIZE.width; x++) {
                reddest = Math.max(reddest, redness(plain.getRGB(x, y)));
                palest = Math.max(palest, redness(outlined.getRGB(x, y)));
            }
        }
        assertThat(palest).isLessThan(reddest * 3 / 4);
    }

    private static boolean redder(int rgb) {
        return redness(rgb) > 60;
    }

    private static int redness(int rgb) {
        return (rgb >> 16 & 255) - (rgb & 255);
    }
}
