/**
 * Finding plates among many: what is known of each in a form that is quick to ask, the questions, and the answers with
 * their counts.
 *
 * <p>Keeps no index and reads no files; ten thousand summaries are gone through anew for each question. Read
 * {@link platekeep.model.find.Finder} first.
 */
package platekeep.model.find;
