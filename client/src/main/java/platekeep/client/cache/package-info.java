/**
 * What is kept on disk because making it costs more than reading it: the index of versions, and what was measured about
 * the disks. Nothing here is needed: all of it can be thrown away at any time and comes again.
 *
 * <p>It knows bytes under a key and no more. Read {@link platekeep.client.cache.Cache} first.
 */
package platekeep.client.cache;
