package platekeep.client.paper.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.icc.IccDirectory;
import com.drew.metadata.iptc.IptcDirectory;
import com.drew.metadata.jpeg.JpegCommentDirectory;
import com.drew.metadata.png.PngDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.awt.Dimension;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.client.library.LibraryException;

/**
 * What is taken out of pictures and what stays. The pictures are put together after the specifications; what is left in
 * them afterwards is told by metadata-extractor, a library that reads what cameras write.
 */
class PictureFileTest {
    private static Metadata read(byte[] bytes) throws IOException, ImageProcessingException {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
    }

    private static BufferedImage seen(byte[] bytes) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    private static int[] dots(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void aTelephonesPictureDoesNotTellWhereItWasTaken() throws Exception {
        byte[] shot = Shots.telephoneJpeg(64, 48, 6);
        Metadata before = read(shot);
        GpsDirectory gps = before.getFirstDirectoryOfType(GpsDirectory.class);
        assertThat(gps.getGeoLocation().getLatitude()).isEqualTo(50.21);
        assertThat(gps.getGeoLocation().getLongitude()).isEqualTo(-5.48);
        assertThat(before.getFirstDirectoryOfType(IptcDirectory.class).getString(IptcDirectory.TAG_CITY))
                .isEqualTo("Tarrow Quay");
        assertThat(before.getFirstDirectoryOfType(XmpDirectory.class).getXmpProperties())
                .isNotEmpty();
        assertThat(before.containsDirectoryOfType(JpegCommentDirectory.class)).isTrue();

        PictureFile file = PictureFile.of("IMG_2041.jpg", shot);
        Metadata after = read(file.bytes());
        for (var kind :
                List.of(GpsDirectory.class, IptcDirectory.class, XmpDirectory.class, JpegCommentDirectory.class)) {
            assertThat(after.containsDirectoryOfType(kind))
                    .as(kind.getSimpleName())
                    .isFalse();
        }
        Directory left = after.getFirstDirectoryOfType(ExifIFD0Directory.class);
        assertThat(left.getTags())
                .singleElement()
                .satisfies(tag -> assertThat(tag.getTagType()).isEqualTo(ExifIFD0Directory.TAG_ORIENTATION));
        assertThat(left.getInt(ExifIFD0Directory.TAG_ORIENTATION)).isEqualTo(6);
        String text = new String(file.bytes(), StandardCharsets.ISO_8859_1);
        assertThat(text).doesNotContain("Tarrow", "Harbour Works", "GPS", "8BIM", "MPF", "adobe");
        assertThat(dots(seen(file.bytes()))).isEqualTo(dots(seen(shot)));
        assertThat(file.width()).isEqualTo(48);
        assertThat(file.height()).isEqualTo(64);
        assertThat(PictureFile.of("again", file.bytes()).bytes()).isEqualTo(file.bytes());
    }

    @Test
    void whatACameraWritesInTheOtherByteOrderIsReadToo() throws Exception {
        byte[] plain = Shots.written(Shots.sheet(20, 10), "jpg");
        byte[] shot = Shots.jpegWith(
                plain, Shots.segment(0xE1, Shots.text("Exif\0\0"), Shots.exif(ByteOrder.LITTLE_ENDIAN, 8)));
        PictureFile file = PictureFile.of("a.jpg", shot);
        assertThat(file.turn()).isEqualTo(Turn.LEFT);
        assertThat(read(file.bytes()).containsDirectoryOfType(GpsDirectory.class))
                .isFalse();
    }

    @Test
    void aPictureOfACameraThatWritesNoJfifKeepsItsColours() throws Exception {
        BufferedImage sheet = Shots.sheet(32, 32);
        byte[] jfif = Shots.written(sheet, "jpg");
        int first = 2 + 2 + (jfif[4] << 8 | jfif[5]);
        byte[] bare = Shots.jpegWith(
                concat(new byte[] {(byte) 0xFF, (byte) 0xD8}, Arrays.copyOfRange(jfif, first, jfif.length)),
                Shots.segment(0xE1, Shots.text("Exif\0\0"), Shots.exif(ByteOrder.BIG_ENDIAN, 1)));
        PictureFile file = PictureFile.of("a.jpg", bare);
        assertThat(dots(seen(file.bytes()))).isEqualTo(dots(seen(bare))).isEqualTo(dots(seen(jfif)));
        assertThat(read(file.bytes()).containsDirectoryOfType(ExifIFD0Directory.class))
                .isFalse();
    }

    private static byte[] concat(byte[] one, byte[] other) {
        return ByteBuffer.allocate(one.length + other.length)
                .put(one)
                .put(other)
                .array();
    }

    @Test
    void theColourProfileStays() throws Exception {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        byte[] shot = Shots.jpegWith(
                Shots.written(Shots.sheet(16, 16), "jpg"),
                Shots.segment(0xE2, Shots.text("ICC_PROFILE\0"), new byte[] {1, 1}, profile));
        PictureFile file = PictureFile.of("a.jpg", shot);
        assertThat(read(file.bytes()).containsDirectoryOfType(IccDirectory.class))
                .isTrue();
        assertThat(dots(seen(file.bytes()))).isEqualTo(dots(seen(shot)));
    }

    @Test
    void aPngDoesNotTellWhereItWasTakenEither() throws Exception {
        byte[] shot = Shots.pngWith(
                Shots.written(Shots.sheet(30, 20), "png"),
                Shots.chunk("tEXt", Shots.text("Comment\0Tarrow Quay")),
                Shots.chunk("iTXt", Shots.text("XML:com.adobe.xmp\0\0\0\0\0exif:GPSLatitude='50,12.6N'")),
                Shots.chunk("tIME", new byte[] {7, (byte) 0xEA, 3, 2, 9, 0, 0}),
                Shots.chunk("gAMA", new byte[] {0, 0, (byte) 0xB1, (byte) 0x8F}),
                Shots.chunk("eXIf", Shots.exif(ByteOrder.BIG_ENDIAN, 3)));
        assertThat(new String(shot, StandardCharsets.ISO_8859_1)).contains("Tarrow", "GPS");
        assertThat(read(shot).containsDirectoryOfType(GpsDirectory.class)).isTrue();

        PictureFile file = PictureFile.of("a.png", shot);
        Metadata after = read(file.bytes());
        assertThat(after.containsDirectoryOfType(GpsDirectory.class)).isFalse();
        assertThat(after.getFirstDirectoryOfType(ExifIFD0Directory.class).getInt(ExifIFD0Directory.TAG_ORIENTATION))
                .isEqualTo(3);
        assertThat(after.getDirectoriesOfType(PngDirectory.class))
                .extracting(Directory::getName)
                .containsExactlyInAnyOrder("PNG-IHDR", "PNG-gAMA");
        assertThat(new String(file.bytes(), StandardCharsets.ISO_8859_1)).doesNotContain("Tarrow", "GPS", "Harbour");
        assertThat(dots(seen(file.bytes()))).isEqualTo(dots(seen(shot)));
    }

    /** Where the first stored row and the first stored column are seen: EXIF 2.3, 4.6.4 A, tag Orientation. */
    @ParameterizedTest
    @CsvSource({
        "1, top, left", "2, top, right", "3, bottom, right", "4, bottom, left",
        "5, left, top", "6, right, top", "7, right, bottom", "8, left, bottom"
    })
    void aPictureIsSeenUpright(int turn, String row, String column) throws LibraryException {
        BufferedImage stored = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
        stored.setRGB(0, 0, 0xFF0000);
        stored.setRGB(2, 0, 0x00FF00);
        stored.setRGB(0, 1, 0x0000FF);
        byte[] shot = Shots.pngWith(
                Shots.written(stored, "png"), Shots.chunk("eXIf", Shots.exif(ByteOrder.BIG_ENDIAN, turn)));
        PictureFile file = PictureFile.of("a.png", shot);
        BufferedImage seen = Dots.fitted("a.png", file, new Dimension(10, 10));
        assertThat(new Dimension(file.width(), file.height()))
                .isEqualTo(turn < 5 ? new Dimension(3, 2) : new Dimension(2, 3))
                .isEqualTo(new Dimension(seen.getWidth(), seen.getHeight()));
        assertThat(at(seen, row, column)).isEqualTo(0xFF0000);
        assertThat(at(seen, row, opposite(column))).isEqualTo(0x00FF00);
        assertThat(at(seen, opposite(row), column)).isEqualTo(0x0000FF);
    }

    private static int at(BufferedImage image, String one, String other) {
        List<String> sides = List.of(one, other);
        int x = sides.contains("left") ? 0 : image.getWidth() - 1;
        int y = sides.contains("top") ? 0 : image.getHeight() - 1;
        return image.getRGB(x, y) & 0xFFFFFF;
    }

    private static String opposite(String side) {
        return switch (side) {
            case "top" -> "bottom";
            case "bottom" -> "top";
            case "left" -> "right";
            default -> "left";
        };
    }

    @Test
    void aLargeScanIsMadeSmallerUprightAndAPlainOneIsNot() throws Exception {
        byte[] large = Shots.jpegWith(
                Shots.written(Shots.sheet(3600, 2000), "jpg"),
                Shots.segment(0xE1, Shots.text("Exif\0\0"), Shots.exif(ByteOrder.BIG_ENDIAN, 6)));
        PictureFile file = PictureFile.of("a.jpg", large);
        byte[] smaller = Dots.smaller("a.jpg", file).orElseThrow();
        assertThat(smaller.length).isLessThan(file.bytes().length);
        PictureFile made = PictureFile.of("a.jpg", smaller);
        assertThat(made.turn()).isEqualTo(Turn.NONE);
        assertThat(made.bytes()).isEqualTo(smaller);
        assertThat(new Dimension(made.width(), made.height())).isEqualTo(new Dimension(1333, 2400));
        assertThat(read(smaller).containsDirectoryOfType(ExifIFD0Directory.class))
                .isFalse();
        // the first patch lies at the left of the top as stored, so on the right of the top as seen
        int patch = seen(smaller).getRGB((int) (1333 * (1 - 0.17)), (int) (2400 * 0.2));
        assertThat(Math.abs((patch >> 16 & 255) - 0xA6)).isLessThan(12);
        assertThat(Math.abs((patch & 255) - 0x2B)).isLessThan(12);

        PictureFile plain = PictureFile.of("b.png", Shots.written(Shots.sheet(300, 200), "png"));
        assertThat(Dots.smaller("b.png", plain)).isEqualTo(Optional.empty());
    }

    @Test
    void aPictureThatEndsInTheMiddleIsNamed() {
        for (byte[] whole :
                List.of(Shots.written(Shots.sheet(64, 64), "jpg"), Shots.written(Shots.sheet(64, 64), "png"))) {
            byte[] cut = Arrays.copyOf(whole, whole.length * 2 / 3);
            assertThatThrownBy(() -> PictureFile.of("page 7.jpg", cut))
                    .isInstanceOf(LibraryException.class)
                    .hasMessage("\"page 7.jpg\" ends in the middle of the picture; scan it or copy it again.");
        }
    }

    @Test
    void aPngWithADamagedPartIsNamed() {
        byte[] png = Shots.written(Shots.sheet(64, 64), "png");
        png[60] ^= 1;
        assertThatThrownBy(() -> PictureFile.of("a.png", png))
                .isInstanceOf(LibraryException.class)
                .hasMessage("\"a.png\" is damaged; scan it or copy it again.");
    }

    @Test
    void aPictureThatSaysItIsHugeIsNotRead() {
        byte[] png = Shots.written(Shots.sheet(4, 4), "png");
        byte[] header = ByteBuffer.allocate(13).putInt(50_000).putInt(40_000).array();
        System.arraycopy(png, 24, header, 8, 5);
        byte[] huge = png.clone();
        System.arraycopy(Shots.chunk("IHDR", header), 0, huge, 8, 25);
        assertThatThrownBy(() -> PictureFile.of("wall.png", huge))
                .isInstanceOf(LibraryException.class)
                .hasMessageStartingWith("\"wall.png\" is 50000 x 40000 dots large, and at most 120 million");
    }

    @Test
    void whatIsNoPictureIsNamed() {
        assertThatThrownBy(() -> PictureFile.of("list.txt", Shots.text("a list of plates")))
                .isInstanceOf(LibraryException.class)
                .hasMessage("\"list.txt\" is neither a JPEG nor a PNG picture; save it as one of the two.");
    }

    @Test
    void bytesThatWereMangledAreReadOrNamedAndNothingElseHappens() {
        Random random = new Random(20260302);
        byte[] jpeg = Shots.telephoneJpeg(40, 30, 5);
        byte[] png = Shots.pngWith(
                Shots.written(Shots.sheet(40, 30), "png"), Shots.chunk("eXIf", Shots.exif(ByteOrder.BIG_ENDIAN, 7)));
        int named = 0;
        for (int i = 0; i < 4000; i++) {
            byte[] mangled = (i % 2 == 0 ? jpeg : png).clone();
            for (int n = 0; n <= random.nextInt(4); n++) {
                mangled[random.nextInt(Math.min(mangled.length, 700))] = (byte) random.nextInt(256);
            }
            try {
                PictureFile file = PictureFile.of("a", mangled);
                Dots.fitted("a", file, new Dimension(20, 20));
            } catch (LibraryException e) {
                assertThat(e.getMessage()).startsWith("\"a\" ").endsWith(".");
                named++;
            }
        }
        assertThat(named).isBetween(500, 3900);
    }
}
