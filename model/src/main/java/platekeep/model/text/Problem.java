package platekeep.model.text;

import java.util.Optional;

/**
 * Something wrong, or mended, in a text.
 *
 * @param file the file's name as the reader was told it
 * @param line counted from 1
 * @param column counted from 1
 * @param row the picture row counted from the bottom, where the place is in the picture
 * @param pleat where the place is in the picture
 * @param rule the rule's id, such as {@code row-length}
 * @param text one sentence: what is wrong and what to do
 */
public record Problem(
        String file, int line, int column, Optional<Integer> row, Optional<Integer> pleat, String rule, String text) {

    /** The whole sentence with its place: {@code kite.json, line 12, row 3, pleat 9: ...}. */
    public String sentence() {
        StringBuilder out = new StringBuilder(file).append(", line ").append(line);
        row.ifPresent(r -> out.append(", row ").append(r));
        pleat.ifPresent(p -> out.append(", pleat ").append(p));
        return out.append(": ").append(text).toString();
    }
}
