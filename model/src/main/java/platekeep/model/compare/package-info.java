/**
 * Two plates to a comparison: which row is which, what moved, which key became which, and the change in words.
 *
 * <p>Rows are paired by id and, where there is none, by likeness, never by number. What a designer did in one go (moved
 * the picture, mirrored a figure, renamed a key) is one difference. Nothing here joins; {@code join} builds on the same
 * {@link platekeep.model.compare.PlateEdit}. Read {@link platekeep.model.compare.Comparison} first.
 */
package platekeep.model.compare;
