package platekeep.client.plate.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.LibraryException;
import platekeep.client.plate.Charted;
import platekeep.model.draw.Drawing;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

class PictureTest {
    private static final String ID = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";

    @TempDir
    private Path folder;

    private static Plate plate(PictureFit fit, Picture picture) {
        return fit.plate(picture, ID, "Picture", new Random(1));
    }

    private static PictureFit fit(int pleats, int rows, int colours, int least, PictureFit.Ground ground) {
        return new PictureFit(pleats, rows, colours, Optional.empty(), least, ground);
    }

    /** White ground with a red disc in the middle. */
    private static BufferedImage disc(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setColor(new Color(0xC02020));
        g.fillOval(width / 4, height / 4, width / 2, height / 2);
        g.dispose();
        return image;
    }

    /**
     * A cable covers two pleats and half a row, an up cable the upper half (trade drawing, common practice, no source): a
     * picture whose dots are these places comes out dot by dot.
     */
    @Test
    void eachCableTakesTheColourOfTheVeryPlaceThatItCovers() {
        Plate pattern = Charted.of("abab", "bbaa", "abba");
        Drawing drawing = Drawing.of(pattern.edit()
                .starts(java.util.List.of(
                        new platekeep.model.plate.Start(Charted.id(2), 1, platekeep.model.plate.CableKind.DOWN)))
                .build());
        int width = 5 * 4;
        int height = 3 * 6;
        int[] dots = new int[width * height];
        Arrays.fill(dots, 0xFFFFFF);
        for (int row = 0; row < 3; row++) {
            for (int i = 0; i < 4; i++) {
                boolean up = drawing.kind(row, i) == platekeep.model.plate.CableKind.UP;
                for (int y = row * 6 + (up ? 0 : 3); y < row * 6 + (up ? 3 : 6); y++) {
                    for (int x = i * 4; x < i * 4 + 8; x++) {
                        dots[y * width + x] = drawing.rgb(row, i);
                    }
                }
            }
        }
        Palette palette = pattern.palette();
        PictureFit fit = new PictureFit(5, 3, 1, Optional.of(palette), 1, PictureFit.Ground.WORKED);
        assertThat(Charted.cells(plate(fit, new Picture(width, height, dots)))).isEqualTo(Charted.cells(pattern));
    }

    @Test
    void aDiscIsRoundOnTheClothAndItsGroundIsLeftOut() {
        Picture picture = PictureFile.dots(disc(600, 600));
        int rows = PictureFit.rowsFor(picture, 61);
        assertThat(rows).as("a row is 1.9 pleats high").isEqualTo(32);
        Plate plate = plate(fit(61, rows, 2, 3, PictureFit.Ground.LEFT_OUT), picture);
        assertThat(plate.palette().entries().values())
                .singleElement()
                .satisfies(colour -> assertThat(colour.rgb()).isEqualTo(0xC02020));
        int widest = plate.rows().stream()
                .mapToInt(row ->
                        (int) row.cells().chars().filter(c -> c != Row.EMPTY).count())
                .max()
                .orElseThrow();
        long high = plate.rows().stream().filter(row -> !row.isBlank()).count();
        assertThat(widest + 1).isBetween(29, 33);
        assertThat(high * 1.9).isBetween(28.0, 33.0);
    }

    @Test
    void thePicturesColoursAreReducedToThoseAskedFor() {
        BufferedImage image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(5);
        int[] bases = {0xC02020, 0x20A040, 0x2040C0};
        for (int y = 0; y < 100; y++) {
            for (int x = 0; x < 100; x++) {
                image.setRGB(x, y, bases[x * 3 / 100] + random.nextInt(6) * 0x010101);
            }
        }
        Plate plate = plate(fit(41, 20, 3, 1, PictureFit.Ground.WORKED), PictureFile.dots(image));
        assertThat(plate.palette().entries()).hasSize(3);
        assertThat(plate.rows())
                .allSatisfy(row ->
                        assertThat(row.cells().chars().distinct().count()).isEqualTo(3));
    }

    @Test
    void aPaletteIsKeptTo() {
        Palette palette = Palette.EMPTY
                .with('r', new Colour("russet", "#A63C2B", 4))
                .with('w', new Colour("white", "#FFFFFF", 4));
        PictureFit fit = new PictureFit(31, 16, 8, Optional.of(palette), 1, PictureFit.Ground.WORKED);
        Plate plate = plate(fit, PictureFile.dots(disc(120, 120)));
        assertThat(plate.palette()).isEqualTo(palette);
        assertThat(plate.rows().get(8).cells())
                .startsWith("www")
                .contains("rrrr")
                .endsWith("www");
    }

    @Test
    void whatOneCanSeeThroughIsNotWorked() throws IOException {
        BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < 20; x++) {
                image.setRGB(x, y, 0xFF3366AA);
            }
        }
        Path file = folder.resolve("half.png");
        ImageIO.write(image, "png", file.toFile());
        Plate plate = plate(fit(11, 3, 4, 1, PictureFit.Ground.WORKED), readable(file));
        assertThat(plate.rows())
                .allSatisfy(row -> assertThat(row.cells()).startsWith("aaaa").endsWith("...."));
    }

    private static Picture readable(Path file) {
        try {
            return PictureFile.read(file);
        } catch (LibraryException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void jpegIsReadToo() throws IOException {
        Path file = folder.resolve("disc.jpg");
        ImageIO.write(disc(200, 100), "jpg", file.toFile());
        assertThat(readable(file).width()).isEqualTo(200);
    }

    /** The measures stand in the first chunk of a PNG file (RFC 2083, 4.1.1), so nothing else need be there. */
    @Test
    void aHugePictureIsRefusedByItsMeasuresAlone() throws IOException {
        Path file = Files.write(folder.resolve("huge.png"), pngHeader(30_000, 30_000));
        assertThatThrownBy(() -> PictureFile.read(file))
                .isInstanceOf(LibraryException.class)
                .hasMessageStartingWith("\"huge.png\" is 30000 x 30000 dots large; at most 60 million");
    }

    static byte[] pngHeader(int width, int height) throws IOException {
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(chunk);
        out.write("IHDR".getBytes(StandardCharsets.US_ASCII));
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(chunk.toByteArray());
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        DataOutputStream all = new DataOutputStream(file);
        all.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        all.writeInt(13);
        all.write(chunk.toByteArray());
        all.writeInt((int) sum.getValue());
        return file.toByteArray();
    }

    @Test
    void whatIsNoPictureOrBrokenIsRefusedWithASentence() throws IOException {
        Path text = Files.writeString(folder.resolve("words.png"), "no picture at all");
        assertThatThrownBy(() -> PictureFile.read(text)).hasMessageContaining("is no picture that can be read");
        Path broken = Files.write(folder.resolve("broken.png"), pngHeader(100, 100));
        assertThatThrownBy(() -> PictureFile.read(broken)).hasMessageContaining("is damaged");
        assertThatThrownBy(() -> PictureFile.read(folder.resolve("none.png"))).hasMessageContaining("is no file");
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        ImageIO.write(disc(300, 300), "jpg", whole);
        byte[] mangled = whole.toByteArray();
        new Random(3).nextBytes(mangled);
        Path noise = Files.write(folder.resolve("noise.jpg"), mangled);
        assertThatThrownBy(() -> PictureFile.read(noise)).isInstanceOf(LibraryException.class);
    }
}
