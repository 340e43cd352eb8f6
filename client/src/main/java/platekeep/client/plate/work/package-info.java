/**
 * What is done on the Plate screen, without a window: a presenter for each kind of work, and what they show.
 *
 * <p>They know no Swing; what they ask of the screen stands in {@link platekeep.client.plate.work.PlateView}. Read
 * {@link platekeep.client.plate.work.PlatePresenter} first, then {@link platekeep.client.plate.work.DrawPresenter}.
 */
package platekeep.client.plate.work;
