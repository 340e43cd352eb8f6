/**
 * One folder with files and all their versions, kept so that a power cut at any moment loses nothing: trees, the files
 * in the folder, the lock between processes, what finishes a saving that was cut short.
 *
 * <p>Knows files, not plates: what a file means is up to the packages above. Nothing that lies in a folder is ever
 * run, and no setting of the user's or the machine's other version-control tools is listened to. Read {@link
 * platekeep.client.git.store.Store} first, then {@link platekeep.client.git.store.VersionWriter}.
 */
package platekeep.client.git.store;
