package platekeep.client.paper.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A PNG file as the chunks that it is made of (PNG specification, third edition, 5.3). Those stay that are needed to see
 * the dots in their right colours and at their right size; texts, times, what a camera says, single frames of a film and
 * what nobody else knows go.
 */
final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final Set<String> STAYS = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "cICP", "sBIT", "bKGD", "pHYs");
    private static final int AROUND = 12;
    private static final int HEADER = 13;

    private final byte[] bytes;
    private final List<Chunk> chunks = new ArrayList<>();

    private record Chunk(String type, int from, int length) {
        int data() {
            return from + 8;
        }

        int to() {
            return from + AROUND + length;
        }
    }

    private PngFile(byte[] bytes) {
        this.bytes = bytes;
    }

    static boolean begins(byte[] bytes) {
        return bytes.length > SIGNATURE.length
                && Arrays.equals(bytes, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    /** Takes a file apart. */
    static PngFile of(byte[] bytes) throws Damaged {
        PngFile file = new PngFile(bytes);
        file.takeApart();
        return file;
    }

    private void takeApart() throws Damaged {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        int at = SIGNATURE.length;
        String type = "";
        while (!type.equals("IEND")) {
            if (at + AROUND > bytes.length) {
                throw Damaged.cutOff();
            }
            int length = in.getInt(at);
            type = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (length < 0) {
                throw Damaged.broken();
            }
            if (length > bytes.length - at - AROUND) {
                throw Damaged.cutOff();
            }
            Chunk chunk = new Chunk(type, at, length);
            if (STAYS.contains(type) && in.getInt(chunk.to() - 4) != sum(bytes, at + 4, length + 4)) {
                throw Damaged.broken();
            }
            chunks.add(chunk);
            at = chunk.to();
        }
        if (!chunks.get(0).type().equals("IHDR") || chunks.get(0).length() != HEADER) {
            throw Damaged.broken();
        }
    }

    private static int sum(byte[] bytes, int from, int length) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, length);
        return (int) sum.getValue();
    }

    /** Width and height as stored; negative where the file says more than there can be. */
    int[] measures() {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        int data = chunks.get(0).data();
        return new int[] {in.getInt(data), in.getInt(data + 4)};
    }

    /** Which way up, as the camera says. */
    Turn turn() {
        return chunks.stream()
                .filter(chunk -> chunk.type().equals("eXIf"))
                .findFirst()
                .map(chunk -> Exif.turn(Arrays.copyOfRange(bytes, chunk.data(), chunk.to() - 4)))
                .orElse(Turn.NONE);
    }

    /** The same dots without what tells more than they do. */
    byte[] cleaned() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
        out.write(SIGNATURE, 0, SIGNATURE.length);
        for (Chunk chunk : chunks) {
            if (STAYS.contains(chunk.type())) {
                out.write(bytes, chunk.from(), chunk.to() - chunk.from());
            }
            if (chunk.type().equals("IHDR") && turn() != Turn.NONE) {
                byte[] turn = turnChunk();
                out.write(turn, 0, turn.length);
            }
        }
        return out.toByteArray();
    }

    private byte[] turnChunk() {
        byte[] block = Exif.only(turn());
        ByteBuffer chunk = ByteBuffer.allocate(AROUND + block.length)
                .putInt(block.length)
                .put("eXIf".getBytes(StandardCharsets.ISO_8859_1))
                .put(block);
        return chunk.putInt(sum(chunk.array(), 4, 4 + block.length)).array();
    }
}
