package platekeep.model.plate;

import java.util.Optional;

/**
 * A line of geometric smocking.
 *
 * @param on the gathering row it lies on, counted from the top ({@code 2}, {@code 2 1/2})
 * @param toRow the gathering row it travels to
 * @param stitch the stitch in words
 * @param steps steps of a trellis
 * @param colour a key of the palette
 * @param strands of floss
 * @param from the first pleat
 * @param to the last pleat
 * @param start the first cable
 */
public record Line(
        String on,
        Optional<String> toRow,
        String stitch,
        Optional<Integer> steps,
        char colour,
        int strands,
        int from,
        int to,
        CableKind start,
        Unknown unknown) {

    public Line {
        toRow = CodePoints.said(toRow);
        stitch = CodePoints.nfc(stitch);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("on", on)
                .putIf("to row", toRow, Value::of)
                .put("stitch", stitch)
                .putIf("steps", steps, Value::of)
                .put("colour", String.valueOf(colour))
                .put("strands", strands)
                .put("from", from)
                .put("to", to)
                .put("start", start.word())
                .putAll(unknown)
                .build();
    }

    /** So many pleats further to the right. */
    public Line moved(int pleats) {
        return new Line(on, toRow, stitch, steps, colour, strands, from + pleats, to + pleats, start, unknown);
    }

    /** On other gathering rows. */
    public Line onRows(String newOn, Optional<String> newToRow) {
        return new Line(newOn, newToRow, stitch, steps, colour, strands, from, to, start, unknown);
    }

    public Line withColour(char key) {
        return new Line(on, toRow, stitch, steps, key, strands, from, to, start, unknown);
    }
}
