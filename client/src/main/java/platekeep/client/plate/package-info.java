/**
 * The Plate screen: one plate's chart and finished look, its facts, colours, findings and history, and drawing on it.
 *
 * <p>{@link platekeep.client.plate.PlatePresenter} opens, saves and leads through the history,
 * {@link platekeep.client.plate.DrawPresenter} draws; both need no display. {@code edit} holds what the tools do to a
 * plate, {@code chart} the surface that is drawn on, {@code side} the panels beside it.
 */
package platekeep.client.plate;
