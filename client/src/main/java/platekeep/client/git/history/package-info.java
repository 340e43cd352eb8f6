/**
 * Which version changed which plate: the index of versions, the ids of plates read from the raw text, the names that
 * were given to versions.
 *
 * <p>It knows a plate by its id and nothing else about it. Read {@link platekeep.client.git.history.VersionIndex} first.
 */
package platekeep.client.git.history;
