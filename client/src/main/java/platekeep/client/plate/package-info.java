/**
 * The Plate screen: one plate's chart and finished look, its facts, colours, findings and history, and drawing on it.
 *
 * <p>{@link platekeep.client.plate.work.PlatePresenter} opens, saves and leads through the history,
 * {@link platekeep.client.plate.work.DrawPresenter} draws; both need no display. {@code open} is
 * the plate with its steps, {@code edit} holds what the tools do to a
 * plate, {@code chart} the surface that is drawn on, {@code side} the panels beside it, {@code ask}
 * the questions.
 */
package platekeep.client.plate;
