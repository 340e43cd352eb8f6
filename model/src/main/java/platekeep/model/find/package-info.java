/**
 * Finding plates among many: what is known of each, the questions, and the answers with the counts that help to narrow
 * them down.
 *
 * <p>Reads no files and knows of no window: whoever has plates makes a {@link platekeep.model.find.Summary} of each and
 * an index of them. Read {@link platekeep.model.find.Index} first.
 */
package platekeep.model.find;
