package platekeep.model.plate;

import java.util.Optional;

/**
 * Something that is sewn on.
 *
 * @param kind button, bead, ribbon flower, trinket, ribbon, tie
 * @param size in the designer's words, such as {@code 9 mm}
 * @param count how many
 */
public record Notion(String kind, Optional<String> size, int count, Unknown unknown) {

    public Notion {
        kind = CodePoints.nfc(kind);
        size = CodePoints.said(size);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("kind", kind)
                .putIf("size", size, Value::of)
                .put("count", count)
                .putAll(unknown)
                .build();
    }
}
