package platekeep.client.paper.bring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.paper.picture.Dots;
import platekeep.client.paper.picture.PictureFile;

/**
 * A picture's file looked through: whole, without what tells where it was taken, and if it is large also made smaller.
 * Only what is smaller is kept in memory; the rest is read again when it is needed.
 *
 * @param file where it lies
 * @param size how many bytes it has as it is
 * @param smaller the smaller one; empty where there is none
 * @param digits what the bytes of both are known by in a library
 */
record Prepared(Path file, long size, Optional<byte[]> smaller, List<String> digits) {
    /** A file larger than this is no picture that a library takes. */
    static final long LARGEST = 256L << 20;

    static Prepared read(Path file) throws LibraryException {
        PictureFile picture = picture(file);
        Optional<byte[]> smaller = Dots.smaller(ScanFiles.name(file), picture);
        List<String> digits = smaller.map(bytes -> List.of(digits(picture.bytes()), digits(bytes)))
                .orElseGet(() -> List.of(digits(picture.bytes())));
        return new Prepared(file, picture.bytes().length, smaller, digits);
    }

    private static PictureFile picture(Path file) throws LibraryException {
        String name = ScanFiles.name(file);
        try {
            if (!Files.isRegularFile(file)) {
                throw new LibraryException("\"" + name + "\" is not there or is no file.");
            }
            if (Files.size(file) > LARGEST) {
                throw new LibraryException("\"" + name + "\" is larger than " + (LARGEST >> 20) + " MB.");
            }
            return PictureFile.of(name, Files.readAllBytes(file));
        } catch (IOException e) {
            throw new LibraryException("\"" + name + "\" could not be read.", e);
        }
    }

    /** The bytes as they go into the library. */
    byte[] bytes(BringView.Size size) throws LibraryException {
        return size == BringView.Size.SMALLER && smaller.isPresent()
                ? smaller.get()
                : picture(file).bytes();
    }

    /** How many bytes that will be. */
    long length(BringView.Size size) {
        return size == BringView.Size.SMALLER
                ? smaller.map(bytes -> (long) bytes.length).orElse(this.size)
                : this.size;
    }

    /** Whether a library has it already, whatever its size was. */
    boolean isAmong(List<Picture> pictures) {
        return pictures.stream()
                .anyMatch(
                        picture -> digits.stream().anyMatch(d -> picture.path().contains("-" + d + ".")));
    }

    private static String digits(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
