package platekeep.model.plate;

/**
 * A single stitch worked on top of the picture.
 *
 * @param stitch french knot, bullion, bullion flower, lazy daisy, satin bar
 * @param row the picture row by id
 * @param pleat {@code 8}: on pleat 8; {@code 8 1/2}: in the valley after it
 * @param colour a key of the palette
 */
public record Mark(String stitch, RowId row, String pleat, char colour, Unknown unknown) {

    public Mark {
        stitch = CodePoints.nfc(stitch);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("stitch", stitch)
                .put("row", row.text())
                .put("pleat", pleat)
                .put("colour", String.valueOf(colour))
                .putAll(unknown)
                .build();
    }

    /** The pleat as a number; a valley lies half a pleat on. */
    public double place() {
        return Pleat.place(pleat);
    }

    public Mark at(RowId newRow, String newPleat) {
        return new Mark(stitch, newRow, newPleat, colour, unknown);
    }

    public Mark withColour(char key) {
        return new Mark(stitch, row, pleat, key, unknown);
    }
}
