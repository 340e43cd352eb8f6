/**
 * What a plate is: the records that every other part speaks in.
 *
 * <p>Everything here is an immutable value. Nothing here reads text, knows a rule of the craft or draws; those are
 * {@code text}, {@code stitch} and {@code draw}. Rows are kept <em>top row first</em> and indexed from 0; a cable
 * position is named by its left pleat. Read {@link platekeep.model.plate.Plate} first.
 */
package platekeep.model.plate;
