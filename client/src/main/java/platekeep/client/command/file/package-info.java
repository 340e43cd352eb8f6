/**
 * Plate files wherever they lie: reading and writing them, and the verbs that need no library: check, compare, join.
 *
 * <p>Read {@link platekeep.client.command.file.CompareVerb} first.
 */
package platekeep.client.command.file;
