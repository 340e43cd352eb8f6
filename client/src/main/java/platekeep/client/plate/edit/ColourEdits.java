package platekeep.client.plate.edit;

import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/** Changing colours. */
public final class ColourEdits {

    private ColourEdits() {}

    /** Puts a colour into the palette, new or in the place of the one that has this key. */
    public static Plate put(Plate plate, char key, Colour colour) {
        return plate.edit().palette(plate.palette().with(key, colour)).build();
    }

    /** Whether a colour is used by a cable, a line or a single stitch. */
    public static boolean isUsed(Plate plate, char key) {
        return plate.rows().stream().anyMatch(row -> row.cells().indexOf(key) >= 0)
                || plate.lines().stream().anyMatch(line -> line.colour() == key)
                || plate.marks().stream().anyMatch(mark -> mark.colour() == key)
                || isInClash(plate, key);
    }

    /** Whether an open clash names a colour by its key, so that it must stay as it is. */
    public static boolean isInClash(Plate plate, char key) {
        return plate.clashes().stream().anyMatch(clash -> clash.value().text().indexOf(key) >= 0);
    }

    /** Puts one colour in the place of another wherever that is used, and takes that one out of the palette. */
    public static Plate merge(Plate plate, char gone, char into) {
        return plate.edit()
                .rows(plate.rows().stream()
                        .map(row -> row.cells().indexOf(gone) < 0
                                ? row
                                : row.withCells(row.cells().replace(gone, into)))
                        .toList())
                .lines(plate.lines().stream()
                        .map(line -> line.colour() == gone ? line.withColour(into) : line)
                        .toList())
                .marks(plate.marks().stream()
                        .map(mark -> mark.colour() == gone ? mark.withColour(into) : mark)
                        .toList())
                .palette(plate.palette().without(gone))
                .build();
    }

    /** Takes a colour out of the palette that nothing uses. */
    public static Plate remove(Plate plate, char key) {
        return isUsed(plate, key)
                ? plate
                : plate.edit().palette(plate.palette().without(key)).build();
    }
}
