package platekeep.client.library;

/**
 * A name that was given to a version of a plate.
 *
 * @param plateId whose version
 * @param versionId the version that was named, not always one that changed the plate
 * @param name as it was written
 */
public record NamedVersion(String plateId, String versionId, String name) {}
