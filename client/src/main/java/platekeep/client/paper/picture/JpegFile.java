package platekeep.client.paper.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A JPEG file as the segments that it is made of (ITU-T T.81, annex B). Of the application segments only those stay that
 * say how the colours are to be read: JFIF (without its thumbnail), the ICC profile, Adobe's transform. What lies behind
 * the end of the picture goes too: some telephones hang a film or a second picture on there.
 */
final class JpegFile {
    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int APP0 = 0xE0;
    private static final int APP1 = 0xE1;
    private static final int APP2 = 0xE2;
    private static final int APP14 = 0xEE;
    private static final int APP15 = 0xEF;
    private static final int COM = 0xFE;
    private static final byte[] JFIF = head("JFIF\0");
    private static final byte[] EXIF = head("Exif\0\0");
    private static final byte[] PROFILE = head("ICC_PROFILE\0");
    private static final byte[] ADOBE = head("Adobe");
    /** JFIF 1.01, no unit, dots as wide as high, no thumbnail (JFIF 1.02, page 5). */
    private static final byte[] PLAIN_JFIF = {
        (byte) 0xFF, (byte) APP0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0
    };

    private static final int JFIF_LENGTH = 18;

    private final byte[] bytes;
    private final List<Segment> segments = new ArrayList<>();

    /** A marker with what belongs to it, the dots of a scan included; from the marker's FF to before the next one's. */
    private record Segment(int marker, int from, int to) {}

    private JpegFile(byte[] bytes) {
        this.bytes = bytes;
    }

    private static byte[] head(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static boolean begins(byte[] bytes) {
        return bytes.length > 3 && at(bytes, 0) == 0xFF && at(bytes, 1) == SOI && at(bytes, 2) == 0xFF;
    }

    /** Takes a file apart. */
    static JpegFile of(byte[] bytes) throws Damaged {
        JpegFile file = new JpegFile(bytes);
        file.takeApart();
        return file;
    }

    private static int at(byte[] bytes, int i) {
        return bytes[i] & 0xFF;
    }

    private void takeApart() throws Damaged {
        int at = 2;
        while (true) {
            while (at + 1 < bytes.length && at(bytes, at) == 0xFF && at(bytes, at + 1) == 0xFF) {
                at++;
            }
            if (at + 1 >= bytes.length) {
                throw Damaged.cutOff();
            }
            int marker = at(bytes, at + 1);
            if (at(bytes, at) != 0xFF || marker == 0) {
                throw Damaged.broken();
            }
            if (marker == EOI) {
                return;
            }
            int to = marker == 1 || marker >= 0xD0 && marker <= SOI ? at + 2 : endOf(at, marker);
            segments.add(new Segment(marker, at, to));
            at = to;
        }
    }

    private int endOf(int at, int marker) throws Damaged {
        if (at + 3 >= bytes.length) {
            throw Damaged.cutOff();
        }
        int length = at(bytes, at + 2) << 8 | at(bytes, at + 3);
        int end = at + 2 + length;
        if (length < 2) {
            throw Damaged.broken();
        }
        if (end > bytes.length) {
            throw Damaged.cutOff();
        }
        return marker == SOS ? endOfScan(end) : end;
    }

    /** In the dots FF is followed by 00 or by a restart marker; anything else is the next marker (T.81, B.1.1.5). */
    private int endOfScan(int from) throws Damaged {
        for (int at = from; at + 1 < bytes.length; at++) {
            int next = at(bytes, at + 1);
            if (at(bytes, at) == 0xFF && next != 0 && next != 0xFF && (next < 0xD0 || next > 0xD7)) {
                return at;
            }
        }
        throw Damaged.cutOff();
    }

    /** Width and height as stored. */
    int[] measures() throws Damaged {
        for (Segment s : segments) {
            boolean isFrame = s.marker() >= 0xC0 && s.marker() <= 0xCF && s.marker() % 4 != 0 || s.marker() == 0xC0;
            if (isFrame && s.to() - s.from() >= 9) {
                int height = at(bytes, s.from() + 5) << 8 | at(bytes, s.from() + 6);
                int width = at(bytes, s.from() + 7) << 8 | at(bytes, s.from() + 8);
                return new int[] {width, height};
            }
        }
        throw Damaged.broken();
    }

    /** Which way up, as the camera says. */
    Turn turn() {
        for (Segment s : segments) {
            if (s.marker() == APP1 && hasHead(s, EXIF)) {
                return Exif.turn(Arrays.copyOfRange(bytes, s.from() + 4 + EXIF.length, s.to()));
            }
        }
        return Turn.NONE;
    }

    private boolean hasHead(Segment s, byte[] head) {
        int from = s.from() + 4;
        return s.to() - from >= head.length && Arrays.equals(bytes, from, from + head.length, head, 0, head.length);
    }

    /** The same dots without what tells more than they do. */
    byte[] cleaned() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
        out.write(0xFF);
        out.write(SOI);
        segments.stream().filter(this::isJfif).limit(1).forEach(s -> writeJfif(s, out));
        if (segments.stream().noneMatch(s -> isJfif(s) || isAdobe(s))
                && segments.stream().anyMatch(s -> s.marker() == APP1 && hasHead(s, EXIF))) {
            // a reader that finds neither Exif nor JFIF may take the colours for red, green and blue
            out.write(PLAIN_JFIF, 0, PLAIN_JFIF.length);
        }
        if (turn() != Turn.NONE) {
            writeTurn(out);
        }
        segments.stream().filter(this::stays).forEach(s -> out.write(bytes, s.from(), s.to() - s.from()));
        out.write(0xFF);
        out.write(EOI);
        return out.toByteArray();
    }

    private boolean isJfif(Segment s) {
        return s.marker() == APP0 && hasHead(s, JFIF) && s.to() - s.from() >= JFIF_LENGTH;
    }

    private boolean isAdobe(Segment s) {
        return s.marker() == APP14 && hasHead(s, ADOBE);
    }

    private boolean stays(Segment s) {
        boolean isApplication = s.marker() >= APP0 && s.marker() <= APP15;
        return isAdobe(s)
                || s.marker() == APP2 && hasHead(s, PROFILE)
                || !isApplication && s.marker() != COM && s.marker() != SOI;
    }

    private void writeJfif(Segment s, ByteArrayOutputStream out) {
        byte[] jfif = Arrays.copyOfRange(bytes, s.from(), s.from() + JFIF_LENGTH);
        jfif[2] = 0;
        jfif[3] = JFIF_LENGTH - 2;
        jfif[JFIF_LENGTH - 2] = 0;
        jfif[JFIF_LENGTH - 1] = 0;
        out.write(jfif, 0, jfif.length);
    }

    private void writeTurn(ByteArrayOutputStream out) {
        byte[] block = Exif.only(turn());
        int length = 2 + EXIF.length + block.length;
        out.write(0xFF);
        out.write(APP1);
        out.write(length >> 8);
        out.write(length);
        out.write(EXIF, 0, EXIF.length);
        out.write(block, 0, block.length);
    }
}
