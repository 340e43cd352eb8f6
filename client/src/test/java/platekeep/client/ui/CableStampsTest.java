package platekeep.client.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

class CableStampsTest {
    private static final Drawing DRAWING = Drawing.of(new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Small")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4)))
            .pleats(Optional.of(new Pleats(1, 7)))
            .rows(List.of(Row.of("r3r3", ".bccb."), Row.of("r2r2", "bb.bbc"), Row.of("r1r1", "cbcbcb")))
            .build());

    /** Scales and the zooms of ordinary and of finer screens; a stamped dot may differ by rounding once more. */
    @ParameterizedTest
    @CsvSource({"4, 1", "7, 1", "14, 1", "40, 1", "4, 2", "8, 2", "14, 2", "20, 3", "8, 1.5"})
    void stampedCablesHaveTheDotsOfDrawnOnes(int pleat, double zoom) {
        ChartScale scale = ChartScale.whole(pleat);
        assertThat(CableStamps.serve(AffineTransform.getScaleInstance(zoom, zoom)))
                .isTrue();
        BufferedImage stamped = image(scale, zoom);
        Graphics2D g = graphics(stamped, zoom);
        CableStamps.of(null, g.getTransform(), scale).paint(g, DRAWING, new int[] {0, 2}, new int[] {0, 5});
        BufferedImage drawn = image(scale, zoom);
        Graphics2D d = graphics(drawn, zoom);
        for (int row = 0; row < 3; row++) {
            PlatePainter.paintRow(d, DRAWING, row, scale, scale.top(row));
        }
        for (int y = 0; y < drawn.getHeight(); y++) {
            for (int x = 0; x < drawn.getWidth(); x++) {
                assertThat(apart(stamped.getRGB(x, y), drawn.getRGB(x, y)))
                        .as("dot %d, %d", x, y)
                        .isLessThanOrEqualTo(4);
            }
        }
    }

    private static BufferedImage image(ChartScale scale, double zoom) {
        return new BufferedImage(
                (int) Math.ceil(scale.left(7) * zoom) + 9,
                (int) Math.ceil(scale.top(3) * zoom) + 5,
                BufferedImage.TYPE_INT_RGB);
    }

    private static Graphics2D graphics(BufferedImage image, double zoom) {
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(0xFCFDFD));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        PlatePainter.smooth(g);
        g.translate(6, 3);
        g.scale(zoom, zoom);
        return g;
    }

    private static int apart(int one, int other) {
        int most = 0;
        for (int shift : new int[] {0, 8, 16}) {
            most = Math.max(most, Math.abs((one >> shift & 255) - (other >> shift & 255)));
        }
        return most;
    }

    @Test
    void turnedAndShearedCablesAreNotStamped() {
        assertThat(CableStamps.serve(AffineTransform.getRotateInstance(0.1))).isFalse();
        assertThat(CableStamps.serve(AffineTransform.getShearInstance(0.1, 0))).isFalse();
        assertThat(CableStamps.serve(AffineTransform.getScaleInstance(1, 2))).isFalse();
    }
}
