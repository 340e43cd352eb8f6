/**
 * Joiners that are wrong on purpose, each in a way that joiners have been wrong: the cases must catch every one of them.
 * See {@link platekeep.model.join.edits.wrong.WrongJoiner}.
 */
package platekeep.model.join.edits.wrong;
