package platekeep.client.plate.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.plate.Charted;
import platekeep.client.room.TestRoom;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Draft;

class PicturePresenterTest {
    private static final Drawing DRAWING = Drawing.of(Charted.of("aabb", "bbaa", "abab"));

    @TempDir
    private Path folder;

    private TestRoom test;
    private PictureView.Wanted wanted = new PictureView.Wanted(Format.CHART_DOTS, 12);
    private Optional<Path> file = Optional.empty();
    private String name = "";

    @BeforeEach
    void openARoom() {
        test = new TestRoom(folder);
        test.open();
    }

    @AfterEach
    void forgetTheTheme() {
        UIManager.put("Platekeep.paper", null);
    }

    private void keep(Drawing drawing) {
        new PicturePresenter(test.room, new PictureView() {
                    @Override
                    public Optional<Wanted> ask(Drawing asked) {
                        return Optional.of(wanted);
                    }

                    @Override
                    public Optional<Path> askFile(String newName) {
                        name = newName;
                        return file;
                    }
                })
                .keep(drawing);
    }

    /** On light paper although the window is dark; the middle of each cable has its colour. */
    @Test
    void aChartIsKeptAsDots() throws IOException {
        UIManager.put("Platekeep.paper", Color.BLACK);
        file = Optional.of(folder.resolve("small"));
        keep(DRAWING);
        BufferedImage image = ImageIO.read(folder.resolve("small.png").toFile());
        ChartScale scale = ChartScale.whole(12);
        for (int row = 0; row < 3; row++) {
            for (int i : new int[] {0, 3}) {
                double x = 44 + scale.left(i) + scale.cable() / 2;
                double y = 28 - Math.floor(scale.top(DRAWING.top())) + scale.top(row, DRAWING.kind(row, i)) + 5;
                assertThat(image.getRGB((int) x, (int) y) & 0xFFFFFF).isEqualTo(DRAWING.rgb(row, i));
            }
        }
        assertThat(image.getRGB(2, 2) & 0xFFFFFF).isEqualTo(0xFCFDFD);
        assertThat(name).isEqualTo("charted.png");
        assertThat(Files.list(folder).filter(f -> f.toString().endsWith(".new")))
                .isEmpty();
    }

    @Test
    void theClothAndTheLinesAreKeptToo() throws IOException {
        wanted = new PictureView.Wanted(Format.CLOTH_DOTS, 8);
        file = Optional.of(folder.resolve("cloth.png"));
        keep(DRAWING);
        assertThat(ImageIO.read(file.get().toFile()).getWidth()).isEqualTo(5 * 8 + 88);
        wanted = new PictureView.Wanted(Format.CHART_LINES, 8);
        file = Optional.of(folder.resolve("lines.svg"));
        keep(DRAWING);
        assertThat(Files.readString(file.get())).startsWith("<svg ").contains("Charted");
    }

    @Test
    void whatIsTooLargeIsToldBeforeAFileIsAskedFor() {
        String row = "a".repeat(2000);
        String[] rows = new String[200];
        java.util.Arrays.fill(rows, row);
        Drawing large = Drawing.of(Charted.of(rows));
        wanted = new PictureView.Wanted(Format.CHART_DOTS, 64);
        keep(large);
        wanted = new PictureView.Wanted(Format.CHART_LINES, 8);
        keep(large);
        assertThat(test.front.troubles).hasSize(2).allSatisfy(t -> assertThat(t).endsWith("nothing was written."));
        assertThat(name).isEmpty();
    }

    @Test
    void aPlaceThatCannotBeWrittenIsTold() throws IOException {
        Files.writeString(folder.resolve("no-folder"), "a file");
        file = Optional.of(folder.resolve("no-folder").resolve("x.png"));
        keep(DRAWING);
        assertThat(test.front.troubles).hasSize(1).first().asString().contains("\"x.png\" could not be written");
    }

    @Test
    void aPlateWithoutAChartHasNoPicture() {
        keep(Drawing.of(new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Scan").build()));
        assertThat(test.front.troubles).hasSize(1);
    }
}
