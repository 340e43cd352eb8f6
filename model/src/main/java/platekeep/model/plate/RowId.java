package platekeep.model.plate;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.function.Predicate;

/**
 * The identity of a row: four characters of {@code 0-9 a-z}, given once and kept when the row is edited or moved.
 *
 * @param text the four characters
 */
public record RowId(String text) implements Comparable<RowId> {

    /** How many characters an id has. */
    public static final int LENGTH = 4;

    private static final int RADIX = 36;

    /** How many ids there are. */
    public static final int COUNT = RADIX * RADIX * RADIX * RADIX;

    public RowId {
        if (!isRowId(text)) {
            throw new IllegalArgumentException("not a row id: " + text);
        }
    }

    /** Whether the text could be a row id. */
    public static boolean isRowId(String text) {
        return text.length() == LENGTH && text.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'a' && c <= 'z');
    }

    /** The id that a number from 0 to {@link #COUNT} (excluded) is in digits {@code 0-9 a-z}, most significant first. */
    public static RowId of(int number) {
        String digits = Integer.toString(number, RADIX);
        return new RowId("0".repeat(LENGTH - digits.length()) + digits);
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
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
