package platekeep.client.library;

/**
 * A text that a plate had at some version.
 *
 * @param plateId whose it is
 * @param path where it lay
 * @param content its id, the same for the same bytes
 * @param versionId the newest version that gave the plate this text
 * @param isNow whether the plate has it still
 */
public record PastPlate(String plateId, String path, String content, String versionId, boolean isNow) {}
