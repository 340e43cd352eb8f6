package platekeep.model.plate;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.function.Predicate;

/**
 * The identity of a row: four characters of {@code 0-9 a-z}, given once and kept when the row is edited or moved. Held as
 * the number that they are as digits, since a library of ten thousand plates has half a million of them.
 */
public final class RowId implements Comparable<RowId> {

    /** How many characters an id has. */
    public static final int LENGTH = 4;

    private static final int RADIX = 36;

    /** How many ids there are. */
    public static final int COUNT = RADIX * RADIX * RADIX * RADIX;

    private final int number;

    /**
     * @param text the four characters
     */
    public RowId(String text) {
        if (!isRowId(text)) {
            throw new IllegalArgumentException("not a row id: " + text);
        }
        this.number = Integer.parseInt(text, RADIX);
    }

    private RowId(int number) {
        this.number = number;
    }

    /** Whether the text could be a row id. */
    public static boolean isRowId(String text) {
        return text.length() == LENGTH && text.chars().allMatch(c -> digit(c) >= 0);
    }

    /** What a character is as a digit of an id, 0 to 35; -1 for one that is none. */
    public static int digit(int c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        return c >= 'a' && c <= 'z' ? c - 'a' + 10 : -1;
    }

    /** The id that a number from 0 to {@link #COUNT} (excluded) is in digits {@code 0-9 a-z}, most significant first. */
    public static RowId of(int number) {
        if (number < 0 || number >= COUNT) {
            throw new IllegalArgumentException("not the number of a row id: " + number);
        }
        return new RowId(number);
    }

    /** The number of which this is the id, see {@link #of}. */
    public int number() {
        return number;
    }

    /** The four characters. */
    public String text() {
        char[] text = new char[LENGTH];
        int left = number;
        for (int i = LENGTH - 1; i >= 0; i--) {
            text[i] = Character.forDigit(left % RADIX, RADIX);
            left /= RADIX;
        }
        return new String(text);
    }

    /**
     * An id that follows from a text alone, so that two people who derive it independently get the same one: SHA-256 over
     * the UTF-8 of the text as an unsigned big-endian number modulo 36^4, four digits of {@code 0-9 a-z}, most significant
     * first. While that id is taken, another {@code #} is appended to the text and it is derived anew.
     */
    public static RowId derived(String text, Predicate<RowId> taken) {
        String from = text;
        RowId id = hashed(from);
        while (taken.test(id)) {
            from += "#";
            id = hashed(from);
        }
        return id;
    }

    private static RowId hashed(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return of(new BigInteger(1, hash).mod(BigInteger.valueOf(COUNT)).intValue());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public int compareTo(RowId other) {
        return Integer.compare(number, other.number);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RowId id && id.number == number;
    }

    @Override
    public int hashCode() {
        return number;
    }

    @Override
    public String toString() {
        return text();
    }
}
