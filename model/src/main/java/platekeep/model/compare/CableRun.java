package platekeep.model.compare;

/**
 * Neighbouring cables of a row that changed.
 *
 * @param from first position
 * @param to last position
 * @param before the cells as they were, in the later plate's letters where a key was only renamed
 * @param after the cells as they are
 */
public record CableRun(int from, int to, String before, String after) {}
