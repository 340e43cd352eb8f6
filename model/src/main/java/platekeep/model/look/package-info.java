/**
 * Plates by what is drawn on them, whatever their colours: how like two pictures are, also mirrored, moved, worked larger
 * or on a ground that is stitched in full; which plates of a library are near doubles; and where a motif occurs.
 *
 * <p>A picture is taken as the places that go together, never as colours; words and themes are found in
 * {@link platekeep.model.find}. Nothing is kept here: who asks often keeps the {@link
 * platekeep.model.look.Signature}s. Read {@link platekeep.model.look.Looks} and {@link
 * platekeep.model.look.MotifFinder} first.
 */
package platekeep.model.look;
