package platekeep.client.paper.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * The one thing that is read from and written to what a camera says about a picture: which way up it is. The block is a
 * TIFF header with its first directory (EXIF 2.3, 4.5.2 and 4.6.2); a block that makes no sense says nothing.
 */
final class Exif {
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY = 12;

    private Exif() {}

    /** Which way up, from a block that begins with its TIFF header. */
    static Turn turn(byte[] block) {
        try {
            ByteBuffer tiff = ByteBuffer.wrap(block);
            int order = tiff.getShort(0);
            if (order != 0x4949 && order != 0x4D4D) {
                return Turn.NONE;
            }
            tiff.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            return tiff.getShort(2) == 42 ? turn(tiff, tiff.getInt(4)) : Turn.NONE;
        } catch (IndexOutOfBoundsException | ArithmeticException e) {
            return Turn.NONE;
        }
    }

    private static Turn turn(ByteBuffer tiff, int directory) {
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int at = Math.addExact(directory, 2 + ENTRY * i);
            if ((tiff.getShort(at) & 0xFFFF) == ORIENTATION && tiff.getShort(at + 2) == SHORT) {
                return Turn.of(tiff.getShort(at + 8) & 0xFFFF);
            }
        }
        return Turn.NONE;
    }

    /** A block that says which way up, and nothing else. */
    static byte[] only(Turn turn) {
        return ByteBuffer.allocate(26)
                .putShort((short) 0x4D4D)
                .putShort((short) 42)
                .putInt(8)
                .putShort((short) 1)
                .putShort((short) ORIENTATION)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) turn.code())
                .putShort((short) 0)
                .putInt(0)
                .array();
    }
}
