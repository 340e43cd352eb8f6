/**
 * Changing a plate by hand: what each tool and command makes of a plate, and the steps that lead back and forth. Plain
 * functions from plate to plate.
 *
 * <p>Knows no window and no library. Read {@link platekeep.client.plate.edit.Steps}, then
 * {@link platekeep.client.plate.edit.RowEdits}.
 */
package platekeep.client.plate.edit;
