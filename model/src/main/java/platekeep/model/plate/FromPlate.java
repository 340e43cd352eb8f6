package platekeep.model.plate;

/**
 * The plate and version that a plate was started from.
 *
 * @param id the other plate's id
 * @param version the id of the version, as the library gives it
 */
public record FromPlate(String id, String version, Unknown unknown) {

    public FromPlate {
        id = CodePoints.nfc(id);
        version = CodePoints.nfc(version);
    }

    public Value.Entries value() {
        return new Value.Builder()
                .put("id", id)
                .put("version", version)
                .putAll(unknown)
                .build();
    }
}
