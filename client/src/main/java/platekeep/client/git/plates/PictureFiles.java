package platekeep.client.git.plates;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.client.library.Picture;

/**
 * The names of pictures beside plates: {@code <plate id>.<scan or photo>-<16 digits of the SHA-256 of the bytes>.jpg} or
 * {@code .png}. What a picture is, its first bytes tell: PNG's eight (PNG specification, third edition, 5.2), or JPEG's
 * start-of-image marker and the marker byte after it (ITU-T T.81, table B.1).
 */
public final class PictureFiles {
    private static final Pattern NAME = Pattern.compile("([0-9a-f-]{36})\\.(scan|photo)-[0-9a-f]{16}\\.(?:jpg|png)");

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    private PictureFiles() {}

    /** The name of a picture's file; empty when the bytes are neither JPEG nor PNG. */
    public static Optional<String> name(String plateId, Picture.Kind kind, byte[] bytes) {
        return ending(bytes).map(ending -> plateId + "." + kind.word() + "-" + digits(bytes) + ending);
    }

    /** The picture of which this is the path; empty for any other file. */
    public static Optional<Picture> at(String path, String content) {
        Matcher name = NAME.matcher(path.substring(path.lastIndexOf('/') + 1));
        if (!PlateFiles.isPicture(path) || !name.matches()) {
            return Optional.empty();
        }
        Picture.Kind kind = name.group(2).equals(Picture.Kind.SCAN.word()) ? Picture.Kind.SCAN : Picture.Kind.PHOTO;
        return Optional.of(new Picture(name.group(1), kind, path, content));
    }

    private static Optional<String> ending(byte[] bytes) {
        if (begins(bytes, PNG)) {
            return Optional.of(".png");
        }
        return begins(bytes, JPEG) ? Optional.of(".jpg") : Optional.empty();
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length > with.length && java.util.Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }

    private static String digits(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
