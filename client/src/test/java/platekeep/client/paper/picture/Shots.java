package platekeep.client.paper.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/**
 * Pictures as cameras and scanners write them, put together byte by byte after EXIF 2.3 (4.5.4 and 4.6), the JPEG and the
 * PNG specification.
 */
public final class Shots {
    private Shots() {}

    /** A sheet of paper with a few patches of colour. */
    public static BufferedImage sheet(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(0xF4F1E8));
        g.fillRect(0, 0, width, height);
        int[] threads = {0xA63C2B, 0xE9B83C, 0x2C5F86, 0x4F7A3A};
        for (int i = 0; i < 4; i++) {
            g.setColor(new Color(threads[i]));
            g.fillRect(width / 8 + i * width / 5, height / 8 + i * height / 6, width / 6, height / 10);
        }
        g.dispose();
        return image;
    }

    public static byte[] written(BufferedImage image, String format) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, format, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** 50 degrees 12' 36" north, 5 degrees 28' 48" west, as a camera says it; with its maker and which way up. */
    static byte[] exif(ByteOrder order, int turn) {
        ByteBuffer b = ByteBuffer.allocate(256).order(order);
        b.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        b.putShort((short) 42).putInt(8);
        // the first directory: Make 0x010F, Orientation 0x0112, the pointer to GPS 0x8825 (4.6.3)
        b.putShort((short) 3);
        entry(b, 0x010F, 2, 14).putInt(50);
        entry(b, 0x0112, 3, 1).putShort((short) turn).putShort((short) 0);
        entry(b, 0x8825, 4, 1).putInt(64);
        b.putInt(0);
        b.put("Harbour Works\0".getBytes(StandardCharsets.US_ASCII));
        // the GPS directory (4.6.6): version, north or south, latitude, east or west, longitude
        b.putShort((short) 5);
        entry(b, 0, 1, 4).put(new byte[] {2, 3, 0, 0});
        entry(b, 1, 2, 2).put(new byte[] {'N', 0, 0, 0});
        entry(b, 2, 5, 3).putInt(130);
        entry(b, 3, 2, 2).put(new byte[] {'W', 0, 0, 0});
        entry(b, 4, 5, 3).putInt(154);
        b.putInt(0);
        for (int part : new int[] {50, 12, 36, 5, 28, 48}) {
            b.putInt(part).putInt(1);
        }
        byte[] block = new byte[b.position()];
        b.flip().get(block);
        return block;
    }

    private static ByteBuffer entry(ByteBuffer b, int tag, int type, int count) {
        return b.putShort((short) tag).putShort((short) type).putInt(count);
    }

    /** A JPEG file with segments put in behind its first two bytes. */
    static byte[] jpegWith(byte[] jpeg, byte[]... segments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        for (byte[] segment : segments) {
            out.writeBytes(segment);
        }
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    static byte[] segment(int marker, byte[]... parts) {
        int length = 2;
        for (byte[] part : parts) {
            length += part.length;
        }
        ByteBuffer out = ByteBuffer.allocate(length + 2)
                .put((byte) 0xFF)
                .put((byte) marker)
                .putShort((short) length);
        for (byte[] part : parts) {
            out.put(part);
        }
        return out.array();
    }

    static byte[] text(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** A JPEG file with all that a telephone writes beside the dots. */
    public static byte[] telephoneJpeg(int width, int height, int turn) {
        byte[] plain = written(sheet(width, height), "jpg");
        byte[] full = jpegWith(
                plain,
                segment(0xE1, text("Exif\0\0"), exif(ByteOrder.BIG_ENDIAN, turn)),
                segment(0xE1, text("http://ns.adobe.com/xap/1.0/\0"), text(xmp())),
                segment(0xE2, text("MPF\0"), text("second picture")),
                segment(0xED, text("Photoshop 3.0\0"), iptc()),
                segment(0xFE, text("taken at Tarrow Quay")));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(full);
        out.writeBytes(text("ftyp a film of Tarrow Quay"));
        return out.toByteArray();
    }

    private static String xmp() {
        return "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
                + "<rdf:Description rdf:about='' xmlns:exif='http://ns.adobe.com/exif/1.0/'"
                + " exif:GPSLatitude='50,12.6N'/></rdf:RDF></x:xmpmeta>";
    }

    /** The city in an IPTC record (IIM 4.2, dataset 2:90) in a resource block 0x0404. */
    private static byte[] iptc() {
        byte[] city = text("Tarrow Quay");
        ByteBuffer b = ByteBuffer.allocate(64)
                .put(text("8BIM"))
                .putShort((short) 0x0404)
                .putShort((short) 0);
        b.putInt(5 + city.length);
        b.put((byte) 0x1C)
                .put((byte) 2)
                .put((byte) 90)
                .putShort((short) city.length)
                .put(city);
        byte[] block = new byte[b.position() + (b.position() & 1)];
        b.flip().get(block, 0, b.limit());
        return block;
    }

    static byte[] chunk(String type, byte[] data) {
        ByteBuffer out = ByteBuffer.allocate(12 + data.length)
                .putInt(data.length)
                .put(text(type))
                .put(data);
        CRC32 sum = new CRC32();
        sum.update(out.array(), 4, 4 + data.length);
        return out.putInt((int) sum.getValue()).array();
    }

    /** A PNG file with chunks put in behind its header. */
    public static byte[] pngWith(byte[] png, byte[]... chunks) {
        int header = 8 + 25;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, header);
        for (byte[] chunk : chunks) {
            out.writeBytes(chunk);
        }
        out.write(png, header, png.length - header);
        return out.toByteArray();
    }
}
