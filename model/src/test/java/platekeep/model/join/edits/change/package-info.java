/**
 * One designer's edits in terms of the plate that both began with, and what two designers' edits come to together.
 *
 * <p>{@link platekeep.model.join.edits.change.Change} says what was done (rows by identity, positions and colours as they
 * stood before); {@link platekeep.model.join.edits.change.Together} puts two changes together by the contract's rules;
 * {@link platekeep.model.join.edits.change.Finished} carries a change out. It never looks for the edits by comparing
 * plates: it is the answer that a joiner is measured against. Where the contract or the edits leave the answer open it
 * throws {@link platekeep.model.join.edits.change.Undetermined}.
 */
package platekeep.model.join.edits.change;
