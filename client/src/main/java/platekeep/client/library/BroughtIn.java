package platekeep.client.library;

import java.util.List;

/**
 * What bringing in did.
 *
 * @param newest the newest version now
 * @param tookOver ids of plates that were taken over as the partner has them
 * @param joined ids of plates whose two edits were joined without a clash
 * @param clashing ids of plates that have open clashes now
 * @param kept ids of plates that one side had put away and the other had changed: they stay, as changed
 */
public record BroughtIn(
        Version newest, List<String> tookOver, List<String> joined, List<String> clashing, List<String> kept) {
    public BroughtIn {
        tookOver = List.copyOf(tookOver);
        joined = List.copyOf(joined);
        clashing = List.copyOf(clashing);
        kept = List.copyOf(kept);
    }
}
