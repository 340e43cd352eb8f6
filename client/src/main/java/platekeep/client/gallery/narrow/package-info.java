/**
 * What the gallery is narrowed down by, as it is shown: the groups with their values and counts, and what is chosen.
 *
 * <p>Knows queries and answers, no library. Read {@link platekeep.client.gallery.narrow.Section} first.
 */
package platekeep.client.gallery.narrow;
