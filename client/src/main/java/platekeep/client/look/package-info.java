/**
 * The search by look: plates like one, near doubles, plates that contain a motif, and what plates once were.
 *
 * <p>How pictures are compared is {@link platekeep.model.look}; words, themes and facets of what is there now are the
 * gallery's. Read {@link platekeep.client.look.LookPresenter} first, then {@link platekeep.client.look.Hunt}.
 */
package platekeep.client.look;
