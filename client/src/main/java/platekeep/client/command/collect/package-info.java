/**
 * Verbs for what comes into a library from paper, is put in order there, or is carried over to another one.
 *
 * <p>Read {@link platekeep.client.command.collect.ScanVerb} first. How pictures are read and plates are carried they ask
 * of {@link platekeep.client.command.desk.Means}.
 */
package platekeep.client.command.collect;
