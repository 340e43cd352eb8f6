/**
 * The second reader of the join contract: pairs of designers' edits of one plate, made out of chance, each with the joined
 * plate that the edits themselves determine. It uses nothing of comparing and joining, so that it can judge them.
 *
 * <p>Read {@link platekeep.model.join.edits.EditCases} first; {@link platekeep.model.join.edits.JoinScore} and {@link
 * platekeep.model.join.edits.CompareScore} are programs that measure with it. How the contract is read where it leaves
 * room is written in {@code model/decisions/join-readings.md}.
 */
package platekeep.model.join.edits;
