package platekeep.model.text;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import platekeep.model.plate.RowId;

/**
 * Goes through the bytes of a text that is expected to be in the canonical form. Whatever is not as expected ends it with
 * {@link Otherwise}: then the text has to be read piece by piece.
 */
final class Scan {
    private static final int MOST_DIGITS = 9;

    final byte[] bytes;
    final int end;
    int at;

    /**
     * @param bytes on an array, from its beginning
     */
    Scan(ByteBuffer bytes) {
        this.bytes = bytes.array();
        this.end = bytes.limit();
    }

    /** The text is not as this quick reading expects; it may be good all the same. */
    static final class Otherwise extends Exception {
        private static final long serialVersionUID = 1L;
        private static final Otherwise SO = new Otherwise();

        private Otherwise() {
            super("not in the canonical form", null, false, false);
        }
    }

    static Otherwise otherwise() {
        return Otherwise.SO;
    }

    static void demand(boolean expected) throws Otherwise {
        if (!expected) {
            throw otherwise();
        }
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** Whether these bytes come next. */
    boolean stands(byte[] what) {
        int n = what.length;
        if (at + n > end || bytes[at + n - 1] != what[n - 1]) {
            return false;
        }
        for (int i = 0; i < n; i++) {
            if (bytes[at + i] != what[i]) {
                return false;
            }
        }
        return true;
    }

    /** Goes past these bytes if they come next. */
    boolean takes(byte[] what) {
        if (stands(what)) {
            at += what.length;
            return true;
        }
        return false;
    }

    void must(byte[] what) throws Otherwise {
        demand(takes(what));
    }

    void must(char c) throws Otherwise {
        demand(at < end && bytes[at] == c);
        at++;
    }

    boolean takes(char c) {
        if (at < end && bytes[at] == c) {
            at++;
            return true;
        }
        return false;
    }

    /** A text without escapes, of letters that cannot combine with others. */
    String text() throws Otherwise {
        must('"');
        int start = at;
        boolean plain = true;
        while (at < end && bytes[at] != '"') {
            byte b = bytes[at++];
            demand(b != '\\' && (b < 0 || b >= ' ') && b != 0x7F);
            plain &= b > 0;
        }
        int stop = at;
        must('"');
        if (plain) {
            return new String(bytes, start, stop - start, StandardCharsets.ISO_8859_1);
        }
        String text = new String(bytes, start, stop - start, StandardCharsets.UTF_8);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            demand(c < 0x7F || c >= 0xA0 && c < 0x300 || c >= 0x2010 && c < 0x2027);
        }
        return text;
    }

    /** A text with something in it. */
    String said() throws Otherwise {
        String text = text();
        demand(!text.isEmpty());
        return text;
    }

    int whole() throws Otherwise {
        int start = at;
        boolean minus = takes('-');
        int digits = at;
        int number = 0;
        while (at < end && bytes[at] >= '0' && bytes[at] <= '9' && at - digits < MOST_DIGITS) {
            number = 10 * number + bytes[at++] - '0';
        }
        demand(at > digits && (bytes[digits] != '0' || at - start == 1) && !isInNumber());
        return minus ? -number : number;
    }

    int whole(int least, int most) throws Otherwise {
        int number = whole();
        demand(number >= least && number <= most);
        return number;
    }

    /** A number that may have a fraction, as it is written plainly. */
    BigDecimal decimal() throws Otherwise {
        int start = at;
        takes('-');
        int digits = at;
        while (at < end && isInNumber()) {
            at++;
        }
        demand(at > digits && at - start <= MOST_DIGITS);
        BigDecimal number;
        try {
            number = new BigDecimal(new String(bytes, start, at - start, StandardCharsets.ISO_8859_1));
        } catch (NumberFormatException e) {
            throw otherwise();
        }
        BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        demand(plain.toPlainString().contentEquals(new String(bytes, start, at - start, StandardCharsets.ISO_8859_1)));
        return plain;
    }

    private boolean isInNumber() {
        byte b = at < end ? bytes[at] : 0;
        return b >= '0' && b <= '9' || b == '.' || b == 'e' || b == 'E' || b == '+' || b == '-';
    }

    /** The number of the row id that comes next. */
    int rowId() throws Otherwise {
        demand(at + RowId.LENGTH <= end);
        int id = 0;
        for (int i = 0; i < RowId.LENGTH; i++) {
            int digit = RowId.digit(bytes[at++]);
            demand(digit >= 0);
            id = id * 36 + digit;
        }
        return id;
    }

    /** What reads one thing of a list. */
    interface Item<T> {
        T read() throws Otherwise;
    }

    /** The fields of an object on one line, asked for in the order in which they are written. */
    final class Line {
        private boolean any;

        Line() throws Otherwise {
            Scan.this.must('{');
        }

        /** Whether a key comes next; then its value does. */
        boolean has(byte[] key) {
            int before = at;
            if (any && !(takes(',') && takes(' ')) || !takes(key)) {
                at = before;
                return false;
            }
            any = true;
            return true;
        }

        Line must(byte[] key) throws Otherwise {
            demand(has(key));
            return this;
        }

        void end() throws Otherwise {
            demand(any);
            Scan.this.must('}');
        }
    }

    /** A key as it stands before its value. */
    static byte[] key(String key) {
        return ascii("\"" + key + "\": ");
    }
}
