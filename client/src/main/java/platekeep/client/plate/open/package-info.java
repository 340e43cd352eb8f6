/**
 * A plate that is open: as its library has it, as it was drawn since, its relatives, and what happens to it when the
 * library moves on. Not for two threads at once.
 *
 * <p>Read {@link platekeep.client.plate.open.OpenPlate} first.
 */
package platekeep.client.plate.open;
