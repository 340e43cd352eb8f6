/**
 * The kinds of edits that designers make, each noted in a {@link platekeep.model.join.edits.change.Change} at or near a
 * given spot. {@link platekeep.model.join.edits.kind.EditKind} lists them; {@link platekeep.model.join.edits.kind.Studio}
 * is what each of them works with.
 */
package platekeep.model.join.edits.kind;
