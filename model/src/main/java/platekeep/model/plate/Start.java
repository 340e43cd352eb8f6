package platekeep.model.plate;

import java.util.Optional;

/**
 * Where stitching of a figure starts, and so which of its cables are up and which down.
 *
 * @param row the row by id
 * @param pleat the cable's position (its left pleat)
 * @param cable what the cable there is
 * @param on the gathering row on which it lies, counted from the top ({@code 5}, {@code 2 1/2})
 */
public record Start(RowId row, int pleat, CableKind cable, Optional<String> on, Unknown unknown) {

    public Start {
        on = CodePoints.said(on);
    }

    public Start(RowId row, int pleat, CableKind cable) {
        this(row, pleat, cable, Optional.empty(), Unknown.NONE);
    }

    public Start at(RowId newRow, int newPleat, CableKind newCable) {
        return new Start(newRow, newPleat, newCable, on, unknown);
    }

    /** The start as it stands in the text. */
    public Value.Entries value() {
        return new Value.Builder()
                .put("row", row.text())
                .put("pleat", pleat)
                .put("cable", cable.word())
                .putIf("on", on, Value::of)
                .putAll(unknown)
                .build();
    }
}
