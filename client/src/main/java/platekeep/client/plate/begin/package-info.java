/**
 * Plates that are begun from something else than a blank chart: a grid of text or a picture file.
 *
 * <p>Turns what it is given into a plate or into one sentence that says what is wrong with it; saves nothing but a draft.
 * Read {@link platekeep.client.plate.begin.BeginPresenter}, then {@link platekeep.client.plate.begin.PictureFit}.
 */
package platekeep.client.plate.begin;
