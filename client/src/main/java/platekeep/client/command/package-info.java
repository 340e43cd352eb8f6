/**
 * The command line: which verbs there are, and the tour of the sample library in a terminal.
 *
 * <p>Knows the port of the library and the model, never the machinery underneath, and no window. Only the packages
 * below this one and {@code Main} write to standard output. Read {@link platekeep.client.command.Verbs} first.
 */
package platekeep.client.command;
