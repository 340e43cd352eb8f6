/**
 * Plates out of chance that look like pictures: figures that stack, blank rows, rows that repeat, unused colours, and all
 * the facts that a plate can have. {@link platekeep.model.join.edits.scene.PictureMaker} makes them.
 */
package platekeep.model.join.edits.scene;
