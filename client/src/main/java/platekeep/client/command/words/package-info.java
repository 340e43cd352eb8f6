/**
 * The words of a command: what a verb says that it takes, how typed words are read, and the help that follows from it.
 *
 * <p>Our own small reader, since loading a library for it cost each command three times what starting Java costs. Read
 * {@link platekeep.client.command.words.Verb} first.
 */
package platekeep.client.command.words;
