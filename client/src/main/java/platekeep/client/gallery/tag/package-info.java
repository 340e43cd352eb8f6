/**
 * Tags of many plates at once and the themes of a library, as the gallery offers them: asked in dialogs, saved as one
 * version.
 *
 * <p>Read {@link platekeep.client.gallery.tag.TagPresenter} first.
 */
package platekeep.client.gallery.tag;
