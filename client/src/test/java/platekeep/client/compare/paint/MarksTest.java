package platekeep.client.compare.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import platekeep.client.compare.chart.ChartPlates;
import platekeep.client.compare.chart.PairedPlates;
import platekeep.client.compare.chart.Sight;
import platekeep.client.compare.chart.Spots;
import platekeep.client.compare.chart.Way;
import platekeep.model.compare.Side;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;

/** What changed can be told on the charts, also by who sees no colours. */
class MarksTest {
    private static final Plate TOWER =
            ChartPlates.plate("r5r5 ...bb...", "r4r4 ..bccb..", "r3r3 ..bnnb..", "r2r2 .bbccbb.", "r1r1 nnnnnnnn");

    /** Two edits that leave the same cables there in the end, so that only the marks can differ. */
    private static final List<PairedPlates> SAME_END = List.of(
            paired(TOWER, TOWER),
            paired(without(2), TOWER),
            paired(ChartPlates.plate(rows("r3r3 ..b..b..")), TOWER),
            paired(ChartPlates.plate(rows("r3r3 ..bbbb..")), TOWER),
            paired(
                    ChartPlates.plate(
                            "r3r3 ..bnnb..", "r5r5 ...bb...", "r4r4 ..bccb..", "r2r2 .bbccbb.", "r1r1 nnnnnnnn"),
                    TOWER));

    private static PairedPlates paired(Plate before, Plate after) {
        return ChartPlates.paired(before, after);
    }

    private static String[] rows(String third) {
        return new String[] {"r5r5 ...bb...", "r4r4 ..bccb..", third, "r2r2 .bbccbb.", "r1r1 nnnnnnnn"};
    }

    private static Plate without(int row) {
        return TOWER.edit()
                .rows(TOWER.rows().stream()
                        .filter(r -> r != TOWER.rows().get(row))
                        .toList())
                .build();
    }

    @Test
    void whatHappenedToTheRowIsToldApartWithoutColour() {
        List<int[]> pictures = SAME_END.stream()
                .map(plates -> grey(picture(plates, Way.SIDE_BY_SIDE, charts -> {}), Side.AFTER))
                .toList();
        assertAllDiffer(pictures, 20);
    }

    @Test
    void theSignsInTheListAreToldApartWithoutColour() {
        List<int[]> pictures = new ArrayList<>();
        for (ChangeSign sign : ChangeSign.values()) {
            BufferedImage image = blank(30, 22);
            Graphics2D g = image.createGraphics();
            sign.paint(g, 3, 0, 22, 20);
            g.dispose();
            pictures.add(grey(image));
        }
        assertAllDiffer(pictures, 8);
    }

    @Test
    void theOutlinesAreToldApartWithoutColour() {
        List<int[]> pictures = new ArrayList<>();
        for (Outline.Manner manner : Outline.Manner.values()) {
            Sight sight = new Sight();
            sight.pane(200, 120);
            sight.content(10, 0, 4);
            BufferedImage image = blank(200, 120);
            Graphics2D g = image.createGraphics();
            Outline outline = new Outline();
            outline.add(1, 2, 6);
            outline.add(2, 3, 7);
            outline.draw(g, sight, manner);
            g.dispose();
            pictures.add(grey(image));
        }
        assertAllDiffer(pictures, 40);
    }

    @ParameterizedTest
    @EnumSource(Way.class)
    void theChosenChangeStandsOut(Way way) {
        PairedPlates plates = SAME_END.get(3);
        Spots spots = Spots.of(plates, plates.comparison().differences().get(0));
        BufferedImage without = picture(plates, way, charts -> {});
        BufferedImage with = picture(plates, way, charts -> charts.point(spots, "row 3"));
        assertThat(differing(grey(without), grey(with))).isGreaterThan(150);
    }

    @Test
    void turnsShowTheOneAndThenTheOther() {
        PairedPlates plates = SAME_END.get(3);
        BufferedImage before = picture(plates, Way.BLINK, charts -> charts.front(Side.BEFORE, "B"));
        BufferedImage after = picture(plates, Way.BLINK, charts -> charts.front(Side.AFTER, "A"));
        assertThat(has(before, 0x1F2C58)).isGreaterThan(0);
        assertThat(has(after, 0x1F2C58)).isGreaterThan(has(before, 0x1F2C58));
    }

