/**
 * The questions that the Plate screen asks: for a colour, a line, a motif, a reason. Each is a form that says what is
 * wrong with an answer and goes on asking; none changes a plate.
 *
 * <p>Read {@link platekeep.client.plate.ask.PlateDialogs} first.
 */
package platekeep.client.plate.ask;
