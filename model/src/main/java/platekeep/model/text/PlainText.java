package platekeep.model.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Bytes to characters and back: UTF-8 without a byte-order mark, nothing replaced in silence. */
final class PlainText {

    /** A file may be so many bytes long; the largest chart needs about four million. */
    static final int LONGEST = 32 * 1024 * 1024;

    private PlainText() {}

    /** The characters of a file, or why its bytes are no text. */
    static Reading<String> decode(String file, byte[] bytes) {
        if (bytes.length > LONGEST) {
            return refused(file, "", Rule.DOCUMENT_LENGTH, "the file is longer than any plate can be (32 MB).");
        }
        if (bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF) {
            return refused(
                    file,
                    "",
                    Rule.BYTE_ORDER_MARK,
                    "the file begins with a byte-order mark; save it as UTF-8 without one.");
        }
        CharBuffer out = CharBuffer.allocate(bytes.length);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            return refused(file, text, Rule.NOT_UTF_8, "the bytes here are no UTF-8; save the file as UTF-8 again.");
        }
        return new Reading.Good<>(text, List.of());
    }

    /**
     * The bytes of a text.
     *
     * @throws IllegalArgumentException when it holds an unpaired surrogate, which no file can keep
     */
    static byte[] encode(String text) {
        try {
            ByteBuffer out = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
            byte[] bytes = new byte[out.remaining()];
            out.get(bytes);
            return bytes;
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("a text holds an unpaired surrogate", e);
        }
    }

    /** One problem, at the end of what could be read. */
    private static Reading<String> refused(String file, String soFar, Rule rule, String sentence) {
        Problems problems = new Problems(file, soFar);
        problems.found(rule, soFar.length(), sentence);
        return new Reading.Bad<>(problems.refused());
    }
}
