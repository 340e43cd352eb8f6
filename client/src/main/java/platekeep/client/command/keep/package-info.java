/**
 * The verbs that keep plates in a library: list, show, history, tag, save, name, put-away, bring-back.
 *
 * <p>They speak to the port in {@code platekeep.client.library} only. Read
 * {@link platekeep.client.command.keep.LibraryVerb} first.
 */
package platekeep.client.command.keep;
