/**
 * Taking back, one by one, what a join took over without a question; and putting it in again.
 *
 * <p>Whether a change stands in a plate is read from the plate, never remembered, so it stays true whatever else is
 * painted or decided meanwhile. Read {@link platekeep.model.join.back.Reversal} first.
 */
package platekeep.model.join.back;
