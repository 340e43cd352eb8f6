/**
 * Words as they are compared: how a text comes apart into plain words, what their stems are, which words a slip of the
 * finger may have meant, and which texts hold which word.
 *
 * <p>Knows nothing of plates. Read {@link platekeep.model.find.words.Terms} first.
 */
package platekeep.model.find.words;
