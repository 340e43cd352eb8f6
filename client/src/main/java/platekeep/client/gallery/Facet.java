package platekeep.client.gallery;

/**
 * Something by which the gallery can be narrowed down.
 *
 * @param word as it is shown
 * @param count how many plates there are or would be
 * @param chosen whether it is asked for
 */
public record Facet(String word, int count, boolean chosen) {}
