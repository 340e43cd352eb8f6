/**
 * Large libraries made by a seed, and what the client costs on them. A workshop of two designers over twenty years:
 * pictures, words, series, versions, joins; the same bytes for the same seed.
 *
 * <p>Read {@link platekeep.client.many.ManyPlates} first.
 */
package platekeep.client.many;
