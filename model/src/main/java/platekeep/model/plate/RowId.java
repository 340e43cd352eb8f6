package platekeep.model.plate;

/**
 * The identity of a row: four characters of {@code 0-9 a-z}, given once and kept when the row is edited or moved.
 *
 * @param text the four characters
 */
public record RowId(String text) implements Comparable<RowId> {

    /** How many characters an id has. */
    public static final int LENGTH = 4;

    public RowId {
        if (!isRowId(text)) {
            throw new IllegalArgumentException("not a row id: " + text);
        }
    }

    /** Whether the text could be a row id. */
    public static boolean isRowId(String text) {
        return text.length() == LENGTH && text.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'a' && c <= 'z');
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
