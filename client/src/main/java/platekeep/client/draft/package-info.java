/**
 * What was drawn and is not a version yet, kept on disk so that a closed window or a lost current costs nothing.
 *
 * <p>Drafts lie in the user's own data folder, never in a library, so a partner never sees one. Read
 * {@link platekeep.client.draft.Drafts} first.
 */
package platekeep.client.draft;