    @Test
    void theOverlayShowsWhatIsTheSamePaleAndWhatCameFull() {
        BufferedImage same = picture(SAME_END.get(0), Way.OVERLAY, charts -> {});
        BufferedImage came = picture(SAME_END.get(1), Way.OVERLAY, charts -> {});
        assertThat(has(same, 0x1F2C58)).isZero();
        assertThat(has(came, 0x1F2C58)).isGreaterThan(50);
    }

    @Test
    void aSingleStitchThatCameIsRinged() {
        Plate after = TOWER.edit()
                .marks(List.of(new Mark("french knot", new RowId("r4r4"), "5", 'n', Unknown.NONE)))
                .build();
        PairedPlates plates = paired(TOWER, after);
        Spots spots = Spots.of(plates, plates.comparison().differences().get(0));
        assertThat(spots.has(Side.AFTER, 4.5, 1.5)).isTrue();
        int[] without = grey(picture(paired(TOWER, TOWER), Way.SIDE_BY_SIDE, charts -> {}), Side.BEFORE);
        int[] with = grey(picture(plates, Way.SIDE_BY_SIDE, charts -> {}), Side.BEFORE);
        assertThat(differing(without, with)).as("the side without it").isZero();
    }

    @ParameterizedTest
    @EnumSource(Way.class)
    void onlyTheClipIsPainted(Way way) {
        PairedCharts charts = charts(SAME_END.get(1), way);
        BufferedImage image = blank(WIDTH, HEIGHT);
        Graphics2D g = image.createGraphics();
        g.setClip(300, 100, 80, 60);
        charts.paint(g);
        g.dispose();
        for (int x = 0; x < WIDTH; x++) {
            for (int y = 0; y < HEIGHT; y++) {
                boolean isInside = x >= 300 && x < 380 && y >= 100 && y < 160;
                assertThat(isInside || (image.getRGB(x, y) & 0xFFFFFF) == 0xFFFFFF)
                        .isTrue();
            }
        }
    }

    private static final int WIDTH = 700;
    private static final int HEIGHT = 320;

    private static PairedCharts charts(PairedPlates plates, Way way) {
        PairedCharts charts = new PairedCharts(new PairedCharts.Ears() {
            @Override
            public void clicked(Side side, double pleat, double line) {
                // nobody clicks
            }

            @Override
            public void over(Optional<String> words) {
                // nobody points
            }
        });
        charts.setSize(WIDTH, HEIGHT);
        layOut(charts);
        charts.way(way);
        charts.show(plates);
        return charts;
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private static BufferedImage picture(PairedPlates plates, Way way, Consumer<PairedCharts> then) {
        PairedCharts charts = charts(plates, way);
        then.accept(charts);
        BufferedImage image = blank(WIDTH, HEIGHT);
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, WIDTH, HEIGHT);
        charts.paint(g);
        g.dispose();
        return image;
    }

    private static BufferedImage blank(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }

    private static int[] grey(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** The right or left half of a picture in grey. */
    private static int[] grey(BufferedImage image, Side side) {
        int half = image.getWidth() / 2;
        return grey(image.getSubimage(side == Side.AFTER ? half : 0, 0, half, image.getHeight()));
    }

    /** Luma, 0 to 255, by the weights of ITU-R BT.601. */
    private static int level(int rgb) {
        return (299 * (rgb >> 16 & 255) + 587 * (rgb >> 8 & 255) + 114 * (rgb & 255)) / 1000;
    }

    private static int differing(int[] one, int[] other) {
        int count = 0;
        for (int i = 0; i < one.length; i++) {
            if (Math.abs(level(one[i]) - level(other[i])) > 48) {
                count++;
            }
        }
        return count;
    }

    private static void assertAllDiffer(List<int[]> pictures, int least) {
        for (int i = 0; i < pictures.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(differing(pictures.get(i), pictures.get(j)))
                        .as("dots by which number %d and number %d differ in grey", i, j)
                        .isGreaterThanOrEqualTo(least);
            }
        }
    }

    private static int has(BufferedImage image, int rgb) {
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if ((image.getRGB(x, y) & 0xFFFFFF) == rgb) {
                    count++;
                }
            }
        }
        return count;
    }
}
