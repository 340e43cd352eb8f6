/**
 * The gallery: all plates of the open libraries as small pictures, narrowed down by words, themes, ages and series.
 *
 * <p>{@link platekeep.client.gallery.GalleryPresenter} decides what is shown and needs no display;
 * {@link platekeep.client.gallery.GalleryPanel} shows it.
 */
package platekeep.client.gallery;
