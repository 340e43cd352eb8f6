/**
 * Files of a version as what they are: which are plates, whose each is, what they say, and where a new one is put.
 *
 * <p>It makes no versions. Read {@link platekeep.client.git.plates.Shelf} first, then {@link
 * platekeep.client.git.plates.Entries}.
 */
package platekeep.client.git.plates;
