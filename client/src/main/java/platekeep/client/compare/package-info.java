/**
 * The screen that shows two versions of a plate, or two plates, side by side with their rows lined up.
 *
 * <p>What changed is found in {@link platekeep.model.compare}; here it is only shown and stepped through. Read
 * {@link platekeep.client.compare.ComparePresenter} first.
 */
package platekeep.client.compare;
