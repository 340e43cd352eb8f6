package platekeep.client.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** All painters show the same picture: at the middle of each cable its colour, nearer than any other of the palette. */
class PaintersTest {
    private static final Plate PLATE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Test")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('y', new Colour("yellow", "#E9B83C", 4))
                    .with('n', new Colour("navy", "#1F2C58", 4))
                    .with('g', new Colour("leaf", "#2F7A3A", 4)))
            .pleats(Optional.of(new Pleats(1, 9)))
            .rows(List.of(
                    Row.of("r4r4", "bbyynngg"),
                    Row.of("r3r3", "gbbyynng"),
                    Row.of("r2r2", "ggbb.ynn"),
                    Row.of("r1r1", "ngbbyyn.")))
            .starts(List.of(new Start(new RowId("r1r1"), 1, CableKind.DOWN)))
            .build();

    private final Drawing drawing = Drawing.of(PLATE);

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 8, 13, 20, 34})
    void theChartShowsEachCableInItsColour(int pleat) {
        ChartScale scale = ChartScale.whole(pleat);
        assertCables(painted(scale, PlatePainter.View.CHART), scale, 0, 0);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 8, 13, 20, 34})
    void theClothShowsEachCableInItsColour(int pleat) {
        ChartScale scale = ChartScale.whole(pleat);
        assertCables(painted(scale, PlatePainter.View.CLOTH), scale, 0, 0);
    }

    /**
     * The screens that are about: one dot to a unit, and finer ones at 1.25, 1.5 and 2. Every zoom, and both views: the
     * dot at the middle of each cable's place by the geometry has that cable's colour.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void everyCableLiesWhereTheGeometrySaysAtEveryZoomOnEveryScreen(double screen) {
        for (int pleat : new int[] {1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 17, 20, 24, 28, 34, 40, 48, 64}) {
            ChartScale scale = ChartScale.whole(pleat);
            ChartScale dots = new ChartScale(scale.pleat() * screen, scale.half() * screen);
            assertCables(painted(scale, PlatePainter.View.CHART, screen), dots, 3 * screen, 5 * screen);
            if (pleat > 1) {
                assertCables(painted(scale, PlatePainter.View.CLOTH, screen), dots, 3 * screen, 5 * screen);
            }
        }
    }

    /** Seen so small that it has no outline, a bar is all the dots nearest to its place and none beside them. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void smallBarsFillJustTheDotsNearestToTheirPlaces(double screen) {
        for (int pleat : new int[] {1, 2, 3}) {
            ChartScale scale = ChartScale.whole(pleat);
            BufferedImage image = painted(scale, PlatePainter.View.CHART, screen);
            for (int row = 0; row < drawing.rows(); row++) {
                for (int i = 0; i < drawing.positions(); i++) {
                    if (drawing.rgb(row, i) != Drawing.NOTHING && Math.abs(i + 1 - drawing.pleats() / 2.0) > 2) {
                        double top = (5 + scale.top(row, drawing.kind(row, i))) * screen;
                        assertFilled(
                                image,
                                new int[] {dot((3 + scale.left(i)) * screen), dot((3 + scale.left(i + 2)) * screen)},
                                new int[] {dot(top), dot(top + scale.half() * screen)},
                                drawing.rgb(row, i));
                    }
                }
            }
        }
    }

    private static int dot(double edge) {
        return (int) Math.rint(edge);
    }

    private static void assertFilled(BufferedImage image, int[] across, int[] down, int rgb) {
        for (int y = down[0]; y < down[1]; y++) {
            for (int x = across[0]; x < across[1]; x++) {
                assertThat(image.getRGB(x, y) & 0xFFFFFF).as("dot %d, %d", x, y).isEqualTo(rgb);
            }
        }
    }

    /** On a finer screen, with the chart's corner a little way into the picture. */
    private BufferedImage painted(ChartScale scale, PlatePainter.View way, double screen) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil((scale.left(drawing.pleats()) + 6) * screen),
                (int) Math.ceil((scale.top(drawing.rows()) + 10) * screen),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(screen, screen);
        g.translate(3, 5);
        g.setClip(-3, -5, (int) scale.left(drawing.pleats()) + 6, (int) scale.top(drawing.rows()) + 10);
        new PlatePainter().paint(g, drawing, scale, way);
        g.dispose();
        return image;
    }

    @Test
    void theSmallPictureShowsEachCableInItsColour() {
        Dimension size = new Dimension(90, 80);
        BufferedImage image = Thumbnails.draw(PLATE, size);
        ChartScale scale = ChartScale.exact(7);
        double x = (size.width - scale.left(drawing.pleats())) / 2;
        double y = (size.height - scale.top(drawing.rows())) / 2;
        assertCables(image, scale, x, y);
    }

    @Test
    void onlyTheClipIsPainted() {
        ChartScale scale = ChartScale.whole(10);
        BufferedImage image = new BufferedImage(120, 120, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setClip(20, 10, 30, 20);
        new PlatePainter().paint(g, drawing, scale, PlatePainter.View.CLOTH);
        new PlatePainter().paint(g, drawing, scale, PlatePainter.View.CHART);
        g.dispose();
        for (int i = 0; i < 120; i++) {
            for (int j = 0; j < 120; j++) {
                boolean inside = i >= 20 && i < 50 && j >= 10 && j < 30;
                assertThat((image.getRGB(i, j) & 0xFFFFFF) != 0).isEqualTo(inside);
            }
        }
    }

    @Test
    void aPartPaintedAnewLooksAsItDidBefore() {
        ChartScale scale = ChartScale.whole(11);
        BufferedImage whole = painted(scale, PlatePainter.View.CLOTH);
        BufferedImage part = painted(scale, PlatePainter.View.CLOTH);
        Graphics2D g = part.createGraphics();
        g.setClip(13, 7, 40, 31);
        new PlatePainter().paint(g, drawing, scale, PlatePainter.View.CLOTH);
        g.dispose();
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < whole.getWidth(); x++) {
                assertThat(part.getRGB(x, y)).isEqualTo(whole.getRGB(x, y));
            }
        }
    }

    @Test
    void theMemoryForPicturesIsBounded() {
        Thumbnails few = new Thumbnails(3 * 40 * 30 * 4);
        for (int i = 0; i < 10; i++) {
            few.of("content " + i, PLATE, new Dimension(40, 30));
        }
        assertThat(few.size()).isEqualTo(3);
        assertThat(few.ready("content 9", new Dimension(40, 30))).isPresent();
        assertThat(few.ready("content 0", new Dimension(40, 30))).isEmpty();
    }

    private BufferedImage painted(ChartScale scale, PlatePainter.View way) {
        BufferedImage image = new BufferedImage(
                (int) scale.left(drawing.pleats()), (int) scale.top(drawing.rows()), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, image.getWidth(), image.getHeight());
        new PlatePainter().paint(g, drawing, scale, way);
        g.dispose();
        return image;
    }

    private void assertCables(BufferedImage image, ChartScale scale, double left, double top) {
        for (int row = 0; row < drawing.rows(); row++) {
            for (int i = 0; i < drawing.positions(); i++) {
                int rgb = drawing.rgb(row, i);
                if (rgb != Drawing.NOTHING && !isOnCentre(i)) {
                    double x = left + scale.left(i) + scale.cable() / 2;
                    double y = top + scale.top(row, drawing.kind(row, i)) + scale.half() / 2;
                    assertThat(nearest(image.getRGB((int) x, (int) y)))
                            .as("row %d, position %d", row, i)
                            .isEqualTo(rgb);
                }
            }
        }
    }

    /** The centre line of a chart of nine pleats runs over the middle of these cables. */
    private boolean isOnCentre(int index) {
        return Math.abs(index + 1 - drawing.pleats() / 2.0) < 1;
    }

    private static int nearest(int seen) {
        Color a = new Color(seen);
        return PLATE.palette().entries().values().stream()
                .map(colour -> new Color(colour.rgb()))
                .min((c, d) -> Integer.compare(distance(a, c), distance(a, d)))
                .map(colour -> colour.getRGB() & 0xFFFFFF)
                .orElseThrow();
    }

    private static int distance(Color a, Color b) {
        int r = a.getRed() - b.getRed();
        int g = a.getGreen() - b.getGreen();
        int bl = a.getBlue() - b.getBlue();
        return r * r + g * g + bl * bl;
    }
}
