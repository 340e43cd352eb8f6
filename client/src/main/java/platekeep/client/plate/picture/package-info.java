/**
 * Pictures of a plate to be used elsewhere: PNG as the screen paints it, or SVG. Read
 * {@link platekeep.client.plate.picture.PicturePresenter} first.
 */
package platekeep.client.plate.picture;
