package platekeep.model.plate;

import java.util.Optional;

/**
 * An entry of the palette.
 *
 * @param name what the designer calls it
 * @param srgb {@code #RRGGBB}, upper case
 * @param strands of the six strands of floss, 1 to 6
 * @param floss a maker's shade number, free text
 */
public record Colour(String name, String srgb, int strands, Optional<String> floss, Unknown unknown) {

    public Colour {
        name = CodePoints.nfc(name);
        floss = CodePoints.said(floss);
    }

    public Colour(String name, String srgb, int strands) {
        this(name, srgb, strands, Optional.empty(), Unknown.NONE);
    }

    /** The colour as {@code 0xRRGGBB}. */
    public int rgb() {
        return Integer.parseInt(srgb.substring(1), 16);
    }

    public Colour withSrgb(String newSrgb) {
        return new Colour(name, newSrgb, strands, floss, unknown);
    }

    public Colour withName(String newName) {
        return new Colour(newName, srgb, strands, floss, unknown);
    }

    /** The entry as it stands in the text. */
    public Value.Entries value() {
        return new Value.Builder()
                .put("name", name)
                .put("srgb", srgb)
                .put("strands", strands)
                .putIf("floss", floss, Value::of)
                .putAll(unknown)
                .build();
    }
}
